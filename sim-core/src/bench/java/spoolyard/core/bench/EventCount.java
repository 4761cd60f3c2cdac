package spoolyard.core.bench;

import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/** Counts events, so that a benchmark reports events a second whatever one call of it runs. */
@AuxCounters(AuxCounters.Type.OPERATIONS)
@State(Scope.Thread)
public class EventCount {
    /** Events run so far. */
    public long events;
}
