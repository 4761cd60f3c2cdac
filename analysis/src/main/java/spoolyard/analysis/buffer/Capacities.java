package spoolyard.analysis.buffer;

import java.util.List;
import java.util.stream.IntStream;

/** Capacities to choose from, evenly spaced. */
public final class Capacities {
    /** Most that may be chosen from. */
    public static final int MOST = 2000;

    private static final double[] ROUND = {0.5, 1, 2, 5, 10, 20, 50, 100, 200, 500};
    private static final int USUAL_COUNT = 40;
    private static final double ROUNDING = 1e-9;

    private Capacities() {}

    /**
     * From one to another.
     *
     * @param fromM first, metres, {@code >= 0}
     * @param toM last at most, {@code >= fromM}
     * @param stepM between two, {@code > 0}
     * @return ascending
     */
    public static List<Double> from(double fromM, double toM, double stepM) {
        int steps = (int) Math.floor((toM - fromM) / stepM + ROUNDING);
        return IntStream.rangeClosed(0, steps)
                .mapToObj(i -> Math.round((fromM + i * stepM) * 1e6) / 1e6)
                .toList();
    }

    /**
     * A round step that makes some forty capacities.
     *
     * @param spanM from first to last, metres
     * @return metres
     */
    public static double usualStepM(double spanM) {
        for (double step : ROUND) {
            if (spanM / step <= USUAL_COUNT) {
                return step;
            }
        }
        return spanM / USUAL_COUNT;
    }

    /**
     * Some of many, evenly spread, the first and last among them.
     *
     * @param all ascending
     * @param most how many at most, {@code >= 2}
     * @return ascending
     */
    public static List<Double> thinned(List<Double> all, int most) {
        if (all.size() <= most) {
            return all;
        }
        return IntStream.range(0, most)
                .mapToObj(i -> all.get((int) Math.round(i * (all.size() - 1.0) / (most - 1))))
                .distinct()
                .toList();
    }
}
