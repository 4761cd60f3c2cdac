package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.analysis.sequence.WorkingTime.Span;

final class TimedPlanTest {
    private static final WorkingTime TWO_SHIFTS = WorkingTime.of(List.of(new Span(6, 14), new Span(30, 38)));

    private static SequencingProblem problem(List<Integer> frozen) {
        Changeovers table = Changeovers.table(2)
                .set(2, 0, 5, 1)
                .set(0, 1, 7, 2)
                .set(1, 0, 9, 3)
                .set(1, 3, 4, 0)
                .done();
        List<Job> jobs = List.of(
                new Job("A", 0, 0, 12, 10, List.of(4.0, Double.POSITIVE_INFINITY)),
                new Job("B", 1, 8, 14, 10, List.of(3.0, 3.0)));
        return new SequencingProblem(
                jobs,
                List.of(
                        new SequencedLine("L1", TWO_SHIFTS, table, frozen),
                        new SequencedLine("L2", WorkingTime.always(), table, List.of())),
                0);
    }

    @Test
    void countsWorkInsideTheSpansOnly() {
        assertThat(TWO_SHIFTS.endOfS(0)).isEqualTo(6);
        assertThat(TWO_SHIFTS.endOfS(8)).isEqualTo(14);
        assertThat(TWO_SHIFTS.startOfS(8)).isEqualTo(30);
        assertThat(TWO_SHIFTS.endOfS(9)).isEqualTo(31);
        assertThat(TWO_SHIFTS.workedUntilS(20)).isEqualTo(8);
        assertThat(TWO_SHIFTS.workedUntilS(3)).isZero();
        assertThat(TWO_SHIFTS.endOfS(17)).as("at 16 of 38 after the end").isEqualTo(38 + 38.0 / 16);
    }

    /** By hand: A is set up 6 to 7 and made 7 to 11. B is set up 11 to 13 and made 13 to 14 and 30 to 32: 18 late. */
    @Test
    void reckonsAPlanWorkedByHand() {
        TimedPlan timed = TimedPlan.of(problem(List.of()), new Plan(List.of(List.of(0, 1), List.of())));

        assertThat(timed.lines().get(0))
                .containsExactly(new TimedJob(0, 2, 6, 7, 11, 0), new TimedJob(1, 0, 11, 13, 32, 18));
        assertThat(timed.changeoverCost()).isEqualTo(5 + 7 + 4);
        assertThat(timed.lateCost()).isEqualTo(180);
    }

    @Test
    void namesWhatIsWrongWithAPlan() {
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> TimedPlan.of(problem(List.of()), new Plan(List.of(List.of(1), List.of(0)))))
                .withMessageContaining("order A is on a line that cannot make it");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> TimedPlan.of(problem(List.of()), new Plan(List.of(List.of(0), List.of()))))
                .withMessageContaining("order B is missing");
        assertThatExceptionOfType(IllegalArgumentException.class)
                .isThrownBy(() -> TimedPlan.of(problem(List.of(1)), new Plan(List.of(List.of(0, 1), List.of()))))
                .withMessageContaining("line L1 does not begin with its frozen orders");
    }

    @Test
    void namesTheConflictOfAnInfeasibleBook() {
        Changeovers free = Changeovers.table(1).done();
        Job nowhere = new Job("A", 0, 0, 1, 1, List.of(Double.POSITIVE_INFINITY));
        SequencedLine line = new SequencedLine("L1", WorkingTime.always(), free, List.of());
        Job onSecond = new Job("B", 0, 0, 1, 1, List.of(Double.POSITIVE_INFINITY, 2.0));
        SequencedLine frozen = new SequencedLine("L1", WorkingTime.always(), free, List.of(0));
        SequencedLine again = new SequencedLine("L2", WorkingTime.always(), free, List.of(0, 0));

        assertThatExceptionOfType(InfeasibleBookException.class)
                .isThrownBy(() -> new SequencingProblem(List.of(nowhere), List.of(line), 0))
                .withMessage("Order A can be made on no line.");
        assertThatExceptionOfType(InfeasibleBookException.class)
                .isThrownBy(() -> new SequencingProblem(List.of(onSecond), List.of(frozen, line), 0))
                .withMessage("Order B is frozen on line L1, which cannot make it.");
        assertThatExceptionOfType(InfeasibleBookException.class)
                .isThrownBy(() -> new SequencingProblem(List.of(onSecond), List.of(line, again), 0))
                .withMessage("Order B is frozen on line L2 and already on line L2.");
    }
}
