package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.Comparator;
import java.util.stream.IntStream;

/**
 * What the rest of a line's sequence costs at least, less what its orders are worth, from each product and each piece of the line's
 * hours on. For one thread.
 *
 * <p>It is a dynamic programme backwards in time, of sequences that know little of what they have made: an order may be made again
 * once another product was in between. In a stretch of one product its first few orders are remembered, each by a bit, and made
 * once at most. So it takes in all sequences that make each order once, and costs no more than the cheapest of them.
 *
 * <p><b>Time.</b> Nothing gets cheaper by beginning later, since a line may wait. The cost from any instant of a piece is therefore at
 * least that from its beginning, and each step is reckoned from the beginning of its piece, with lateness by the clock at the
 * beginning of the piece in which it ends. An order waits for its release, and not less than the shortest changeover after it.
 *
 * <p><b>Short orders.</b> An order shorter than a piece may end in the piece in which it begins. A line can make only so many in one piece:
 * fewer than the length of the piece divided by the shortest. The piece is reckoned that many times more. The first time, all short
 * orders are taken to end in the next piece, where the rest costs no less than from any later; each time after, in the same
 * piece with what was reckoned the time before.
 *
 * <p><b>After the last piece</b> each order may be made once, at its cheapest changeover and its lateness by then, if it is worth that.
 */
final class CostToGo {
    /** So that rounding moves nothing over the end of a working period, as a share of a piece. */
    private static final double ROUNDING = 1e-9;

    private static final double CLOCK_ROUNDING = 1e-6;

    final LineOrders line;
    final int pieces;
    private final double pieceS;
    private final int chunk;
    private final int rounds;
    private final double[] clockS;
    private final int[] bit;
    private final int[] length;
    private final int[] ready;
    private final int[] changeLength;
    private final int longestChange;
    private final int[][] cheapestFirst;
    /** {@code [product][set of its remembered orders made][piece]}. */
    private final double[][][] rest;
    /** From the end of the changeover on, {@code [product][piece]}. */
    private final double[][] entered;
    /** When another product follows, or none. */
    private final double[][] left;

    private final double[] after;
    private double afterAll;
    /** Least of {@code entered} so far. */
    private double lowest;

    private double[] worth;

    /**
     * Prepares one.
     *
     * @param line the line
     * @param pieces how many pieces of hours, {@code >= 1}
     * @param pieceS worked seconds of each, {@code > 0}
     * @param remembered orders of each product that are remembered, {@code >= 0}
     */
    CostToGo(LineOrders line, int pieces, double pieceS, int remembered) {
        this.line = line;
        this.pieces = pieces;
        this.pieceS = pieceS;
        int count = line.productOf.length;
        bit = new int[count];
        length = new int[count];
        ready = new int[count];
        after = new double[count];
        rest = new double[line.products][][];
        for (int product = 0; product < line.products; product++) {
            prepare(product, remembered);
        }
        entered = new double[line.products][pieces];
        left = new double[line.products][pieces];
        changeLength = Arrays.stream(line.timeS).mapToInt(this::pieceOf).toArray();
        longestChange = Arrays.stream(changeLength).max().orElse(0);
        cheapestFirst =
                IntStream.range(0, line.products).mapToObj(this::cheapestFirst).toArray(int[][]::new);
        clockS = new double[pieces + 1];
        for (int piece = 0; piece <= pieces; piece++) {
            clockS[piece] = line.kernel.endOfS(Math.max(0, (piece - CLOCK_ROUNDING) * pieceS));
        }
        double shortestS = line.shortestRunS();
        chunk = Math.max(1, Math.min(pieces, pieceOf(shortestS)));
        rounds = pieceOf(shortestS) >= 1 ? 1 : 1 + shortInOnePiece(shortestS);
    }

    private void prepare(int product, int remembered) {
        int[] orders = line.orders[product];
        for (int i = 0; i < orders.length; i++) {
            int order = orders[i];
            bit[order] = i < remembered ? 1 << i : 0;
            length[order] = pieceOf(line.kernel.runS[order]);
            ready[order] = Math.min(pieces, pieceOf(line.kernel.releaseS[order] + line.leastTimeS[product]));
        }
        rest[product] = new double[1 << Math.min(remembered, orders.length)][pieces];
    }

    private int shortInOnePiece(double shortestS) {
        long shorter = Arrays.stream(line.orders)
                .flatMapToInt(Arrays::stream)
                .filter(order -> length[order] == 0)
                .count();
        return (int) Math.min(shorter, Math.ceil(pieceS / shortestS));
    }

