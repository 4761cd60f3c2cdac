package spoolyard.core.process;

import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult.GaugeResult;

/** What excursions out of tolerance have cost a line so far. */
final class GaugeLedger {
    long excursions;
    long outTicks;
    long cutSpools;
    long bGradeSpools;
    double bGradeKg;
    long flaggedSpools;
    long flaggedRejectedSpools;

    GaugeResult result() {
        return new GaugeResult(
                excursions,
                Ticks.toSeconds(outTicks),
                cutSpools,
                bGradeSpools,
                bGradeKg,
                flaggedSpools,
                flaggedRejectedSpools);
    }
}
