package spoolyard.core.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Law;
import spoolyard.core.random.Streams;

/**
 * Derives from a {@link GaugeLoop} how often and how long its filament is out of tolerance. Spread, share outside and the
 * rate of exits are exact; which exits belong to one excursion, and how long it lasts, come from a simulation sample by
 * sample with a stream of its own. Where fewer than 30 exits are to be expected in it, they are too rare to be joined: each
 * counts as an excursion of the mean length. Immutable.
 *
 * @param loop the loop
 * @param joinS excursions closer than this count as one, seconds
 * @param samples length of the simulation, samples, {@code >= 1}
 */
public record ToleranceStudy(GaugeLoop loop, double joinS, int samples) {
    /** Samples enough to derive the laws for a run: some tens of hours of production, in some tens of milliseconds. */
    public static final int SAMPLES_FOR_A_RUN = 250_000;

    private static final String STREAM = "gauge study";
    private static final int FEW = 30;
    private static final int MOST_LENGTHS = 200;
    private static final double S_PER_H = 3600;

    /**
     * Studies tolerances on one and the same simulated filament.
     *
     * @param tolerancesMm greatest allowed deviations, mm, each {@code > 0}
     * @param seed seed of the simulation
     * @return one finding a tolerance, in the order given. Cost: O(samples x tolerances)
     */
    public List<ToleranceFinding> of(List<Double> tolerancesMm, long seed) {
        StationaryDiameter stationary = StationaryDiameter.of(loop);
        int join = (int) Math.max(1, Math.ceil(joinS / loop.sampleS()));
        Map<Double, ExcursionCounter> counters = new LinkedHashMap<>();
        for (double toleranceMm : tolerancesMm) {
            if (stationary.exitsPerS(toleranceMm) * loop.sampleS() * samples >= FEW) {
                counters.put(toleranceMm, new ExcursionCounter(toleranceMm, join));
            }
        }
        simulate(List.copyOf(counters.values()), seed);
        return tolerancesMm.stream()
                .map(tolerance -> finding(stationary, tolerance, Optional.ofNullable(counters.get(tolerance))))
                .toList();
    }

    private void simulate(List<ExcursionCounter> counters, long seed) {
        if (counters.isEmpty()) {
            return;
        }
        DiameterTrace trace = new DiameterTrace(loop, new Streams(seed, 0).uniforms(STREAM));
        for (int i = 0; i < samples; i++) {
            double deviationMm = trace.nextMm();
            for (ExcursionCounter counter : counters) {
                counter.add(deviationMm);
            }
        }
    }

    private ToleranceFinding finding(
            StationaryDiameter stationary, double toleranceMm, Optional<ExcursionCounter> simulated) {
        double share = stationary.shareOutside(toleranceMm);
        double exitsPerS = stationary.exitsPerS(toleranceMm);
        Optional<ExcursionCounter> seen = simulated.filter(counter -> counter.excursions() > 0);
        double joined = seen.map(counter -> (double) counter.excursions() / counter.exits())
                .orElse(1.0);
        double meanRunS = exitsPerS > 0 ? share / exitsPerS : loop.sampleS();
        return new ToleranceFinding(
                toleranceMm,
                stationary.standardDeviationMm(),
                share,
                exitsPerS * joined * S_PER_H,
                seen.map(counter -> lengths(counter.sortedLengths())).orElse(new Law.Fixed(meanRunS)),
                seen.map(ExcursionCounter::excursions).orElse(0));
    }

    /** The lengths themselves, or the means of some hundred equal shares of them, which keeps their mean. */
    private Law lengths(int[] sorted) {
        int groups = Math.min(MOST_LENGTHS, sorted.length);
        List<Double> means = new ArrayList<>();
        for (int i = 0; i < groups; i++) {
            int from = (int) ((long) sorted.length * i / groups);
            int to = (int) ((long) sorted.length * (i + 1) / groups);
            means.add(loop.sampleS() * Arrays.stream(sorted, from, to).average().orElseThrow());
        }
        return new Law.Observed(means);
    }
}
