package spoolyard.scenarios.check;

import java.util.Optional;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.calendar.ShiftPlan;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** Reads of a scenario tree who works when, and nothing else. */
public final class ShiftReader {
    private ShiftReader() {}

    /**
     * Shifts with the run they are laid out in. Immutable.
     *
     * @param plan the shifts
     * @param clock start and end of the run
     */
    public record DatedPlan(ShiftPlan plan, PlantClock clock) {}

    /**
     * Reads the shifts of a tree.
     *
     * @param tree the tree, bases merged
     * @param reading takes faults; if it has any afterwards the result is of no use
     * @return the shifts; empty if there are none
     */
    public static Optional<DatedPlan> read(Node.Mapping tree, Reading reading) {
        PlantClock clock = TimeSection.KIND.read(Trees.at(tree, "time"), reading);
        Node shifts = Trees.at(tree, "shifts");
        return shifts instanceof Node.Nothing
                ? Optional.empty()
                : Optional.of(new DatedPlan(
                        new ShiftSection(PlantNames.of(tree), clock, tree)
                                .kind()
                                .read(shifts, reading),
                        clock));
    }
}
