package spoolyard.core.process;

import spoolyard.core.plant.Polymer;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.QualityResult.ExposureResult;

/** Exposure of the spools of one polymer so far. */
final class ExposureLedger {
    private final Polymer polymer;
    private long spools;
    private long beyond;
    private long exposedTicks;
    private long longestTicks;
    long redried;
    long scrapped;

    ExposureLedger(Polymer polymer) {
        this.polymer = polymer;
    }

    /** A spool has come to its turn. */
    void turn(long exposed, boolean isBeyond) {
        spools++;
        beyond += isBeyond ? 1 : 0;
        exposedTicks += exposed;
        longestTicks = Math.max(longestTicks, exposed);
    }

    ExposureResult result() {
        return new ExposureResult(
                polymer.code(),
                polymer.exposureLimitS(),
                spools,
                beyond,
                redried,
                scrapped,
                Ticks.toSeconds(exposedTicks),
                Ticks.toSeconds(longestTicks));
    }
}
