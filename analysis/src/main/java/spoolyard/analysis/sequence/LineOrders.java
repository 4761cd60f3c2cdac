package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.TreeMap;

/**
 * The orders that a line may still choose, by product, and its changeovers between those products alone, in arrays without gaps.
 * Orders that are frozen, on this line or another, are left out: the line begins where its own frozen orders leave it. Never
 * changed once made.
 *
 * <p>Products are numbered anew from 0; the number of products stands for the state in which the line begins.
 */
final class LineOrders {
    final LineKernel kernel;
    /** How many products it may make. */
    final int products;
    /** Its orders by product: {@code [product][]}. */
    final int[][] orders;
    /** How many these are. */
    final int count;
    /** Product of each order of the problem; -1 if the line may not choose it. */
    final int[] productOf;
    /** Money of the changeovers, {@code [products + 1][products]}, row-major. */
    final double[] money;
    /** Their worked seconds. */
    final double[] timeS;
    /** Money of the way out, {@code [products + 1]}. */
    final double[] endMoney;
    /** Least money to begin an order of each product. */
    final double[] leastMoney;
    /** Least worked seconds for that. */
    final double[] leastTimeS;
    /** What the frozen orders cost. */
    final double frozenMoney;
    /** When they are done, worked seconds. */
    final double startS;

    private LineOrders(LineKernel kernel, List<Integer> frozen, boolean[] isFrozen) {
        this.kernel = kernel;
        TreeMap<Integer, List<Integer>> byProduct = new TreeMap<>();
        for (int order = 0; order < isFrozen.length; order++) {
            if (kernel.canMake(order) && !isFrozen[order]) {
                byProduct
                        .computeIfAbsent(kernel.product[order], product -> new ArrayList<>())
                        .add(order);
            }
        }
        products = byProduct.size();
        orders = byProduct.values().stream()
                .map(list -> list.stream().mapToInt(order -> order).toArray())
                .toArray(int[][]::new);
        count = Arrays.stream(orders).mapToInt(list -> list.length).sum();
        productOf = new int[isFrozen.length];
        Arrays.fill(productOf, -1);
        for (int product = 0; product < products; product++) {
            for (int order : orders[product]) {
                productOf[order] = product;
            }
        }
        double workedS = 0;
        double spent = 0;
        int state = kernel.atStart;
        for (int order : frozen) {
            int entry = state * kernel.states + kernel.product[order];
            workedS = Math.max(workedS, kernel.releaseS[order]) + kernel.timeS[entry] + kernel.runS[order];
            spent += kernel.cost[entry] + kernel.lateCost(order, workedS);
            state = kernel.product[order];
        }
        startS = workedS;
        frozenMoney = spent;
        int[] states = states(byProduct.keySet(), state);
        money = between(kernel.cost, states);
        timeS = between(kernel.timeS, states);
        endMoney = Arrays.stream(states)
                .mapToDouble(from -> kernel.cost[from * kernel.states + kernel.atEnd])
                .toArray();
        leastMoney = least(money);
        leastTimeS = least(timeS);
    }

    /**
     * All lines of a problem.
     *
     * @param problem without week ends
     */
    static List<LineOrders> of(SequencingProblem problem) {
        boolean[] isFrozen = new boolean[problem.jobs().size()];
        problem.lines().forEach(line -> line.frozen().forEach(order -> isFrozen[order] = true));
        LineKernel[] kernels = LineKernel.of(problem);
        List<LineOrders> all = new ArrayList<>();
        for (int line = 0; line < kernels.length; line++) {
            all.add(new LineOrders(kernels[line], problem.lines().get(line).frozen(), isFrozen));
        }
        return all;
    }

    private static int[] states(Iterable<Integer> chosen, int start) {
        List<Integer> states = new ArrayList<>();
        chosen.forEach(states::add);
        states.add(start);
        return states.stream().mapToInt(state -> state).toArray();
    }

    private double[] between(double[] table, int[] states) {
        double[] all = new double[states.length * products];
        for (int from = 0; from < states.length; from++) {
            for (int to = 0; to < products; to++) {
                all[from * products + to] = table[states[from] * kernel.states + states[to]];
            }
        }
        return all;
    }

    /** By product, over all states before it; itself only if it has another order. */
    private double[] least(double[] table) {
        double[] least = new double[products];
        Arrays.fill(least, Double.POSITIVE_INFINITY);
        for (int from = 0; from <= products; from++) {
            for (int to = 0; to < products; to++) {
                if (from != to || orders[to].length > 1) {
                    least[to] = Math.min(least[to], table[from * products + to]);
                }
            }
        }
        return least;
    }

    /** When an order is done that comes after others, worked seconds. */
    double endS(double workedS, int order, int entry) {
        return Math.max(workedS, kernel.releaseS[order]) + timeS[entry] + kernel.runS[order];
    }

    /** Those orders of a sequence that are not frozen. */
    int[] free(List<Integer> sequence) {
        return sequence.stream()
                .mapToInt(order -> order)
                .filter(order -> productOf[order] >= 0)
                .toArray();
    }

    /** Worked seconds of the shortest order; infinite if there is none. */
    double shortestRunS() {
        return Arrays.stream(orders)
                .flatMapToInt(Arrays::stream)
                .mapToDouble(order -> kernel.runS[order])
                .min()
                .orElse(Double.POSITIVE_INFINITY);
    }
}
