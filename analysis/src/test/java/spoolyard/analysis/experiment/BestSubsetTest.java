package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Random;
import org.junit.jupiter.api.Test;

final class BestSubsetTest {
    /**
     * By hand: B is ahead of A by 1, 2, 3: mean 2, standard error 1/sqrt(3) = 0.577. With three systems the tail is 2.5 %,
     * t(0.975; 2) = 4.303 (any table), bound 2.48: A stays. C is behind B by 4, 5, 6: mean 5 > 2.48: C goes.
     */
    @Test
    void keepsWhatIsNotBeatenBeyondTheBound() {
        double[][] values = {{10, 10, 10}, {11, 12, 13}, {7, 7, 7}};

        assertThat(BestSubset.of(values, true, 0.95)).isEqualTo(new BestSubset(1, java.util.List.of(0, 1), 0.95));
        assertThat(BestSubset.of(values, false, 0.95)).isEqualTo(new BestSubset(2, java.util.List.of(2), 0.95));
    }

    @Test
    void leavesOutSystemsThatLackAValue() {
        double[][] values = {{1, 1}, {9, Double.NaN}, {1, 1}};

        assertThat(BestSubset.of(values, true, 0.95)).isEqualTo(new BestSubset(0, java.util.List.of(0, 2), 0.95));
    }

    /**
     * Ten equal systems but one, which is best by half a standard deviation, on common numbers; 1000 experiments, fixed
     * seed. The best must be kept in at least 95 %, less two standard errors of the share (0.7 points each).
     */
    @Test
    void keepsTheBestAsOftenAsPromised() {
        Random random = new Random(20270301);
        int kept = 0;
        int members = 0;
        for (int experiment = 0; experiment < 1000; experiment++) {
            double[][] values = new double[10][8];
            for (int replication = 0; replication < 8; replication++) {
                double luck = 2 * random.nextGaussian();
                for (int system = 0; system < 10; system++) {
                    values[system][replication] =
                            luck + (1 + system / 5.0) * random.nextGaussian() + (system == 3 ? 0.5 : 0);
                }
            }
            BestSubset subset = BestSubset.of(values, true, 0.95);
            kept += subset.members().contains(3) ? 1 : 0;
            members += subset.members().size();
        }

        assertThat(kept).isGreaterThanOrEqualTo(936);
        assertThat(members).isLessThan(10_000);
    }
}
