package spoolyard.scenarios.capacity;

import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/** Arithmetic of windows of time. */
final class OpenTime {
    private OpenTime() {}

    /** Ticks that a window shares with a span. */
    static long overlapTicks(Window window, long fromTick, long toTick) {
        return Math.max(0, Math.min(window.endTick(), toTick) - Math.max(window.startTick(), fromTick));
    }

    /** Ticks that windows share with a span. */
    static long overlapTicks(List<Window> windows, long fromTick, long toTick) {
        return windows.stream()
                .mapToLong(w -> overlapTicks(w, fromTick, toTick))
                .sum();
    }

    /** Hours in a span in which a line is meant to run, planned stops taken off. */
    static double scheduledH(Line line, long fromTick, long toTick) {
        long ticks = 0;
        for (Window period : line.workingPeriods()) {
            long begin = Math.max(period.startTick(), fromTick);
            long end = Math.min(period.endTick(), toTick);
            if (begin < end) {
                ticks += end - begin - overlapTicks(line.plannedStops(), begin, end);
            }
        }
        return Ticks.toHours(ticks);
    }
}
