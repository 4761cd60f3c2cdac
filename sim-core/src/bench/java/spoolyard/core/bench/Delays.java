package spoolyard.core.bench;

import java.util.function.LongSupplier;
import spoolyard.core.plant.Law;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Variate;

/** Exponential delays drawn beforehand, so that a benchmark of the engine does not measure the generator. */
final class Delays implements LongSupplier {
    private static final int COUNT = 1 << 20;

    private final long[] ticks = new long[COUNT];
    private int next;

    Delays(double meanSeconds, String name) {
        Variate variate = new Streams(1, 0).variate(new Law.Exponential(meanSeconds), name);
        for (int i = 0; i < COUNT; i++) {
            ticks[i] = variate.nextTicks();
        }
    }

    @Override
    public long getAsLong() {
        return ticks[next++ & (COUNT - 1)];
    }
}
