package spoolyard.core.gauge;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import spoolyard.core.plant.Law;
import spoolyard.core.random.Streams;

/**
 * Derives from a {@link GaugeLoop} how often and how long its filament is out of tolerance. Spread, share outside and the
 * rate of exits are exact; which exits belong to one excursion, and how long it lasts, come from a simulation sample by
 * sample with a stream of its own. Immutable.
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
        DiameterTrace trace = new DiameterTrace(loop, new Streams(seed, 0).uniforms(STREAM));
        int join = (int) Math.max(1, Math.ceil(joinS / loop.sampleS()));
        List<ExcursionCounter> counters = tolerancesMm.stream()
                .map(tolerance -> new ExcursionCounter(tolerance, join))
                .toList();
        for (int i = 0; i < samples; i++) {
            double deviationMm = trace.nextMm();
            for (ExcursionCounter counter : counters) {
                counter.add(deviationMm);
            }
        }
        StationaryDiameter stationary = StationaryDiameter.of(loop);
        List<ToleranceFinding> findings = new ArrayList<>();
        for (int i = 0; i < counters.size(); i++) {
            findings.add(finding(stationary, tolerancesMm.get(i), counters.get(i)));
        }
        return findings;
    }

    private ToleranceFinding finding(StationaryDiameter stationary, double toleranceMm, ExcursionCounter counter) {
        double share = stationary.shareOutside(toleranceMm);
        double exitsPerS = stationary.exitsPerS(toleranceMm);
        boolean isRare = counter.excursions() < FEW;
        double joined = isRare ? 1 : (double) counter.excursions() / counter.exits();
        double meanRunS = exitsPerS > 0 ? share / exitsPerS : loop.sampleS();
        Law lengthS = isRare ? new Law.Fixed(meanRunS) : lengths(counter.sortedLengths());
        return new ToleranceFinding(
                toleranceMm,
                stationary.standardDeviationMm(),
                share,
                exitsPerS * joined * S_PER_H,
                lengthS,
                counter.excursions());
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
