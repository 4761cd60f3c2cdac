package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * Orders that a line may make, with what they cost together. Immutable, and never changed.
 *
 * @param order numbers of the orders, each once, rising
 * @param times how often each is made
 * @param money what the changeovers and the lateness cost
 * @param isPossible whether the line can make it so; else an order is made more than once somewhere in a like sequence
 */
record LineSequence(int[] order, int[] times, double money, boolean isPossible) {
    /**
     * Sums up a sequence.
     *
     * @param made its orders, in any order
     * @param reduced what it costs less what its orders are worth
     * @param worth what each order of the problem is worth
     */
    static LineSequence of(int[] made, double reduced, double[] worth, boolean isPossible) {
        int[] order = Arrays.stream(made).sorted().distinct().toArray();
        int[] times = new int[order.length];
        double money = reduced;
        for (int each : made) {
            times[Arrays.binarySearch(order, each)]++;
            money += worth[each];
        }
        return new LineSequence(order, times, money, isPossible);
    }

    /** What it costs less what its orders are worth. */
    double reduced(double[] worth) {
        double reduced = money;
        for (int i = 0; i < order.length; i++) {
            reduced -= times[i] * worth[order[i]];
        }
        return reduced;
    }

    /** Whether it makes the same for the same money, rounding aside. */
    boolean isLike(LineSequence other) {
        return Math.abs(money - other.money) <= 1e-9 * Math.max(1, Math.abs(money))
                && Arrays.equals(order, other.order)
                && Arrays.equals(times, other.times);
    }
}
