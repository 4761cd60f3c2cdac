package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.core.policy.DueDateFirst;
import spoolyard.core.policy.LeastPurgeNext;
import spoolyard.scenarios.ScenarioReader;

final class CandidateTest {
    private static PlantBook book;

    @BeforeAll
    static void readsThePlant() throws Exception {
        book = PlantBook.of(
                ScenarioReader.read(Path.of("..", "scenarios", "orrenvale"), List.of())
                        .plant(),
                new Weights(
                        Optional.empty(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0.5,
                        24,
                        Weights.First.NEITHER),
                Map.of());
    }

    private static Candidate candidate(Plan plan) {
        return new Candidate("", PlanFigures.of("", book, TimedPlan.of(book.problem(), plan)));
    }

    private static Plan swapped(Plan plan, int line, int place) {
        List<List<Integer>> lines = new ArrayList<>();
        plan.lines().forEach(each -> lines.add(new ArrayList<>(each)));
        Collections.swap(lines.get(line), place, place + 1);
        return new Plan(lines);
    }

    @Test
    void aPlanIsNoDifferentFromItself() {
        Candidate plan = candidate(Dispatch.plan(book, new DueDateFirst()));

        assertThat(plan.distance(plan)).isZero();
    }

    @Test
    void twoNeighboursThatChangePlacesAreNoOtherPlan() {
        Plan plan = Dispatch.plan(book, new DueDateFirst());
        Candidate one = candidate(plan);
        Candidate other = candidate(swapped(plan, 0, 2));

        assertThat(one.distance(other)).isLessThan(Candidate.CLEARLY);
        assertThat(Candidate.different(List.of(one, other, one), 5)).hasSize(1);
    }

    @Test
    void keepsTheCheapestOfEachKindCheapestFirst() {
        Candidate due = candidate(Dispatch.plan(book, new DueDateFirst()));
        Candidate purge = candidate(Dispatch.plan(book, new LeastPurgeNext()));

        List<Candidate> picked = Candidate.different(List.of(purge, due, due), 5);

        assertThat(due.distance(purge)).isGreaterThan(0.5);
        assertThat(picked).hasSize(2);
        assertThat(picked.get(0).plan().timed().cost())
                .isLessThan(picked.get(1).plan().timed().cost());
        assertThat(Candidate.different(List.of(purge, due), 1)).hasSize(1);
    }
}
