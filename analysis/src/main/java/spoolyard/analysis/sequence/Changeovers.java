package spoolyard.analysis.sequence;

import java.util.Arrays;

/**
 * What it costs and takes to go from product to product on one line. Immutable. Neither symmetry nor the triangle
 * inequality is assumed.
 *
 * <p>Beside the products there are two more states: what the line holds at the start, and how it is to be left.
 */
public final class Changeovers {
    private final int products;
    private final double[] cost;
    private final double[] timeS;

    private Changeovers(int products, double[] cost, double[] timeS) {
        this.products = products;
        this.cost = cost;
        this.timeS = timeS;
    }

    /**
     * Number of products.
     *
     * @return at least 1
     */
    public int products() {
        return products;
    }

    /**
     * The state of the line before its first order.
     *
     * @return its number, to be used as {@code from}
     */
    public int atStart() {
        return products;
    }

    /**
     * The state in which the line is to be left.
     *
     * @return its number, to be used as {@code to}
     */
    public int atEnd() {
        return products + 1;
    }

    int states() {
        return products + 2;
    }

    /**
     * Money a changeover costs.
     *
     * @param from product before, or {@link #atStart()}
     * @param to product after, or {@link #atEnd()}
     * @return money, {@code >= 0}
     */
    public double cost(int from, int to) {
        return cost[from * states() + to];
    }

    /**
     * Time a changeover takes.
     *
     * @param from product before, or {@link #atStart()}
     * @param to product after, or {@link #atEnd()}
     * @return worked seconds, {@code >= 0}
     */
    public double timeS(int from, int to) {
        return timeS[from * states() + to];
    }

    double[] costs() {
        return cost;
    }

    double[] timesS() {
        return timeS;
    }

    /**
     * Starts a table in which everything is free.
     *
     * @param products number of products, {@code >= 1}
     * @return to be filled
     */
    public static Table table(int products) {
        return new Table(products);
    }

    /** A table being filled. For one thread. */
    public static final class Table {
        private final int products;
        private final double[] cost;
        private final double[] timeS;

        private Table(int products) {
            this.products = products;
            cost = new double[(products + 2) * (products + 2)];
            timeS = cost.clone();
        }

        /**
         * Sets one entry.
         *
         * @param from product before; {@code products} for the start of the line
         * @param to product after; {@code products + 1} for the end
         * @param money what it costs, finite and {@code >= 0}
         * @param seconds what it takes, worked seconds, finite and {@code >= 0}
         * @return this table
         * @throws IllegalArgumentException if a number is out of range
         */
        public Table set(int from, int to, double money, double seconds) {
            if (!(money >= 0 && seconds >= 0 && money + seconds < Double.POSITIVE_INFINITY)) {
                throw new IllegalArgumentException("changeover from " + from + " to " + to + ": cost = " + money
                        + ", time = " + seconds + " s. Both must be finite and >= 0.");
            }
            cost[from * (products + 2) + to] = money;
            timeS[from * (products + 2) + to] = seconds;
            return this;
        }

        /**
         * The table as it is now.
         *
         * @return a copy
         */
        public Changeovers done() {
            return new Changeovers(products, Arrays.copyOf(cost, cost.length), Arrays.copyOf(timeS, timeS.length));
        }
    }
}
