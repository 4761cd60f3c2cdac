package spoolyard.analysis.sequence;

/**
 * What a block of orders costs when all of it slips by the same time, which may be below 0: a function linear in pieces. Quick if
 * it is asked for slips near the last one. For one thread.
 */
final class SlippingBlock {
    private final double[] lateS;
    private final double[] perS;
    private int count;
    private int late;
    private double slope;
    private double constant;

    SlippingBlock(int most) {
        lateS = new double[most];
        perS = new double[most];
    }

    void clear() {
        count = 0;
        rewind();
    }

    /** Adds an order: how late it is without a slip, below 0 if early, and what a second costs. */
    void add(double byS, double costPerS) {
        int place = count++;
        while (place > 0 && lateS[place - 1] < byS) {
            lateS[place] = lateS[place - 1];
            perS[place] = perS[place - 1];
            place--;
        }
        lateS[place] = byS;
        perS[place] = costPerS;
        rewind();
    }

    /** So that rounding does not add up. */
    private void rewind() {
        late = 0;
        slope = 0;
        constant = 0;
    }

    double cost(double slipS) {
        while (late < count && lateS[late] + slipS > 0) {
            slope += perS[late];
            constant += perS[late] * lateS[late];
            late++;
        }
        while (late > 0 && lateS[late - 1] + slipS <= 0) {
            late--;
            slope -= perS[late];
            constant -= perS[late] * lateS[late];
        }
        return slope * slipS + constant;
    }
}
