package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.util.List;
import org.junit.jupiter.api.Test;

final class ExactProgrammeTest {
    private static final double ROUNDING = 1e-9;

    @Test
    void agreesWithTryingAllPlansOfTwoHundredSmallBooks() {
        for (int seed = 0; seed < 200; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);

            double cost = TimedPlan.of(problem, ExactProgramme.solve(problem)).cost();

            assertThat(cost).as("seed %d", seed).isCloseTo(RandomBooks.leastByTryingAll(problem), within(ROUNDING));
        }
    }

    @Test
    void agreesWithHeldAndKarpOnTwoHundredSingleLines() {
        for (int seed = 0; seed < 200; seed++) {
            SequencingProblem problem = RandomBooks.pure(seed, 4 + seed % 6);

            double cost = TimedPlan.of(problem, ExactProgramme.solve(problem)).cost();

            assertThat(cost).as("seed %d", seed).isCloseTo(RandomBooks.leastByHeldAndKarp(problem), within(ROUNDING));
        }
    }

    /** Source: Vallada and Ruiz, European Journal of Operational Research 211 (2011), instance I_10_2_S_1-124_1: 288. */
    @Test
    void findsThePublishedMakespanOfUnrelatedMachines() throws IOException {
        SequencingProblem problem = Instances.machines(Instances.text("I_10_2_S_1-124_1.txt"));

        Solution solution = new Sequencer(
                        problem,
                        new SearchSettings(SearchLimit.iterations(1), 1, 1, 1),
                        new Stop(),
                        SearchProgress.UNHEARD)
                .solve(List.of());

        assertThat(solution.isProvedBest()).isTrue();
        assertThat(solution.plan().cost()).isEqualTo(288);
    }

    @Test
    void localSearchFindsTheSameOnSmallBooks() {
        for (int seed = 0; seed < 60; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);
            Plan start = CheapestInsertion.plan(problem);
            Annealing search = new Annealing(problem, seed);

            search.run(start, new Budget(SearchLimit.iterations(40_000), 1, new Stop()), SearchWatch.UNHEARD);

            double cost = TimedPlan.of(problem, search.best()).cost();
            assertThat(cost).as("seed %d", seed).isCloseTo(RandomBooks.leastByTryingAll(problem), within(ROUNDING));
            assertThat(search.bestCost()).as("seed %d", seed).isCloseTo(cost, within(1e-6));
        }
    }

    @Test
    void noBoundIsAboveTheBest() {
        for (int seed = 0; seed < 200; seed++) {
            SequencingProblem problem = RandomBooks.any(seed);

            assertThat(LowerBound.of(problem))
                    .as("seed %d", seed)
                    .isLessThanOrEqualTo(RandomBooks.leastByTryingAll(problem) + ROUNDING);
        }
    }
}
