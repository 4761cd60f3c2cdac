package spoolyard.core.bench;

import java.util.concurrent.TimeUnit;
import java.util.function.LongSupplier;
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
import spoolyard.core.plant.Law;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.random.Streams;

/** M/M/1 at load 0.8: the engine and its limit, each with delays drawn beforehand and with delays drawn on the way. */
@State(Scope.Thread)
@BenchmarkMode(Mode.Throughput)
@OutputTimeUnit(TimeUnit.MICROSECONDS)
@Warmup(iterations = 4, time = 1)
@Measurement(iterations = 4, time = 1)
@Fork(3)
public class QueueBenchmark {
    private static final double MEAN_BETWEEN_ARRIVALS_S = 10;
    private static final double MEAN_SERVICE_S = 8;
    private static final long SPAN = Ticks.ofSeconds(MEAN_BETWEEN_ARRIVALS_S * 10_000);
    private static final int ARRIVAL = 0;
    private static final int DEPARTURE = 1;

    /** Where delays come from: a table, or streams of our own by inversion. */
    @Param({"table", "streams"})
    public String delays;

    private LongSupplier betweenArrivals;
    private LongSupplier service;
    private Engine engine;
    private TimedEvent arrival;
    private TimedEvent departure;
    private PrimitiveHeap heap;
    private long limitEnd;
    private int waiting;
    private int limitWaiting;

    /** Schedules the first arrivals. */
    @Setup
    public void open() {
        betweenArrivals = delays(MEAN_BETWEEN_ARRIVALS_S, "arrivals");
        service = delays(MEAN_SERVICE_S, "service");
        engine = new Engine();
        arrival = new Arrival();
        departure = new Departure();
        arrival.in(betweenArrivals.getAsLong());
        heap = new PrimitiveHeap(2);
        heap.add(betweenArrivals.getAsLong(), ARRIVAL);
    }

    private LongSupplier delays(double meanSeconds, String name) {
        return delays.equals("table")
                ? new Delays(meanSeconds, name)
                : new Streams(1, 0).variate(new Law.Exponential(meanSeconds), name)::nextTicks;
    }

    /** Our engine. */
    @Benchmark
    public int engine(EventCount count) {
        long start = EventCount.cpuNanosNow();
        long before = engine.executed();
        engine.runUntil(engine.now() + SPAN);
        count.add(engine.executed() - before, start);
        return waiting;
    }

    /** The limit written by hand. */
    @Benchmark
    public int limit(EventCount count) {
        long start = EventCount.cpuNanosNow();
        limitEnd += SPAN;
        long events = 0;
        while (heap.firstTick() <= limitEnd) {
            long now = heap.firstTick();
            int number = heap.firstNumber();
            heap.removeFirst();
            if (number == ARRIVAL) {
                limitArrive(now);
            } else if (--limitWaiting > 0) {
                heap.add(now + service.getAsLong(), DEPARTURE);
            }
            events++;
        }
        count.add(events, start);
        return limitWaiting;
    }

    private void limitArrive(long now) {
        heap.add(now + betweenArrivals.getAsLong(), ARRIVAL);
        if (limitWaiting++ == 0) {
            heap.add(now + service.getAsLong(), DEPARTURE);
        }
    }

    private final class Arrival extends TimedEvent {
        Arrival() {
            super(engine, Phase.ARRIVAL);
        }

        @Override
        protected void happen() {
            in(betweenArrivals.getAsLong());
            if (waiting++ == 0) {
                departure.in(service.getAsLong());
            }
        }
    }

    private final class Departure extends TimedEvent {
        Departure() {
            super(engine, Phase.FINISH);
        }

        @Override
        protected void happen() {
            if (--waiting > 0) {
                in(service.getAsLong());
            }
        }
    }
}
