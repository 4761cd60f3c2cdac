package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;

/** Remembers what was observed, so that no replication is run twice. For one thread. */
public final class SeenLosses {
    private final LossTrial trial;
    private final Map<Double, List<Loss>> seen = new TreeMap<>();

    /**
     * Has seen nothing yet.
     *
     * @param trial observes
     */
    public SeenLosses(LossTrial trial) {
        this.trial = trial;
    }

    /**
     * The first replications at a capacity.
     *
     * @param capacityM metres
     * @param count how many at least
     * @return what each lost, from replication 0; all that were seen if more were
     */
    public List<Loss> at(double capacityM, int count) {
        List<Loss> before = seen.computeIfAbsent(capacityM, capacity -> new ArrayList<>());
        if (before.size() < count) {
            before.addAll(trial.observe(capacityM, before.size(), count - before.size()));
        }
        return List.copyOf(before);
    }
}
