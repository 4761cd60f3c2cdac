package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Collections;
import java.util.List;
import org.junit.jupiter.api.Test;

final class TargetTestTest {
    private static final LossTarget HALF_A_PERCENT = new LossTarget(LossMeasure.OVERFLOW, 0.5);

    /**
     * None seen: at 5 % the true mean number may be -ln 0.05 = 2.9957 (the rule of three, Garwood 1936), so 0.5 % are met
     * from 600 swaps on.
     */
    @Test
    void believesInNoOverflowsOnlyAfterEnoughSwaps() {
        TargetTest test = new TargetTest(HALF_A_PERCENT, 0.05);

        assertThat(test.of(Collections.nCopies(10, SketchedLoss.of(59, 0)), 100))
                .isEqualTo(Verdict.OPEN);
        assertThat(test.of(Collections.nCopies(10, SketchedLoss.of(60, 0)), 100))
                .isEqualTo(Verdict.MEETS);
    }

    /**
     * Hand: 0 and 2 overflows in 100 swaps each in turn, ten times; excess over 0.5 % is -50 and 150, mean 50, standard
     * deviation 105.4; t(0.95; 9) = 1.833, half-width 61.1: open. At 20 % t(0.8; 9) = 0.883, half-width 29.4: missed.
     */
    @Test
    void missesWhereTheBoundOfStudentIsAboveTheTarget() {
        List<Loss> losses = List.of(
                SketchedLoss.of(100, 0),
                SketchedLoss.of(100, 2),
                SketchedLoss.of(100, 0),
                SketchedLoss.of(100, 2),
                SketchedLoss.of(100, 0),
                SketchedLoss.of(100, 2),
                SketchedLoss.of(100, 0),
                SketchedLoss.of(100, 2),
                SketchedLoss.of(100, 0),
                SketchedLoss.of(100, 2));

        assertThat(new TargetTest(HALF_A_PERCENT, 0.05).of(losses, 100)).isEqualTo(Verdict.OPEN);
        assertThat(new TargetTest(HALF_A_PERCENT, 0.2).of(losses, 100)).isEqualTo(Verdict.MISSES);
    }

    @Test
    void countsAnOverflowThatWasNotSeenAsMuchAsOneElsewhere() {
        TargetTest test = new TargetTest(new LossTarget(LossMeasure.WASTE, 3), 0.05);
        List<Loss> clean = Collections.nCopies(10, SketchedLoss.of(60, 0));

        assertThat(test.of(clean, 10)).isEqualTo(Verdict.MEETS);
        assertThat(test.of(clean, 11)).isEqualTo(Verdict.OPEN);
    }
}