    /** In which piece an instant is. */
    private int pieceOf(double workedS) {
        return (int) Math.min(Integer.MAX_VALUE / 4, workedS / pieceS + ROUNDING);
    }

    /** Steps of reckoning that one filling takes. */
    static double work(LineOrders line, int pieces, double pieceS) {
        double perRound = Math.max(1, pieceS / Math.max(1e-3 * pieceS, line.shortestRunS()));
        return (double) line.products * line.products * pieces * perRound;
    }

    /**
     * Reckons all of it.
     *
     * @param worths what each order of the problem is worth, of either sign; kept until the next time
     */
    void fill(double[] worths) {
        worth = worths;
        fillAfter();
        lowest = Double.POSITIVE_INFINITY;
        for (int end = pieces; end > 0; end -= chunk) {
            int from = Math.max(0, end - chunk);
            if (rounds > 1) {
                beginRounds(from);
            }
            for (int round = 0; round < rounds; round++) {
                fill(from, end);
            }
        }
    }

    private void fillAfter() {
        afterAll = Double.POSITIVE_INFINITY;
        for (double money : line.endMoney) {
            afterAll = Math.min(afterAll, money);
        }
        for (int product = 0; product < line.products; product++) {
            for (int order : line.orders[product]) {
                double late = lateMoney(order, pieces);
                after[order] = Math.min(0, line.leastMoney[product] + late - worth[order]);
                afterAll += after[order];
            }
        }
    }

    private void beginRounds(int piece) {
        for (double[][] sets : rest) {
            for (double[] set : sets) {
                set[piece] = piece + 1 < pieces ? set[piece + 1] : afterAll;
            }
        }
    }

    private void fill(int from, int end) {
        for (int product = 0; product < line.products; product++) {
            enter(product, from, end);
            for (int piece = from; piece < end; piece++) {
                lowest = Math.min(lowest, entered[product][piece]);
            }
        }
        for (int product = 0; product < line.products; product++) {
            leave(product, from, end);
            stay(product, from, end);
        }
    }

    private void enter(int product, int from, int end) {
        Arrays.fill(entered[product], from, end, Double.POSITIVE_INFINITY);
        for (int order : line.orders[product]) {
            make(order, rest[product][bit[order]], entered[product], from, end);
        }
    }

    /** The cheapest changeovers first, as long as one of them may matter. */
    private void leave(int product, int from, int end) {
        double[] least = left[product];
        Arrays.fill(least, from, end, line.endMoney[product]);
        for (int piece = Math.max(from, pieces - longestChange); piece < end; piece++) {
            least[piece] = Math.min(least[piece], afterAll);
        }
        double largest = Double.POSITIVE_INFINITY;
        for (int to : cheapestFirst[product]) {
            int entry = product * line.products + to;
            if (line.money[entry] + lowest >= largest) {
                return;
            }
            largest = change(line.money[entry], changeLength[entry], entered[to], least, from, end);
        }
    }

    /** Returns the largest in the range. */
    private double change(double money, int steps, double[] next, double[] least, int from, int end) {
        int inside = Math.min(end, pieces - steps);
        for (int piece = from; piece < inside; piece++) {
            double cost = money + next[piece + steps];
            least[piece] = cost < least[piece] ? cost : least[piece];
        }
        double largest = Double.NEGATIVE_INFINITY;
        for (int piece = from; piece < end; piece++) {
            largest = least[piece] > largest ? least[piece] : largest;
        }
        return largest;
    }

    private int[] cheapestFirst(int product) {
        return IntStream.range(0, line.products)
                .filter(to -> to != product)
                .boxed()
                .sorted(Comparator.comparingDouble(to -> line.money[product * line.products + to]))
                .mapToInt(to -> to)
                .toArray();
    }

    /** Larger sets first; the empty one only if an order isn't remembered. */
    private void stay(int product, int from, int end) {
        double[][] sets = rest[product];
        int entry = product * line.products + product;
        double[] next = new double[end - from];
        int smallest = sets.length == 1 << line.orders[product].length ? 1 : 0;
        for (int set = sets.length - 1; set >= smallest; set--) {
            Arrays.fill(next, Double.POSITIVE_INFINITY);
            for (int order : line.orders[product]) {
                if ((set & bit[order]) == 0) {
                    again(order, entry, sets[set | bit[order]], next, from);
                }
            }
            for (int piece = from; piece < end; piece++) {
                double least = Math.min(left[product][piece], next[piece - from]);
                sets[set][piece] = rounds > 1 ? Math.min(sets[set][piece], least) : least;
            }
        }
    }

