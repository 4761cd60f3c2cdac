package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Interval;

final class CapacityCurveTest {
    /** Hand: 10, 4, 2, 1, 0 over 0 ... 40 m: below the chord by 0, 0.35, 0.3, 0.15, 0 of the fall. */
    @Test
    void theKneeIsWhereTheCurveIsFurthestBelowItsChord() {
        long[] overflows = {10, 4, 2, 1, 0};
        SeenLosses losses = new SeenLosses((capacityM, first, count) ->
                Collections.nCopies(count, SketchedLoss.of(100, overflows[(int) capacityM / 10])));

        CapacityCurve curve = CapacityCurve.of(List.of(0.0, 10.0, 20.0, 30.0, 40.0), losses, 2);

        assertThat(curve.kneeM(LossMeasure.OVERFLOW)).hasValue(10);
    }

    @Test
    void aLossThatDoesNotFallHasNoKnee() {
        SeenLosses losses =
                new SeenLosses((capacityM, first, count) -> Collections.nCopies(count, SketchedLoss.of(100, 5)));

        assertThat(CapacityCurve.of(List.of(0.0, 10.0), losses, 2).kneeM(LossMeasure.WASTE))
                .isEmpty();
    }

    /**
     * Hand: 1 of 100 and 5 of 200 swaps are 6 of 300, 2 %; what is left is 100 - 2 x 100 and 500 - 2 x 200, standard
     * deviation 141.42; t(0.975; 1) = 12.7062; 12.7062 x 141.42 / sqrt 2 / 150 = 8.4708.
     */
    @Test
    void aShareIsTheRatioOfTheMeans() {
        Interval share =
                LossMean.of(LossMeasure.OVERFLOW, List.of(SketchedLoss.of(100, 1), SketchedLoss.of(200, 5)), 0.95);

        assertThat(share.mean()).isCloseTo(2, within(1e-12));
        assertThat(share.halfWidth().orElseThrow()).isCloseTo(8.4708, within(1e-4));
    }

    @Test
    void runsNoReplicationTwice() {
        List<String> asked = new ArrayList<>();
        SeenLosses losses = new SeenLosses((capacityM, first, count) -> {
            asked.add(capacityM + ": " + first + "+" + count);
            return Collections.nCopies(count, SketchedLoss.of(100, 5));
        });

        losses.at(60, 10);
        losses.at(60, 20);

        assertThat(losses.at(60, 15)).hasSize(20);
        assertThat(asked).containsExactly("60.0: 0+10", "60.0: 10+10");
    }

    @Test
    void capacitiesAreEvenlySpacedAndEndAtTheLast() {
        assertThat(Capacities.from(0.1, 0.6, 0.1)).containsExactly(0.1, 0.2, 0.3, 0.4, 0.5, 0.6);
        assertThat(Capacities.from(10, 34, 10)).containsExactly(10.0, 20.0, 30.0);
        assertThat(Capacities.usualStepM(180)).isEqualTo(5);
        assertThat(Capacities.thinned(Capacities.from(0, 100, 1), 3)).containsExactly(0.0, 50.0, 100.0);
    }
}
