package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.stream.IntStream;

/**
 * What it costs at least to begin a product on a line, priced so that the sum over all products is a bound on the changeovers
 * of any plan. Never changed once made.
 *
 * <p>A plan goes from product to product on each line and, as if round a circle, from the line's end to its start. So it comes to
 * each product as often as it leaves it, and at least once; to each line's end just once. A potential for each product and line may
 * therefore be added to what it costs to leave it and taken off what it costs to come to it: no plan's cost changes by that, yet
 * the cheapest ways in no longer all come from the same few products. The best potentials are the duals of an assignment problem
 * over the lengths of the shortest ways, since a product may be passed more than once; with these no entry costs less than 0, so
 * that counting only one entry of each product is allowed.
 *
 * <p>Source, from memory: an assignment over shortest ways bounds the tour that may pass a city again, Cornuéjols, Fonlupt and Naddef,
 * Mathematical Programming 33 (1985); potentials: linear programming duality.
 */
final class EntryPrices {
    private static final double NEVER = 1e12;
    private static final double ROUNDING = 1e-6;

    /** Whether a line makes a product: {@code [line][product]}. */
    final boolean[][] isMade;
    /** Least price to begin a product after another, {@code [line][product]}; infinite if there is no other, or it isn't made. */
    final double[][] money;
    /** Least seconds for that. */
    final double[][] timeS;
    /** Price to begin a product as the first of the line, {@code [line][product]}. */
    final double[][] firstMoney;
    /** What the ends of all lines cost at least, priced alike; of either sign. */
    final double endsMoney;

    private final LineKernel[] kernels;
    private final int products;
    private final int[] made;
    private double[] potential;

    EntryPrices(LineKernel[] kernels) {
        this.kernels = kernels;
        products = kernels[0].atStart;
        isMade = new boolean[kernels.length][products];
        for (int line = 0; line < kernels.length; line++) {
            for (int job = 0; job < kernels[line].product.length; job++) {
                isMade[line][kernels[line].product[job]] |= kernels[line].canMake(job);
            }
        }
        made = IntStream.range(0, products)
                .filter(product -> Arrays.stream(isMade).anyMatch(line -> line[product]))
                .toArray();
        money = new double[kernels.length][products];
        timeS = new double[kernels.length][products];
        firstMoney = new double[kernels.length][products];
        potential = potentials();
        if (!fill()) {
            potential = new double[products + kernels.length];
            fill();
        }
        endsMoney =
                IntStream.range(0, kernels.length).mapToDouble(this::endMoney).sum();
    }

    /** The first product of a line is begun from the line's start. */
    double firstTimeS(int line, int product) {
        return kernels[line].timeS[kernels[line].atStart * kernels[line].states + product];
    }

    /** By product, then by line. */
    private double[] potentials() {
        int size = made.length + kernels.length;
        double[] rows = Assignment.of(size, shortestWays(size)).rowPotentials();
        double[] all = new double[products + kernels.length];
        for (int i = 0; i < made.length; i++) {
            all[made[i]] = -rows[i];
        }
        System.arraycopy(negative(rows, made.length), 0, all, products, kernels.length);
        return all;
    }

    private static double[] negative(double[] numbers, int from) {
        return Arrays.stream(numbers, from, numbers.length)
                .map(number -> -number)
                .toArray();
    }

    /** Between products on the cheapest line that makes both, and lines; through products only, and at least one step. */
    private double[] shortestWays(int size) {
        double[] way = new double[size * size];
        Arrays.fill(way, NEVER);
        for (int line = 0; line < kernels.length; line++) {
            steps(line, way, size);
        }
        for (int over = 0; over < made.length; over++) {
            for (int from = 0; from < size; from++) {
                double first = way[from * size + over];
                for (int to = 0; first < NEVER && to < size; to++) {
                    way[from * size + to] = Math.min(way[from * size + to], first + way[over * size + to]);
                }
            }
        }
        return way;
    }

    private void steps(int line, double[] way, int size) {
        LineKernel kernel = kernels[line];
        int terminal = made.length + line;
        way[terminal * size + terminal] = kernels.length == 1 ? NEVER : emptyMoney(kernel);
        for (int i = 0; i < made.length; i++) {
            if (isMade[line][made[i]]) {
                way[terminal * size + i] = kernel.cost[kernel.atStart * kernel.states + made[i]];
                way[i * size + terminal] = kernel.cost[made[i] * kernel.states + kernel.atEnd];
                for (int j = 0; j < made.length; j++) {
                    if (i != j && isMade[line][made[j]]) {
                        double step = kernel.cost[made[i] * kernel.states + made[j]];
                        way[i * size + j] = Math.min(way[i * size + j], step);
                    }
                }
            }
        }
    }

    private static double emptyMoney(LineKernel kernel) {
        return kernel.cost[kernel.atStart * kernel.states + kernel.atEnd];
    }

    /** Returns false if an entry is priced below 0, rounding aside. */
    private boolean fill() {
        double least = 0;
        for (int line = 0; line < kernels.length; line++) {
            for (int to = 0; to < products; to++) {
                enter(line, to);
                least = Math.min(least, Math.min(money[line][to], firstMoney[line][to]));
            }
        }
        return least >= -ROUNDING;
    }

    private void enter(int line, int to) {
        LineKernel kernel = kernels[line];
        money[line][to] = Double.POSITIVE_INFINITY;
        timeS[line][to] = Double.POSITIVE_INFINITY;
        firstMoney[line][to] = Double.POSITIVE_INFINITY;
        if (isMade[line][to]) {
            double start = kernel.cost[kernel.atStart * kernel.states + to];
            firstMoney[line][to] = start + potential[products + line] - potential[to];
            for (int from = 0; from < products; from++) {
                if (from != to && isMade[line][from]) {
                    int entry = from * kernel.states + to;
                    double priced = kernel.cost[entry] + potential[from] - potential[to];
                    money[line][to] = Math.min(money[line][to], priced);
                    timeS[line][to] = Math.min(timeS[line][to], kernel.timeS[entry]);
                }
            }
        }
    }

    private double endMoney(int line) {
        LineKernel kernel = kernels[line];
        double least = kernels.length == 1 ? Double.POSITIVE_INFINITY : emptyMoney(kernel);
        for (int from = 0; from < products; from++) {
            if (isMade[line][from]) {
                double end = kernel.cost[from * kernel.states + kernel.atEnd];
                least = Math.min(least, end + potential[from] - potential[products + line]);
            }
        }
        return least;
    }
}
