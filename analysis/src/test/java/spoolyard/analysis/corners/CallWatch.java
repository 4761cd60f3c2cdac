package spoolyard.analysis.corners;

import java.util.HashMap;
import java.util.Map;
import spoolyard.core.record.EventLog;

/** Counts how often a line that calls for a repair has to wait before somebody begins it. */
final class CallWatch implements EventLog {
    private final String cause;
    private final Map<String, Long> calls = new HashMap<>();
    private long begun;
    private long delayed;

    CallWatch(String cause) {
        this.cause = cause;
    }

    @Override
    public void tell(long tick, String station, String what, String detail) {
        if (what.equals("stoppage") && detail.equals(cause)) {
            calls.put(station, tick);
        } else if (what.equals(cause) && calls.containsKey(station)) {
            begun++;
            delayed += tick > calls.remove(station) ? 1 : 0;
        }
    }

    double delayedShare() {
        return delayed / (double) begun;
    }
}
