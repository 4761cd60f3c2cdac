package spoolyard.scenarios.calendar;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import spoolyard.core.plant.Window;

/** Joins shifts that follow one another without a gap. */
public final class WorkingPeriods {
    private WorkingPeriods() {}

    /**
     * The periods that the chosen shifts cover.
     *
     * @param name name of the windows
     * @param shifts shifts by start
     * @param isChosen which of them count
     * @return disjoint windows by start, with a gap between any two
     */
    public static List<Window> of(String name, List<DatedShift> shifts, Predicate<DatedShift> isChosen) {
        List<Window> periods = new ArrayList<>();
        for (DatedShift shift : shifts.stream().filter(isChosen).toList()) {
            int last = periods.size() - 1;
            if (last >= 0 && shift.startTick() <= periods.get(last).endTick()) {
                Window open = periods.get(last);
                periods.set(last, new Window(name, open.startTick(), Math.max(open.endTick(), shift.endTick())));
            } else {
                periods.add(new Window(name, shift.startTick(), shift.endTick()));
            }
        }
        return periods;
    }
}
