package spoolyard.core.account;

import java.util.ArrayList;
import java.util.Collections;
import java.util.EnumMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Prices;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineUse.MaterialUse;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * What one replication cost. Immutable. Material is booked when it is fed, so that what is on the lines at the end is paid
 * for and not sold; regrind costs nothing but the credit that its scrap no longer brings, and is fed in place of resin.
 *
 * @param items each with its part, in the order of {@link CostPart}; they sum to the total
 * @param goodSpools good spools off the lines
 */
public record CostAccount(List<CostItem> items, long goodSpools) {
    /** Name of scrap of one polymer. */
    public static final String CLEAN = "scrap of one polymer";

    /** Name of scrap of several polymers or with purge compound in it. */
    public static final String MIXED = "mixed scrap";

    /** Name of spools of second quality. */
    public static final String B_GRADE = "B-grade";

    /** Copies the list. */
    public CostAccount {
        items = List.copyOf(items);
    }

    /**
     * An amount of money.
     *
     * @param part what kind of cost
     * @param item what exactly; empty if the part has only one
     * @param amount in the currency of the prices; negative for a credit
     */
    public record CostItem(CostPart part, String item, double amount) {}

    /**
     * Of a run.
     *
     * @param prices what things cost
     * @param energy what it drew; empty if nobody asked: then energy costs nothing
     * @param run what happened
     * @return the account
     */
    public static CostAccount of(Prices prices, Optional<EnergyAccount> energy, RunResult run) {
        List<CostItem> items = new ArrayList<>();
        materials(prices, run, items);
        items.add(new CostItem(
                CostPart.PACK_OUT, "", prices.packOutPerSpool() * run.flow().packed()));
        labour(prices, run, items);
        energy.ifPresent(account -> account.kwh()
                .forEach((part, kwh) ->
                        items.add(new CostItem(CostPart.ENERGY, part.label(), prices.energyPerKwh() * kwh))));
        credits(prices.credit(), run, items);
        long good = run.lines().stream().mapToLong(LineResult::goodSpools).sum();
        return new CostAccount(items, good);
    }

    private static void materials(Prices prices, RunResult run, List<CostItem> items) {
        Map<String, Double> resin = new LinkedHashMap<>();
        Map<String, Double> concentrate = new LinkedHashMap<>();
        double compoundKg = 0;
        for (LineResult line : run.lines()) {
            compoundKg += line.use().compoundKg();
            for (MaterialUse use : line.use().materials()) {
                double concentrateKg = use.fedKg() * use.concentrateShare();
                double resinPrice = prices.polymerPerKg().getOrDefault(use.polymer(), 0.0);
                resin.merge(use.polymer(), resinPrice * (use.fedKg() - concentrateKg), Double::sum);
                if (concentrateKg > 0) {
                    double price = prices.concentrate().perKg(use.colour());
                    concentrate.merge(use.colour(), price * concentrateKg, Double::sum);
                }
            }
        }
        run.regrind()
                .forEach(each -> resin.merge(
                        each.polymer(),
                        -prices.polymerPerKg().getOrDefault(each.polymer(), 0.0) * each.takenKg(),
                        Double::sum));
        resin.forEach((polymer, amount) -> items.add(new CostItem(CostPart.RESIN, polymer, amount)));
        concentrate.forEach((colour, amount) -> items.add(new CostItem(CostPart.CONCENTRATE, colour, amount)));
        items.add(new CostItem(CostPart.COMPOUND, "", prices.compoundPerKg() * compoundKg));
    }

    private static void labour(Prices prices, RunResult run, List<CostItem> items) {
        Map<String, Double> hours = new LinkedHashMap<>();
        run.crew().forEach(crew -> hours.merge(crew.role(), crew.ratedPaidS() / 3600, Double::sum));
        hours.forEach((role, h) -> items.add(
                new CostItem(CostPart.LABOUR, role, prices.labourPerH().getOrDefault(role, 0.0) * h)));
    }

    /** Only a change of polymer makes scrap of more than one; what is ground is not sold. */
    private static void credits(Prices.Credit credit, RunResult run, List<CostItem> items) {
        double allKg =
                run.lines().stream().mapToDouble(LineResult::totalScrapKg).sum();
        double groundKg =
                run.regrind().stream().mapToDouble(RegrindResult::groundKg).sum();
        double mixedKg = run.lines().stream()
                .mapToDouble(line -> line.scrapKg().get(ScrapCause.POLYMER_PURGE))
                .sum();
        items.add(new CostItem(CostPart.CREDIT, CLEAN, -credit.cleanPerKg() * (allKg - mixedKg - groundKg)));
        items.add(new CostItem(CostPart.CREDIT, MIXED, -credit.mixedPerKg() * mixedKg));
        double bGradeKg = run.lines().stream()
                .mapToDouble(line -> line.gauge().bGradeKg())
                .sum();
        items.add(new CostItem(CostPart.CREDIT, B_GRADE, -credit.bGradePerKg() * bGradeKg));
    }

    /**
     * All items together.
     *
     * @return money
     */
    public double total() {
        return items.stream().mapToDouble(CostItem::amount).sum();
    }

    /**
     * The items of each part together.
     *
     * @return every part is a key
     */
    public Map<CostPart, Double> byPart() {
        Map<CostPart, Double> sums = new EnumMap<>(CostPart.class);
        for (CostPart part : CostPart.values()) {
            sums.put(part, 0.0);
        }
        items.forEach(item -> sums.merge(item.part(), item.amount(), Double::sum));
        return Collections.unmodifiableMap(sums);
    }

    /**
     * An amount as a share of each good spool.
     *
     * @param amount money
     * @return money; not a number if there is no good spool
     */
    public double perGoodSpool(double amount) {
        return goodSpools == 0 ? Double.NaN : amount / goodSpools;
    }
}
