package spoolyard.analysis.schedule;

import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Prices;
import spoolyard.core.plant.Product;

/**
 * What a plan is judged by, in money. Immutable.
 *
 * <p>What nobody gives is taken from the prices of the plant: purge at its material less what the scrap brings in; an hour of a
 * line at the contribution of what it could have made; work at the rate of the first role that may do it. A plant without
 * prices has {@link #PURGE_PER_KG}, {@link #LINE_PER_H} and {@link #CREW_PER_H}, which are invented.
 *
 * @param prices prices of the plant, if it has any
 * @param purgePerKg a kilogram run to waste; empty: from the prices
 * @param linePerH an hour of changeover on any line; empty: from the prices
 * @param latePerSpoolDay each day that each spool of an order of weight 1 is late, {@code >= 0}
 * @param reserveH orders are planned to be made this long before they are due, hours, {@code >= 0}: for stops, sealing and
 *     packing; a plan that cuts it finer pays as if it were late
 * @param first what comes before all else
 */
public record Weights(
        Optional<Prices> prices,
        OptionalDouble purgePerKg,
        OptionalDouble linePerH,
        double latePerSpoolDay,
        double reserveH,
        First first) {
    /** Money for a late spool-day unless somebody gives another; invented. */
    public static final double LATE_PER_SPOOL_DAY = 0.5;

    /** Hours between made and due that a plan aims for unless somebody gives others; invented. */
    public static final double RESERVE_H = 24;

    static final double PURGE_PER_KG = 3;
    static final double LINE_PER_H = 50;
    static final double CREW_PER_H = 30;
    private static final double ABOVE_ALL = 1000;

    /** Whether one part of the cost comes before the others. */
    public enum First {
        /** None: money decides. */
        NEITHER,
        /** Lateness, whatever it costs; then money. */
        LATE,
        /** Purge, whatever it costs; then money. */
        PURGE
    }

    /** Money of a kilogram of a product run to waste. */
    double purgePerKg(Product product, boolean isMixed) {
        double money = purgePerKg.orElseGet(() ->
                prices.map(all -> material(all, product) - credit(all, isMixed)).orElse(PURGE_PER_KG));
        return Math.max(0, money) * (first == First.PURGE ? ABOVE_ALL : 1);
    }

    private static double material(Prices all, Product product) {
        double share = product.colour().concentrateShare();
        double resin = all.polymerPerKg().getOrDefault(product.polymer().code(), PURGE_PER_KG);
        return (1 - share) * resin
                + share * all.concentrate().perKg(product.colour().code());
    }

    private static double credit(Prices all, boolean isMixed) {
        return isMixed ? all.credit().mixedPerKg() : all.credit().cleanPerKg();
    }

    double compoundPerKg() {
        double money = prices.map(Prices::compoundPerKg).orElse(PURGE_PER_KG);
        return money * (first == First.PURGE ? ABOVE_ALL : 1);
    }

    /** Money of an hour in which a line makes nothing of a product. */
    double linePerH(Line line, Product product) {
        return linePerH.orElseGet(() -> prices.flatMap(Prices::contributionPerKg)
                .map(map -> map.getOrDefault(product.polymer().code(), 0.0) * line.rateKgPerH(product))
                .orElse(LINE_PER_H));
    }

    double crewPerH(CrewNeed crew) {
        return crew.isNobody()
                ? 0
                : prices.map(all -> all.labourPerH().getOrDefault(crew.roles().get(0), CREW_PER_H))
                        .orElse(CREW_PER_H);
    }

    /**
     * Money of each second that an order is late.
     *
     * @param spools spools of the order
     * @param weight weight of the order
     * @return money a second
     */
    public double latePerS(int spools, double weight) {
        return latePerSpoolDay * spools * weight / 86_400 * (first == First.LATE ? ABOVE_ALL : 1);
    }
}
