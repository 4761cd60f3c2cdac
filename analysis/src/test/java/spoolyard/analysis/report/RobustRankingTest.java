package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Difference;

final class RobustRankingTest {
    private static final double[] LUCK = {40, -30, 10, -60, 25, 5, -15, 30, -10, 5};

    private static double[] costs(double level, double... own) {
        double[] costs = new double[LUCK.length];
        for (int i = 0; i < costs.length; i++) {
            costs[i] = level + LUCK[i] + own[i % own.length];
        }
        return costs;
    }

    @Test
    void tellsPlansApartThatShareTheirLuck() {
        RobustRanking ranking = new RobustRanking(List.of(costs(105, 1, -1), costs(100, 0.5, -0.5), costs(120, -1, 1)));

        assertThat(ranking.order()).containsExactly(1, 0, 2);
        assertThat(ranking.perhapsBest()).containsExactly(1);
        assertThat(ranking.difference(1, 2).verdict()).isEqualTo(Difference.Verdict.MORE);
        assertThat(ranking.turnedPairs()).isEqualTo(1);
    }

    @Test
    void leavesOpenWhatTheReplicationsCannotTell() {
        RobustRanking ranking = new RobustRanking(List.of(costs(101, 9, -9), costs(100, -9, 9), costs(200, 1, -1)));

        assertThat(ranking.best()).isEqualTo(1);
        assertThat(ranking.perhapsBest()).containsExactly(0, 1);
    }

    /**
     * Five plans that cost the same, a thousand times: with 95 % confidence the best is among those not beaten, so a
     * plan may be called beaten in 5 % of the experiments at most. 0.95 + 2.33 sqrt(0.95 * 0.05 / 1000) = one-sided 99 %.
     */
    @Test
    void callsAPlanBeatenThatIsNotInNoMoreThanTheShareItAdmits() {
        Random random = new Random(5);
        int wrong = 0;
        for (int experiment = 0; experiment < 1000; experiment++) {
            List<double[]> costs = random.ints(5)
                    .mapToObj(seed -> new Random(seed).doubles(10).toArray())
                    .toList();
            wrong += new RobustRanking(costs).perhapsBest().size() < 5 ? 1 : 0;
        }

        assertThat(wrong).isLessThanOrEqualTo((int) (50 + 2.33 * Math.sqrt(1000 * 0.05 * 0.95)));
    }
}
