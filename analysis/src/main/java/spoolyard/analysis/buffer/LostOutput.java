package spoolyard.analysis.buffer;

import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/**
 * What a line did not bring to its spools because an accumulator was full, or nearly so. Immutable.
 *
 * @param wasteKg made and sent to the bin, kg
 * @param unmadeKg not made, kg
 * @param kgPerS rate of the line over the run, kg/s; 0 if it never ran
 */
record LostOutput(double wasteKg, double unmadeKg, double kgPerS) {
    static LostOutput of(Line line, LineResult result) {
        double makingS =
                result.stateS().get(LineState.RUNNING) + result.stateS().get(LineState.SLOWED);
        double kgPerS = makingS > 0 ? result.ratedKg() / makingS : 0;
        double wasteKg =
                result.scrapKg().get(ScrapCause.OVERFLOW) + result.scrapKg().get(ScrapCause.SLOWED);
        double slowedKg = line.overflow() instanceof OverflowPolicy.Slow ? result.slowedLossKg() : 0;
        double stoppedKg = kgPerS * result.stateS().get(LineState.OVERFLOW_STOP);
        return new LostOutput(wasteKg, slowedKg + stoppedKg, kgPerS);
    }

    double kg() {
        return wasteKg + unmadeKg;
    }

    double minutes() {
        return kgPerS > 0 ? kg() / kgPerS / 60 : 0;
    }
}
