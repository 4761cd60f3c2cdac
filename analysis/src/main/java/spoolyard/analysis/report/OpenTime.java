package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Window;

/**
 * When a line is open: its working periods less planned stops; after the calendar ends, always, as nothing is known.
 *
 * @param windows disjoint, by start
 */
record OpenTime(List<Window> windows) {
    /** Copies the list. */
    OpenTime {
        windows = List.copyOf(windows);
    }

    static OpenTime of(Line line, long horizonTick) {
        List<Window> open = new ArrayList<>();
        for (Window period : line.workingPeriods()) {
            long reached = Math.max(0, period.startTick());
            long end = Math.min(horizonTick, period.endTick());
            for (Window stop : line.plannedStops()) {
                if (stop.startTick() < end && stop.endTick() > reached) {
                    add(open, reached, stop.startTick());
                    reached = stop.endTick();
                }
            }
            add(open, reached, end);
        }
        open.add(new Window("", horizonTick, Long.MAX_VALUE));
        return new OpenTime(open);
    }

    private static void add(List<Window> open, long start, long end) {
        if (end > start) {
            open.add(new Window("", start, end));
        }
    }

    /** The open parts of a stretch of time. */
    List<Window> within(long startTick, long endTick) {
        return windows.stream()
                .map(each -> new Window("", Math.max(startTick, each.startTick()), Math.min(endTick, each.endTick())))
                .filter(each -> each.endTick() > each.startTick())
                .toList();
    }
}
