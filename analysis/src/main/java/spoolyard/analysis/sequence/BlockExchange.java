package spoolyard.analysis.sequence;

import java.util.stream.IntStream;

/**
 * Looks for exchanges of two blocks on a {@link LateLine}. Neighbouring blocks may be of any length, and all of them are looked
 * at; others only if they are short. Most exchanges are reckoned or ruled out in constant time: the first block grows order by
 * order, the second slips as a whole, and what follows has a bound. For one thread.
 *
 * <p>Source: the neighbourhood, Xu, Lü and Cheng, Journal of Scheduling 17 (2014).
 */
final class BlockExchange {
    private static final double LEAST_GAIN = 1e-9;

    private final LateLine line;
    private final SlippingBlock slipping;
    private final int longestApart;
    private double limit;
    private int first;
    private int firstEnd;
    private int second;
    private int secondEnd;

    BlockExchange(LateLine line, int longestApart) {
        this.line = line;
        this.longestApart = longestApart;
        slipping = new SlippingBlock(line.count);
    }

    /** Makes the best exchange of the block that begins at a place with the one right behind it, if it costs less. */
    boolean improveNeighbours(int a) {
        begin();
        slipping.clear();
        for (int b = a + 1; b < line.count; b++) {
            int last = line.order[b - 1];
            slipping.add(line.endS[b] - line.dueS[last], line.latePerS[last]);
            exchangeNeighbours(a, b);
        }
        return makeBest();
    }

    /** Makes the best exchange of a short block that begins at a place with a short one further on, if it costs less. */
    boolean improveApart(int a) {
        begin();
        for (int b = a + 1; b <= Math.min(a + longestApart, line.count - 2); b++) {
            for (int c = b + 1; c < line.count; c++) {
                exchangeApart(a, b, c);
            }
        }
        return makeBest();
    }

    private void begin() {
        limit = line.cost - LEAST_GAIN * Math.max(1, line.cost);
        first = -1;
    }

    private boolean makeBest() {
        if (first >= 0) {
            line.exchange(first, firstEnd, second, secondEnd);
        }
        return first >= 0;
    }

    /** The places where the last exchange that was made begins, ends, and has a seam. */
    IntStream ends() {
        return IntStream.of(first, first + secondEnd - second, first + secondEnd - firstEnd, secondEnd);
    }

    private void found(int a, int b, int c, int d) {
        first = a;
        firstEnd = b;
        second = c;
        secondEnd = d;
    }

    private void exchangeNeighbours(int a, int b) {
        int[] order = line.order;
        double[] stepS = line.stepS;
        int count = line.count;
        int head = order[a];
        double headEndS = line.endS[a + 1];
        double atS = line.endS[a];
        double cost = line.costBefore[a];
        int from = line.before(a);
        for (int d = b + 1; d <= count; d++) {
            int each = order[d - 1];
            atS += stepS[from * count + each];
            cost += line.lateCost(each, atS);
            if (cost > limit) {
                return;
            }
            from = each;
            double slipS = atS + stepS[each * count + head] - headEndS;
            double withBlock = cost + slipping.cost(slipS);
            if (withBlock > limit) {
                if (cost + slipping.cost(atS + line.leastStepS[head] - headEndS) > limit) {
                    return;
                }
            } else if (isBest(withBlock, line.endS[b] + slipS, order[b - 1], d)) {
                found(a, b, b, d);
            }
        }
    }

    /** Whether a cost with that of all from a place on is the least so far; the limit is lowered to it. */
    private boolean isBest(double before, double atS, int last, int place) {
        double total = before > limit ? before : before + tail(before, atS, last, place);
        boolean isBest = total <= limit;
        limit = isBest ? total - LEAST_GAIN * Math.max(1, total) : limit;
        return isBest;
    }

    /** What all from a place on cost at least, if they follow then. */
    private double leastTail(double atS, int last, int place) {
        if (place == line.count) {
            return 0;
        }
        double slipS = atS + line.stepS[last * line.count + line.order[place]] - line.endS[place + 1];
        return line.leastOf(place, line.count, slipS);
    }

    private double tail(double before, double atS, int last, int place) {
        if (place == line.count) {
            return 0;
        }
        double slipS = atS + line.stepS[last * line.count + line.order[place]] - line.endS[place + 1];
        double least = line.leastOf(place, line.count, slipS);
        boolean isExact = slipS <= line.slackS[place] || before + least > limit;
        return isExact ? least : line.costOf(place, line.count, slipS);
    }

    private void exchangeApart(int a, int b, int c) {
        int[] order = line.order;
        int count = line.count;
        double backS = line.stepS[order[c - 1] * count + order[a]] + line.endS[c] - line.endS[a + 1];
        double atS = line.endS[a];
        double cost = line.costBefore[a];
        int from = line.before(a);
        for (int d = c + 1; d <= Math.min(c + longestApart, count) && cost <= limit; d++) {
            int each = order[d - 1];
            atS += line.stepS[from * count + each];
            cost += line.lateCost(each, atS);
            from = each;
            double slipS = atS + line.stepS[each * count + order[b]] - line.endS[b + 1];
            double firstSlipS = backS + slipS;
            double endS = line.endS[b] + firstSlipS;
            double least = cost + line.leastOf(b, c, slipS) + line.leastOf(a, b, firstSlipS);
            if (least + leastTail(endS, order[b - 1], d) <= limit) {
                double upToTail = cost + line.costOf(b, c, slipS) + line.costOf(a, b, firstSlipS);
                if (isBest(upToTail, endS, order[b - 1], d)) {
                    found(a, b, c, d);
                }
            }
        }
    }
}
