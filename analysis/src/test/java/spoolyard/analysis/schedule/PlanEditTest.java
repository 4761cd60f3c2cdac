package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatExceptionOfType;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.analysis.sequence.Changeovers;
import spoolyard.analysis.sequence.Job;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SequencedLine;
import spoolyard.analysis.sequence.SequencingProblem;
import spoolyard.analysis.sequence.WorkingTime;
import spoolyard.core.plant.Plant;

/**
 * Two lines, day and night; six orders of 10 h each, due at 10, 20 ... 60 h. Orders 2, 3 and 4 are light, the others dark; light
 * to dark costs 1, dark to light 5, and takes no time. A late hour costs 1. Order 6 can be made on L2 only.
 */
final class PlanEditTest {
    private static final double H = 3600;
    private static final Plant PLANT = SamplePlant.ofHours(2, 60);
    private static final Plan LATE_FIRST = new Plan(List.of(List.of(1, 2, 3, 0), List.of(4, 5)));

    private static PlantBook book(double reserveH, List<Integer> frozenOnL1, List<Integer> frozenOnL2) {
        List<Job> jobs = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            boolean isLight = i >= 1 && i <= 3;
            double dueS = (10 * (i + 1) - reserveH) * H;
            double onL1 = i == 5 ? Double.POSITIVE_INFINITY : 10 * H;
            jobs.add(new Job("SO-" + (i + 1), isLight ? 0 : 1, 0, dueS, 1 / H, List.of(onL1, 10 * H)));
        }
        Changeovers table = Changeovers.table(2).set(0, 1, 1, 0).set(1, 0, 5, 0).done();
        List<SequencedLine> lines = List.of(
                new SequencedLine("L1", WorkingTime.always(), table, frozenOnL1),
                new SequencedLine("L2", WorkingTime.always(), table, frozenOnL2));
        Weights weights = new Weights(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, reserveH, Weights.First.NEITHER);
        return new PlantBook(PLANT, weights, List.of(), new SequencingProblem(jobs, lines, 0), Experience.NONE);
    }

    private static PlanEdit edit(PlantBook book) throws RefusedChangeException {
        return new PlanEdit(book, LATE_FIRST);
    }

    private static PlanEdit edit() throws RefusedChangeException {
        return edit(book(0, List.of(), List.of()));
    }

    private static Spot spot(Spot.Kind kind, String other) {
        return new Spot(kind, other);
    }

    @Test
    void movesOneOrderAndLeavesAllOthersInTheirOrder() throws RefusedChangeException {
        PlanEdit edit = edit();

        edit.move("SO-1", "L2", spot(Spot.Kind.AFTER, "SO-5"));
        assertThat(edit.plan().lines()).containsExactly(List.of(1, 2, 3), List.of(4, 0, 5));
        edit.move("SO-4", "L1", spot(Spot.Kind.BEFORE, "SO-2"));
        assertThat(edit.plan().lines()).containsExactly(List.of(3, 1, 2), List.of(4, 0, 5));
        edit.move("SO-4", "L1", spot(Spot.Kind.AFTER, "SO-2"));
        assertThat(edit.plan().lines()).containsExactly(List.of(1, 3, 2), List.of(4, 0, 5));
        edit.move("SO-4", "L2", spot(Spot.Kind.LAST, ""));
        edit.move("SO-3", "L2", spot(Spot.Kind.FIRST, ""));
        assertThat(edit.plan().lines()).containsExactly(List.of(1), List.of(2, 4, 0, 5, 3));
    }

    /** In time (10 h) it is in the first place of either line. L1: dark before light costs 5; L2: all dark, nothing. */
    @Test
    void rushesAnOrderToThePlaceThatIsInTimeAtTheLeastCost() throws RefusedChangeException {
        PlanEdit edit = edit();

        edit.rush("SO-1");

        assertThat(edit.plan().lines()).containsExactly(List.of(1, 2, 3), List.of(0, 4, 5));
    }

    @Test
    void rushesIntoTheDearerPlaceWhereTheCheapOneIsFrozen() throws RefusedChangeException {
        PlanEdit edit = edit(book(0, List.of(), List.of(4)));

        edit.rush("SO-1");

        assertThat(edit.plan().lines()).containsExactly(List.of(0, 1, 2, 3), List.of(4, 5));
    }

    /** With both first places frozen it ends at 20 h at best, on L1 for 6, on L2 for nothing. */
    @Test
    void rushesToTheSoonestPlaceWhereNoneIsInTime() throws RefusedChangeException {
        PlanEdit edit = edit(book(0, List.of(1), List.of(4)));

        edit.rush("SO-1");

        assertThat(edit.plan().lines()).containsExactly(List.of(1, 2, 3), List.of(4, 0, 5));
    }

    /**
     * Order 4 is due at 40 h, by a reserve of 15 h at 25 h. Without it L1 is late by 5, 5 and 35 h and costs 46 with its change.
     * After the frozen orders of L2 it is ready at 30 h: late by 5 h, a change to light for 5, 56 in all and the cheapest.
     * But ready by 25 h it is only on L1, in the first place for 76 (15, 15 and 45 h late, and a change), in the second for 66.
     */
    @Test
    void keepsTheReserveWhereItCan() throws RefusedChangeException {
        PlanEdit edit = edit(book(15, List.of(), List.of(4, 5)));

        edit.rush("SO-4");

        assertThat(edit.plan().lines()).containsExactly(List.of(1, 3, 2, 0), List.of(4, 5));
    }

    @Test
    void saysWhyALineCannotMakeAnOrder() {
        refused(
                () -> edit().move("SO-6", "L1", spot(Spot.Kind.FIRST, "")),
                "Line L1 cannot make order SO-6: the order may go to other lines only.",
                "choose a line that can: L2");
    }

    @Test
    void namesOrdersAndLinesThatAreNotThere() {
        refused(
                () -> edit().move("SO-9", "L1", spot(Spot.Kind.FIRST, "")),
                "There is no order SO-9 in the order book.",
                "correct the order");
        refused(
                () -> edit().move("SO-1", "L9", spot(Spot.Kind.FIRST, "")),
                "There is no line L9; there are L1, L2.",
                "write one of these");
        refused(() -> edit().rush("SO-9"), "There is no order SO-9 in the order book.", "correct the order");
        refused(
                () -> edit().move("SO-1", "L1", spot(Spot.Kind.AFTER, "SO-5")),
                "Order SO-5 is not another order on line L1.",
                "name an order that stands on that line, or write first or last");
        refused(
                () -> edit().move("SO-1", "L1", spot(Spot.Kind.AFTER, "SO-1")),
                "Order SO-1 is not another order on line L1.",
                "name an order that stands on that line, or write first or last");
    }

    @Test
    void leavesTheFrozenPartAlone() throws RefusedChangeException {
        PlantBook book = book(0, List.of(1, 2), List.of());

        refused(
                () -> edit(book).move("SO-5", "L1", spot(Spot.Kind.BEFORE, "SO-3")),
                "That place is in the frozen part of line L1, which ends with order SO-3.",
                "choose a later place, or freeze fewer orders");
        refused(
                () -> edit(book).move("SO-2", "L2", spot(Spot.Kind.LAST, "")),
                "Order SO-2 is frozen on line L1.",
                "freeze fewer orders");
        PlanEdit edit = edit(book);
        edit.move("SO-5", "L1", spot(Spot.Kind.FIRST, ""));
        assertThat(edit.plan().lines().get(0)).containsExactly(1, 2, 4, 3, 0);
    }

    @Test
    void refusesAPlanThatDoesNotBeginWithWhatIsFrozen() {
        refused(
                () -> edit(book(0, List.of(2), List.of())),
                "Line L1 of the plan does not begin with the orders that are frozen on it.",
                "freeze the first orders of the line as they stand, or plan anew without --from");
    }

    private interface Attempt {
        void make() throws RefusedChangeException;
    }

    private static void refused(Attempt attempt, String why, String mend) {
        assertThatExceptionOfType(RefusedChangeException.class)
                .isThrownBy(attempt::make)
                .withMessage(why)
                .satisfies(refusal -> assertThat(refusal.mend()).isEqualTo(mend));
    }
}
