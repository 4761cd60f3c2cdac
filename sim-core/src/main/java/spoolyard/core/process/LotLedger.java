package spoolyard.core.process;

import spoolyard.core.record.QualityResult.LotResult;

/** Lots of one polymer so far. */
final class LotLedger {
    long judged;
    long refused;
    long cut;
    long spools;
    long sampled;
    long defectiveSampled;
    long defectivePassed;
    long sorted;
    long respooled;
    long ground;
    double holdS;
    double longestHoldS;

    LotResult result(String polymer) {
        return new LotResult(
                polymer,
                judged,
                refused,
                cut,
                spools,
                sampled,
                defectiveSampled,
                defectivePassed,
                sorted,
                respooled,
                ground,
                holdS,
                longestHoldS);
    }
}
