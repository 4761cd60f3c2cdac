package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.function.DoubleSupplier;
import org.junit.jupiter.api.Test;
import umontreal.ssj.rng.MRG32k3aL;

/** Published runs of single-server queues, digit for digit, on our engine. */
final class TextbookQueueTest {
    /**
     * Each instant is off by half a tick at most for each draw before it, so a time is off by less than 2100 / 2 ticks
     * of 1 / 3.6e9 unit: 3e-7. Compared with values recomputed in double precision without rounding.
     */
    private static final double ROUNDING = 3e-7;

    /** The same for the variance and for the mean of a long queue, which sum up to 35 such times. */
    private static final double SUMMED_ROUNDING = 35 * ROUNDING;

    /** Half a unit of the third decimal: the digits the sources print. */
    private static final double PRINTED = 0.0005;

    /**
     * Source: SSJ library user guide, tutorial/QueueEv.java with its listing QueueEv.res: M/M/1, rates 1 and 2, horizon
     * 1000, MRG32k3a streams 1 (arrivals) and 2 (services) of the package's initial seed. Seed of stream 2: L'Ecuyer,
     * Simard, Chen, Kelton, Operations Research 50 (2002), recomputed.
     */
    @Test
    void repeatsTheTutorialRunOfTheEventLibrary() {
        SingleServerQueue queue = new SingleServerQueue(
                exponential(1, 12345, 12345, 12345, 12345, 12345, 12345),
                exponential(2, 3692455944L, 1366884236L, 2968912127L, 335948734L, 4161675175L, 475798818L),
                Long.MAX_VALUE);

        queue.runUntil(1000);

        double n = queue.delays;
        double mean = queue.totalDelay / n;
        double variance = (queue.totalSquaredDelay - n * mean * mean) / (n - 1);
        assertThat(queue.delays).isEqualTo(1037);
        assertThat(queue.longestDelay).isCloseTo(6.262, within(PRINTED)).isCloseTo(6.261687069403138, within(ROUNDING));
        assertThat(mean).isCloseTo(0.495, within(PRINTED)).isCloseTo(0.4946847826832896, within(ROUNDING));
        assertThat(variance).isCloseTo(0.697, within(PRINTED)).isCloseTo(0.6968105081253633, within(SUMMED_ROUNDING));
        assertThat(queue.longestQueue).isEqualTo(10);
        assertThat(queue.meanInQueue).isCloseTo(0.513, within(PRINTED)).isCloseTo(0.5129881196425713, within(ROUNDING));
    }

    /**
     * Source: Law and Kelton, Simulation Modeling and Analysis, section 1.4.7, figure 1.37 (mean time between arrivals
     * 1.0, service 0.5, 1000 delays), read in a public transcription; long digits recomputed in double precision.
     */
    @Test
    void repeatsTheTextbookRunAtLowLoad() {
        SingleServerQueue queue = textbookQueue(1.0, 0.5);

        assertThat(queue.totalDelay / 1000)
                .isCloseTo(0.430, within(PRINTED))
                .isCloseTo(0.42999057734723906, within(ROUNDING));
        assertThat(queue.meanInQueue).isCloseTo(0.418, within(PRINTED)).isCloseTo(0.4183133399117403, within(ROUNDING));
        assertThat(queue.utilisation)
                .isCloseTo(0.460, within(PRINTED))
                .isCloseTo(0.46004575646412055, within(ROUNDING));
        assertThat(queue.endTime).isCloseTo(1027.915, within(PRINTED)).isCloseTo(1027.9150491303064, within(ROUNDING));
    }

    /** Source: as above, mean time between arrivals 0.505, service 0.5, 1000 delays. */
    @Test
    void repeatsTheTextbookRunAtHighLoad() {
        SingleServerQueue queue = textbookQueue(0.505, 0.5);

        assertThat(queue.totalDelay / 1000)
                .isCloseTo(17.404, within(PRINTED))
                .isCloseTo(17.403672771669186, within(ROUNDING));
        assertThat(queue.meanInQueue)
                .isCloseTo(34.831, within(PRINTED))
                .isCloseTo(34.83109058893511, within(SUMMED_ROUNDING));
        assertThat(queue.utilisation).isCloseTo(0.997, within(PRINTED)).isCloseTo(0.9969841892941833, within(ROUNDING));
        assertThat(queue.endTime).isCloseTo(504.0648394341462, within(ROUNDING));
    }

    private static SingleServerQueue textbookQueue(double meanBetweenArrivals, double meanService) {
        Lcgrand lcgrand = new Lcgrand();
        SingleServerQueue queue = new SingleServerQueue(
                () -> lcgrand.exponential(meanBetweenArrivals), () -> lcgrand.exponential(meanService), 1000);
        queue.runUntil(5000);
        return queue;
    }

    private static DoubleSupplier exponential(double rate, long... seed) {
        MRG32k3aL stream = new MRG32k3aL();
        stream.setSeed(seed);
        return () -> -Math.log(1 - stream.nextDouble()) / rate;
    }
}
