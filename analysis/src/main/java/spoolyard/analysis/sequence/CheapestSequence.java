package spoolyard.analysis.sequence;

import java.util.ArrayDeque;
import java.util.Arrays;
import java.util.Deque;

/**
 * The cheapest sequence of one line when each order is worth something, with its real times, making each order once at most; or a
 * bound on what it costs, if it takes too long to find.
 *
 * <p>Beginnings of sequences are continued, the one first that costs least with the least that its rest costs by {@link CostToGo}.
 * When no beginning promises less than a sequence that was found, that is the cheapest. At any time before, nothing costs
 * less than the best promise that is open: all sequences continue an open beginning or one that was beaten.
 *
 * <p>A beginning that makes the same orders as another and ends with the same product, not later and not dearer, beats it: what follows
 * costs no more, as a line may wait. For one thread at a time.
 *
 * <p>Source: Hart, Nilsson and Raphael, IEEE Transactions on Systems Science and Cybernetics 4 (1968).
 */
final class CheapestSequence {
    private static final int KNOWN = 60;
    private static final int LONGEST = 10_000;

    private final CostToGo toGo;
    private final LineOrders line;
    private final Deque<int[]> known = new ArrayDeque<>();

    private PartialSequences parts;
    private double[] worth;
    private double best;
    private int[] bestOrders;
    private int bestPart;
    private int continued;

    /** A line's search, with the times of its relaxation. */
    CheapestSequence(CostToGo toGo) {
        this.toGo = toGo;
        line = toGo.line;
    }

    /** Tells it of a sequence that the line can follow, each order once. */
    void know(int[] orders) {
        known.addLast(orders);
    }

    /** Sums up such a sequence. */
    LineSequence sequence(int[] orders) {
        return LineSequence.of(orders, money(orders), new double[line.productOf.length], true);
    }

    /**
     * What was found.
     *
     * @param least no sequence costs less, what its orders are worth taken off; what frozen orders cost is left out
     * @param isExact whether one costs just that
     * @param like a sequence that costs that, or such as are reckoned by pieces
     * @param best the cheapest sequence known
     * @param continued how many beginnings were continued
     */
    record Found(double least, boolean isExact, LineSequence like, LineSequence best, int continued) {}

    /**
     * Searches.
     *
     * @param worths what each order of the problem is worth
     * @param most how many beginnings are continued at most
     * @param store to work with
     * @return what was found
     */
    Found find(double[] worths, int most, PartialSequences store) {
        worth = worths;
        parts = store;
        toGo.fill(worths);
        beginWithKnown();
        continued = 0;
        parts.begin(worths.length, line.products, line.startS, toGo.whole());
        while (isOpen() && continued < most && !parts.isFull()) {
            continueFrom(parts.pop());
            continued++;
        }
        remember();
        return isOpen() ? bounded() : exact();
    }

    private boolean isOpen() {
        return !parts.isEmpty() && parts.promise[parts.top()] < best;
    }

    private void beginWithKnown() {
        best = line.endMoney[line.products];
        bestOrders = new int[0];
        bestPart = -1;
        for (int[] orders : known) {
            double cost = cost(orders);
            if (cost < best) {
                best = cost;
                bestOrders = orders;
            }
        }
    }

    private double cost(int[] orders) {
        double cost = money(orders);
        for (int order : orders) {
            cost -= worth[order];
        }
        return cost;
    }

    /** What a whole sequence costs. */
    private double money(int[] orders) {
        double workedS = line.startS;
        double cost = 0;
        int from = line.products;
        for (int order : orders) {
            int to = line.productOf[order];
            int entry = from * line.products + to;
            workedS = line.endS(workedS, order, entry);
            cost += line.money[entry] + line.kernel.lateCost(order, workedS);
            from = to;
        }
        return cost + line.endMoney[from];
    }

    private void continueFrom(int part) {
        int from = parts.product[part];
        for (int to = 0; to < line.products; to++) {
            int entry = from * line.products + to;
            double cost = parts.cost[part] + line.money[entry];
            double makingS = parts.workedS[part] + line.timeS[entry];
            if (to == from || cost + toGo.entered(to, makingS) < best) {
                for (int order : line.orders[to]) {
                    if (!parts.makes(part, order)) {
                        add(part, order, entry);
                    }
                }
            }
        }
    }

    private void add(int part, int order, int entry) {
        double workedS = line.endS(parts.workedS[part], order, entry);
        double cost = parts.cost[part] + line.money[entry] - worth[order] + line.kernel.lateCost(order, workedS);
        int draft = parts.draft(part, order);
        int to = line.productOf[order];
        parts.product[draft] = to;
        parts.workedS[draft] = workedS;
        parts.cost[draft] = cost;
        double promise = Math.max(parts.promise[part], cost + rest(draft));
        parts.promise[draft] = promise;
        boolean isBest = promise < best && cost + line.endMoney[to] < best;
        if (isBest) {
            best = cost + line.endMoney[to];
            bestPart = draft;
        }
        if (promise < best) {
            parts.offer();
        } else if (isBest) {
            parts.keep();
        }
    }

    private double rest(int part) {
        int product = parts.product[part];
        if (!toGo.isAfter(parts.workedS[part])) {
            return toGo.rest(product, set(part, product), parts.workedS[part]);
        }
        double rest = toGo.afterAll();
        for (int each = part; parts.before[each] >= 0; each = parts.before[each]) {
            rest -= toGo.after(parts.order[each]);
        }
        return rest;
    }

    private int set(int part, int product) {
        int set = 0;
        for (int order : line.orders[product]) {
            set |= parts.makes(part, order) ? toGo.bitOf(order) : 0;
        }
        return set;
    }

    private void remember() {
        if (bestPart >= 0) {
            bestOrders = parts.orders(bestPart);
            known.addLast(bestOrders);
            if (known.size() > KNOWN) {
                known.removeFirst();
            }
        }
    }

    private Found exact() {
        LineSequence sequence = LineSequence.of(bestOrders, best, worth, true);
        return new Found(best, true, sequence, sequence, continued);
    }

    private Found bounded() {
        int top = parts.top();
        LineSequence like = LineSequence.of(withRest(top), parts.promise[top], worth, false);
        return new Found(parts.promise[top], false, like, LineSequence.of(bestOrders, best, worth, true), continued);
    }

    /** The orders of a beginning, and those of its rest as it is reckoned. */
    private int[] withRest(int part) {
        int[] begun = parts.orders(part);
        int[] all = Arrays.copyOf(begun, begun.length + LONGEST);
        int count = begun.length;
        int product = parts.product[part];
        int set = product < line.products ? set(part, product) : 0;
        int piece = toGo.piece(parts.workedS[part]);
        while (piece < toGo.pieces && count < all.length) {
            CostToGo.Step step = toGo.cheapest(product, set, piece);
            if (step.order() < 0) {
                break;
            }
            all[count++] = step.order();
            product = line.productOf[step.order()];
            set = step.set();
            piece = step.end();
        }
        return Arrays.copyOf(all, count);
    }
}