    private void again(int order, int entry, double[] next, double[] least, int from) {
        for (int piece = 0; piece < least.length; piece++) {
            int begin = from + piece + changeLength[entry];
            int end = Math.min(pieces, Math.max(begin, ready[order]) + length[order]);
            double then = end < pieces ? next[end] : afterAll;
            double cost = line.money[entry] - worth[order] + lateMoney(order, end) + then;
            least[piece] = Math.min(least[piece], cost);
        }
    }

    /** Makes an order from the end of its changeover on. */
    private void make(int order, double[] next, double[] least, int from, int end) {
        int run = length[order];
        int inside = Math.min(end, pieces - run);
        int released = Math.min(end, ready[order]);
        if (from < released) {
            double cost = made(order, Math.min(pieces, ready[order] + run), next);
            for (int piece = from; piece < released; piece++) {
                least[piece] = Math.min(least[piece], cost);
            }
        }
        double perS = line.kernel.latePerS[order];
        double dueS = perS > 0 ? line.kernel.dueS[order] : Double.POSITIVE_INFINITY;
        for (int piece = Math.max(from, released); piece < inside; piece++) {
            double late = perS * Math.max(0, clockS[piece + run] - dueS);
            double cost = next[piece + run] - worth[order] + late;
            least[piece] = cost < least[piece] ? cost : least[piece];
        }
        for (int piece = Math.max(Math.max(from, released), inside); piece < end; piece++) {
            least[piece] = Math.min(least[piece], made(order, pieces, next));
        }
    }

    private double made(int order, int end, double[] next) {
        return (end < pieces ? next[end] : afterAll) - worth[order] + lateMoney(order, end);
    }

    /** By the clock at the beginning of the piece in which it ends. */
    private double lateMoney(int order, int end) {
        double perS = line.kernel.latePerS[order];
        return perS == 0 ? 0 : perS * Math.max(0, clockS[end] - line.kernel.dueS[order]);
    }

    /**
     * The rest after an order is made.
     *
     * @param product its product
     * @param set bits of the product's orders made so far, by {@link #bitOf}
     * @param workedS when it is done
     * @return money less worth; infinite if that is after the last piece, where {@link #isAfter} tells it
     */
    double rest(int product, int set, double workedS) {
        return rest[product][set][(int) (workedS / pieceS)];
    }

    /** The rest from the end of a changeover on, nothing of the product being made yet; minus infinity after the last piece. */
    double entered(int product, double workedS) {
        return isAfter(workedS) ? Double.NEGATIVE_INFINITY : entered[product][(int) (workedS / pieceS)];
    }

    boolean isAfter(double workedS) {
        return workedS / pieceS >= pieces;
    }

    /** The rest after the last piece if nothing is made before. */
    double afterAll() {
        return afterAll;
    }

    /** What an order adds to that, {@code <= 0}. */
    double after(int order) {
        return after[order];
    }

    int bitOf(int order) {
        return bit[order];
    }

    /** The whole sequence, the frozen orders left out. */
    double whole() {
        int start = line.products * line.products;
        double least = line.endMoney[line.products];
        for (int to = 0; to < line.products; to++) {
            double begin = line.startS + line.timeS[start + to];
            double rest = isAfter(begin) ? afterAll : line.money[start + to] + entered(to, begin);
            least = Math.min(least, rest);
        }
        return least;
    }

    /** A step of a sequence reckoned by pieces. */
    record Step(int order, int set, int end, double money) {}

    /**
     * The cheapest step from a state.
     *
     * @param product the product now; the number of products at the start
     * @param set bits of its orders made
     * @param piece the piece now
     * @return the step; with order -1 if the sequence ends here
     */
    Step cheapest(int product, int set, int piece) {
        Step best = new Step(-1, 0, piece, line.endMoney[product]);
        for (int to = 0; to < line.products; to++) {
            int entry = product * line.products + to;
            int begin = piece + changeLength[entry];
            boolean canBeCheaper =
                    begin < pieces && (to == product || line.money[entry] + entered[to][begin] < best.money);
            for (int order : canBeCheaper ? line.orders[to] : new int[0]) {
                int before = to == product ? set : 0;
                if ((before & bit[order]) == 0) {
                    int end = Math.min(pieces, Math.max(begin, ready[order]) + length[order]);
                    double cost = line.money[entry] + made(order, end, rest[to][before | bit[order]]);
                    best = cost < best.money ? new Step(order, before | bit[order], end, cost) : best;
                }
            }
        }
        return best;
    }

    /** The piece of an instant, for {@link #cheapest}. */
    int piece(double workedS) {
        return (int) Math.min(pieces, workedS / pieceS);
    }
}
