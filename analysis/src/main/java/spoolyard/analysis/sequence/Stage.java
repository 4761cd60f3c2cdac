package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.List;

/**
 * How finely {@link WholeLines} reckons for a while. Immutable.
 *
 * @param isRough whether it is the first
 * @param pieces pieces of each line's hours
 * @param pieceS worked seconds of each
 * @param remembered how many orders of a product are remembered
 * @param most how many beginnings of sequences are continued for a line of few orders
 * @param steps how many steps at most
 * @param little share of the plan's cost that is too little to go on for
 */
record Stage(boolean isRough, int pieces, double pieceS, int remembered, int most, int steps, double little) {
    private static final int ROUGH_PIECES = 600;
    private static final int LEAST_PIECES = 250;
    private static final int FINE = 2;
    private static final double STEP_WORK = 2e7;
    private static final int ROUGH_MOST = 1000;
    private static final int FINE_MOST = 10_000;
    private static final int LONGER = 3;
    private static final int MOST = 100_000_000;
    private static final int ROUGH_STEPS = 100;
    private static final int FINE_STEPS = 300;
    private static final double ROUGH_LITTLE = 3e-3;
    private static final double FINE_LITTLE = 1e-4;
    private static final int REMEMBERED = 4;
    private static final double MOST_NUMBERS = 1e7;
    /** Where a line has more orders than that, fewer beginnings are continued. */
    private static final int MANY_ORDERS = 100;
    /** An order looked at counts as so many steps of the dynamic programme, each about a nanosecond. */
    private static final double LOOKING = 40;
    /** And so many of those as a change of the search. */
    private static final double A_CHANGE = 1000;

    static Stage rough(List<LineOrders> lines, double lastS) {
        double work = lines.stream()
                .mapToDouble(line -> CostToGo.work(line, ROUGH_PIECES, lastS / ROUGH_PIECES))
                .sum();
        int pieces = (int) Math.max(LEAST_PIECES, Math.min(ROUGH_PIECES, ROUGH_PIECES * STEP_WORK / work));
        int remembered = REMEMBERED;
        while (remembered > 0 && numbers(lines, pieces, remembered) > MOST_NUMBERS) {
            remembered--;
        }
        return new Stage(true, pieces, lastS / pieces, remembered, ROUGH_MOST, ROUGH_STEPS, ROUGH_LITTLE);
    }

    private static double numbers(List<LineOrders> lines, int pieces, int remembered) {
        return lines.stream()
                .flatMap(line -> Arrays.stream(line.orders))
                .mapToDouble(orders -> (double) pieces * (1 << Math.min(remembered, orders.length)))
                .sum();
    }

    /** The next. */
    Stage finer() {
        int more = pieces < ROUGH_PIECES ? 1 : FINE;
        return new Stage(false, pieces * more, pieceS / more, remembered, FINE_MOST, FINE_STEPS, FINE_LITTLE);
    }

    /** As finely, with more patience for each line, within the range of the number. */
    Stage longer() {
        return new Stage(false, pieces, pieceS, remembered, Math.min(most * LONGER, MOST), steps, little);
    }

    /** How many beginnings are continued on one line. */
    int most(LineOrders line) {
        return line.count <= MANY_ORDERS ? most : (int) Math.max(1, (long) most * MANY_ORDERS / line.count);
    }

    CostToGo toGo(LineOrders line) {
        return new CostToGo(line, pieces, pieceS, remembered);
    }

    /** What a step on a line counts, in changes of a search. */
    double work(LineOrders line, int continued) {
        return (CostToGo.work(line, pieces, pieceS) + LOOKING * line.count * continued) / A_CHANGE;
    }

    /** What the dynamic programmes of a step count at most. */
    double work(List<LineOrders> lines) {
        return lines.stream().mapToDouble(line -> work(line, 0)).sum();
    }
}
