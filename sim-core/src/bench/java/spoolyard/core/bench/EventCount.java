package spoolyard.core.bench;

import java.lang.management.ManagementFactory;
import java.lang.management.ThreadMXBean;
import org.openjdk.jmh.annotations.AuxCounters;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.State;

/**
 * Counts events and the processor time they took, so that the result is events a processor second: whatever one call runs,
 * and whatever else the machine does meanwhile.
 */
@AuxCounters(AuxCounters.Type.OPERATIONS)
@State(Scope.Thread)
public class EventCount {
    private static final ThreadMXBean THREADS = ManagementFactory.getThreadMXBean();

    /** Events run. */
    public long events;

    /** Processor time of this thread they took, in nanoseconds. */
    public long cpuNanos;

    void add(long moreEvents, long startedAtCpuNanos) {
        events += moreEvents;
        cpuNanos += cpuNanosNow() - startedAtCpuNanos;
    }

    static long cpuNanosNow() {
        return THREADS.getCurrentThreadCpuTime();
    }
}
