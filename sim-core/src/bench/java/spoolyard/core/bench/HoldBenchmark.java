package spoolyard.core.bench;

import java.util.concurrent.TimeUnit;
import org.openjdk.jmh.annotations.Benchmark;
import org.openjdk.jmh.annotations.BenchmarkMode;
import org.openjdk.jmh.annotations.Fork;
import org.openjdk.jmh.annotations.Measurement;
import org.openjdk.jmh.annotations.Mode;
import org.openjdk.jmh.annotations.OutputTimeUnit;
import org.openjdk.jmh.annotations.Param;
import org.openjdk.jmh.annotations.Scope;
import org.openjdk.jmh.annotations.Setup;
import org.openjdk.jmh.annotations.State;
import org.openjdk.jmh.annotations.Warmup;
import spoolyard.core.engine.Engine;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.quantity.Ticks;

/**
 * The hold model: a fixed number of events pending, each of which schedules itself anew after an exponential while.
 *
 * <p>Source of the model: Jones, An empirical comparison of priority-queue and event-set implementations, Communications
 * of the ACM 29 (1986) 300-311.
 */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
public class HoldBenchmark {
    private static final int EVENTS_PER_CALL = 20_000;
    private static final double MEAN_DELAY_S = 1;

    /** Events pending. */
    @Param({"10", "100", "1000", "10000"})
    public int pending;

    private Delays delays;
    private Engine engine;
    private PrimitiveHeap heap;
    private long span;
    private long limitEnd;

    /** Fills both agendas. */
    @Setup
    public void fill() {
        delays = new Delays(MEAN_DELAY_S, "hold");
        engine = new Engine();
        heap = new PrimitiveHeap(pending);
        span = Ticks.ofSeconds(MEAN_DELAY_S * EVENTS_PER_CALL / pending);
        for (int i = 0; i < pending; i++) {
            new Holder().in(delays.getAsLong());
            heap.add(delays.getAsLong(), i);
        }
    }

    /** Our engine. */
    @Benchmark
    public long engine(EventCount count) {
        long start = EventCount.cpuNanosNow();
        long before = engine.executed();
        engine.runUntil(engine.now() + span);
        count.add(engine.executed() - before, start);
        return engine.now();
    }

    /** The limit written by hand. */
    @Benchmark
    public long limit(EventCount count) {
        long start = EventCount.cpuNanosNow();
        limitEnd += span;
        long events = 0;
        while (heap.firstTick() <= limitEnd) {
            long now = heap.firstTick();
            int number = heap.firstNumber();
            heap.removeFirst();
            heap.add(now + delays.getAsLong(), number);
            events++;
        }
        count.add(events, start);
        return limitEnd;
    }

    private final class Holder extends TimedEvent {
        Holder() {
            super(engine, Phase.FINISH);
        }

        @Override
        protected void happen() {
            in(delays.getAsLong());
        }
    }
}
