package spoolyard.core.process;

import java.util.EnumMap;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.record.OverflowCause;
import spoolyard.core.record.ScrapCause;

/** What a line has fed, made and lost so far. Masses in kg. */
final class LineLedger {
    private static final ScrapCause[] SCRAP_CAUSES = ScrapCause.values();
    private static final OverflowCause[] OVERFLOW_CAUSES = OverflowCause.values();

    final double[] scrapKg = new double[SCRAP_CAUSES.length];
    private final double[] stepWasteKg = new double[SCRAP_CAUSES.length];
    final long[] overflows = new long[OVERFLOW_CAUSES.length];
    final double[] overflowM = new double[OVERFLOW_CAUSES.length];
    final MaterialLedger materials;
    final GaugeLedger gauge = new GaugeLedger();
    double fedKg;
    double goodKg;
    double ratedKg;
    double slowedLossKg;
    double peakLevelM;
    int goodSpools;
    int rejectedSpools;
    long swaps;
    long blockedTicks;
    long swapWaits;
    long swapWaitTicks;
    long longestSwapWaitTicks;

    LineLedger(Stores stores) {
        materials = new MaterialLedger(stores);
    }

    void fed(double kg) {
        fedKg += kg;
        materials.fed(kg);
    }

    /** Scrap of what the line makes, or is being set up for. */
    void scrap(ScrapCause cause, double kg) {
        scrap(cause, kg, materials.bin());
    }

    /** Scrap of a product, with the bin for that which is clean. */
    void scrap(ScrapCause cause, double kg, Optional<ScrapBin> bin) {
        scrapKg[cause.ordinal()] += kg;
        if (bin.isPresent()) {
            bin.get().bring(cause, kg);
        }
    }

    /** A spool that was counted as good is lost behind the line. */
    void lost(ScrapCause cause, double kg, Optional<ScrapBin> bin) {
        goodSpools--;
        goodKg -= kg;
        scrap(cause, kg, bin);
        gauge.flaggedRejectedSpools += cause == ScrapCause.FLAGGED_SPOOL ? 1 : 0;
    }

    void swapWaited(long ticks) {
        swapWaits++;
        swapWaitTicks += ticks;
        longestSwapWaitTicks = Math.max(longestSwapWaitTicks, ticks);
    }

    double totalScrapKg() {
        double sum = 0;
        for (double kg : scrapKg) {
            sum += kg;
        }
        return sum;
    }

    /** Runs to waste in a step, outside production. */
    void stepWaste(ScrapCause cause, double kg) {
        stepWasteKg[cause.ordinal()] += kg;
        scrap(cause, kg);
    }

    Map<ScrapCause, Double> scrapByCause() {
        return byCause(scrapKg);
    }

    Map<ScrapCause, Double> stepWasteByCause() {
        return byCause(stepWasteKg);
    }

    private static Map<ScrapCause, Double> byCause(double[] kg) {
        Map<ScrapCause, Double> map = new EnumMap<>(ScrapCause.class);
        for (ScrapCause cause : SCRAP_CAUSES) {
            map.put(cause, kg[cause.ordinal()]);
        }
        return map;
    }

    Map<OverflowCause, Long> overflowsByCause() {
        Map<OverflowCause, Long> map = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OVERFLOW_CAUSES) {
            map.put(cause, overflows[cause.ordinal()]);
        }
        return map;
    }

    Map<OverflowCause, Double> overflowMByCause() {
        Map<OverflowCause, Double> map = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OVERFLOW_CAUSES) {
            map.put(cause, overflowM[cause.ordinal()]);
        }
        return map;
    }
}
