package spoolyard.core.process;

import java.util.EnumMap;
import java.util.Map;
import spoolyard.core.plant.Regrind;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.ScrapCause;

/** Clean scrap of one polymer: it comes together until it is a batch, is ground, and goes into store if there is room. */
final class ScrapBin {
    private static final Map<ScrapCause, Regrind.Scrap> SORTS = sorts();

    private final Regrind rule;
    private final Stock stock;
    private final boolean[] takes;
    private double broughtKg;
    private double heldKg;
    private double groundKg;
    private double dustKg;
    private double noRoomKg;

    ScrapBin(Regrind rule, Stock stock) {
        this.rule = rule;
        this.stock = stock;
        ScrapCause[] causes = ScrapCause.values();
        this.takes = new boolean[causes.length];
        for (ScrapCause cause : causes) {
            takes[cause.ordinal()] = SORTS.containsKey(cause) && rule.scrap().contains(SORTS.get(cause));
        }
    }

    /** Purges of both kinds and what a colour approval runs to waste are no scrap of one product. */
    private static Map<ScrapCause, Regrind.Scrap> sorts() {
        Map<ScrapCause, Regrind.Scrap> sorts = new EnumMap<>(ScrapCause.class);
        for (ScrapCause cause : ScrapCause.values()) {
            switch (cause) {
                case START_UP, SHUT_DOWN, STOPPAGE -> sorts.put(cause, Regrind.Scrap.STARTS);
                case SHORT_SPOOL, ORDER_TAIL, OVERFLOW, SLOWED, OUT_OF_TOLERANCE, GAUGE_CUT ->
                    sorts.put(cause, Regrind.Scrap.STRANDS);
                case WINDING_DEFECT, FLAGGED_SPOOL, REFUSED_BY_LAB, EXPOSURE, REFUSED_COLOUR ->
                    sorts.put(cause, Regrind.Scrap.SPOOLS);
                case COLOUR_PURGE, POLYMER_PURGE, APPROVAL -> {}
            }
        }
        return sorts;
    }

    /** The polymer. */
    String polymer() {
        return stock.item().name();
    }

    /** Takes scrap, if it is of a sort that is ground. */
    void bring(ScrapCause cause, double kg) {
        if (takes[cause.ordinal()]) {
            broughtKg += kg;
            heldKg += kg;
            while (heldKg >= rule.grinding().batchKg()) {
                heldKg -= rule.grinding().batchKg();
                grind(rule.grinding().batchKg());
            }
        }
    }

    private void grind(double kg) {
        double lostKg = kg * rule.grinding().dust();
        if (stock.free() + kg - lostKg > rule.grinding().roomKg()) {
            noRoomKg += kg;
        } else {
            groundKg += kg;
            dustKg += lostKg;
            stock.receive(kg - lostKg);
        }
    }

    Stock stock() {
        return stock;
    }

    /** All that came in. */
    double broughtKg() {
        return broughtKg;
    }

    RegrindResult result() {
        return new RegrindResult(polymer(), broughtKg, groundKg, dustKg, noRoomKg, heldKg, stock.used());
    }
}
