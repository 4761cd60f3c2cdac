package spoolyard.analysis.sequence;

import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.function.Supplier;

/**
 * Plans of which none is at least as good as another both in changeovers and in lateness. Changed by every plan it is shown. For
 * one thread.
 */
final class Archive {
    private static final double ROUNDING = 1e-9;

    private final TreeMap<Double, Entry> byChangeovers = new TreeMap<>();

    private record Entry(double late, Plan plan) {}

    /** Keeps a plan if it is better in one than all that are no worse in the other. */
    void show(double changeovers, double late, Supplier<Plan> plan) {
        if (!isBeaten(changeovers, late)) {
            byChangeovers
                    .tailMap(changeovers - slack(changeovers), true)
                    .values()
                    .removeIf(entry -> entry.late >= late - slack(late));
            byChangeovers.put(changeovers, new Entry(late, plan.get()));
        }
    }

    private boolean isBeaten(double changeovers, double late) {
        Map.Entry<Double, Entry> cheaper = byChangeovers.floorEntry(changeovers + slack(changeovers));
        return cheaper != null && cheaper.getValue().late <= late + slack(late);
    }

    /** So that what differs by the rounding of sums is the same. */
    private static double slack(double value) {
        return ROUNDING * (1 + Math.abs(value));
    }

    /** The plans, from the least changeovers to the least lateness. */
    List<Plan> plans() {
        return byChangeovers.values().stream().map(Entry::plan).toList();
    }
}
