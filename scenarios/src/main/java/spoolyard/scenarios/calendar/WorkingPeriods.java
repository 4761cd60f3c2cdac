package spoolyard.scenarios.calendar;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Window;

/** Joins shifts that follow one another without a gap. */
public final class WorkingPeriods {
    private WorkingPeriods() {}

    /**
     * The periods that shifts cover and that overlap the run.
     *
     * @param name name of the windows
     * @param shifts the shifts that count, by start
     * @param horizonTicks length of the run, ticks
     * @return disjoint windows by start, with a gap between any two; the first may begin before the run and the last may
     *     end after it, by as much as the shifts do
     */
    public static List<Window> of(String name, List<DatedShift> shifts, long horizonTicks) {
        List<Window> periods = new ArrayList<>();
        for (DatedShift shift : shifts) {
            int last = periods.size() - 1;
            if (last >= 0 && shift.startTick() <= periods.get(last).endTick()) {
                Window open = periods.get(last);
                periods.set(last, new Window(name, open.startTick(), Math.max(open.endTick(), shift.endTick())));
            } else {
                periods.add(new Window(name, shift.startTick(), shift.endTick()));
            }
        }
        return periods.stream()
                .filter(period -> period.endTick() > 0 && period.startTick() < horizonTicks)
                .toList();
    }
}
