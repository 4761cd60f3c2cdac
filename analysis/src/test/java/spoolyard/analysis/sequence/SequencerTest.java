package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class SequencerTest {
    private static Solution solve(SequencingProblem problem, double iterations, int threads) {
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(iterations), 7, 2, threads);
        return new Sequencer(problem, settings, new Stop(), SearchProgress.UNHEARD).solve(List.of());
    }

    /** Source: TSPLIB95, Reinelt, ORSA Journal on Computing 3 (1991), list of optima. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({"br17, 39", "ftv33, 1286", "ftv38, 1530", "p43, 5620"})
    void findsTheOptimumOfAsymmetricTours(String name, double optimum) throws IOException {
        SequencingProblem problem = Instances.tour(Instances.text(name + ".atsp"));

        Solution solution = solve(problem, 150_000, 2);

        assertThat(solution.plan().cost()).isEqualTo(optimum);
        assertThat(solution.bound()).isLessThanOrEqualTo(optimum);
    }

    /** Best known 413004: Tanaka and Araki, Computers and Operations Research 40 (2013), from memory; 3 % is the aim. */
    @Test
    void comesNearTheBestKnownWeightedTardiness() throws IOException {
        SequencingProblem problem = Instances.weightedTardiness(Instances.text("wt_sds_109.instance"));

        Solution solution = solve(problem, 150_000, 2);

        assertThat(solution.plan().cost()).isBetween(413_004.0, 413_004 * 1.03);
    }

    @Test
    void givesTheSamePlanForTheSameSeedOnAnyNumberOfThreads() throws IOException {
        SequencingProblem problem = Instances.tour(Instances.text("ftv38.atsp"));
        SequencingProblem late = Instances.weightedTardiness(Instances.text("wt_sds_109.instance"));

        assertThat(solve(problem, 3000, 1).plan())
                .isEqualTo(solve(problem, 3000, 2).plan());
        assertThat(solve(late, 20_000, 1).plan())
                .isEqualTo(solve(late, 20_000, 2).plan());
    }

    /** Source of the bound: least assignment of ftv33, 1185 (recomputed outside the project). */
    @Test
    void boundsAToursLengthByItsLeastAssignment() throws IOException {
        SequencingProblem problem = Instances.tour(Instances.text("ftv33.atsp"));

        assertThat(LowerBound.of(problem)).isCloseTo(1185, within(1e-6));
    }

    @Test
    void isNeverDearerThanAPlanItIsGiven() throws IOException {
        SequencingProblem problem = Instances.weightedTardiness(Instances.text("wt_sds_109.instance"));
        Plan good = solve(problem, 60_000, 2).plan().plan();
        SearchSettings hasty = new SearchSettings(SearchLimit.iterations(10), 1, 1, 1);

        Solution solution = new Sequencer(problem, hasty, new Stop(), SearchProgress.UNHEARD).solve(List.of(good));

        assertThat(solution.plan().cost())
                .isLessThanOrEqualTo(TimedPlan.of(problem, good).cost());
    }

    @Test
    void returnsThePlanSoFarWhenStopped() throws IOException {
        SequencingProblem problem = Instances.weightedTardiness(Instances.text("wt_sds_109.instance"));
        Stop stop = new Stop();
        stop.ask();

        Solution solution = new Sequencer(
                        problem, new SearchSettings(SearchLimit.seconds(600), 1, 2, 2), stop, SearchProgress.UNHEARD)
                .solve(List.of());

        solution.plan().plan().check(problem);
        assertThat(solution.isProvedBest()).isFalse();
    }
}
