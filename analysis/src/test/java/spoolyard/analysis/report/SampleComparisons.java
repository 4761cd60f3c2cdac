package spoolyard.analysis.report;

import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.sample.SamplePlant;

/** Comparisons made from numbers written down. */
final class SampleComparisons {
    private static final Setting SETTING = new Setting(SamplePlant.of(2, 1), SampleReports.clock());

    private SampleComparisons() {}

    /**
     * A base and alternatives that differ by given amounts in each measure, with a noise of about 1 for each.
     *
     * @param shifts shape {@code double[alternatives][measures]}
     */
    static Comparison of(double[]... shifts) {
        List<Alternative> plants = IntStream.rangeClosed(0, shifts.length)
                .mapToObj(SampleComparisons::plant)
                .toList();
        return Comparison.of(
                plants,
                IntStream.range(0, 6).mapToObj(i -> replication(i, shifts)).toList());
    }

    /** The same shift in each measure but one without a value. */
    static double[] shift(double size) {
        double[] shift = new double[Measure.values().length];
        java.util.Arrays.fill(shift, size);
        shift[Measure.COST_PER_GOOD_SPOOL.ordinal()] = Double.NaN;
        return shift;
    }

    private static Alternative plant(int number) {
        String name = number == 0 ? "base" : "alternative " + number;
        return new Alternative(
                name, new Provenance("0.1.0", "sample", "sha256:" + "0".repeat(64), List.of(), 1), SETTING);
    }

    private static List<double[]> replication(int number, double[][] shifts) {
        return IntStream.rangeClosed(0, shifts.length)
                .mapToObj(plant -> IntStream.range(0, Measure.values().length)
                        .mapToDouble(measure ->
                                100 + number + (plant == 0 ? 0 : shifts[plant - 1][measure] + wobble(number, plant)))
                        .toArray())
                .toList();
    }

    /** Of mean 0 over six replications. */
    private static double wobble(int number, int plant) {
        return (number + plant) % 2 == 0 ? 1 : -1;
    }
}
