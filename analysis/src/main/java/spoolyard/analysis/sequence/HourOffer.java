package spoolyard.analysis.sequence;

/**
 * One way to make an order on a line, in {@link SharedHours}: after another of its product, as the first of its product after another
 * product, or as the first of the line. Immutable.
 *
 * @param order number of the order
 * @param begin number of the dual variable of its product; -1 if it doesn't begin it
 * @param first number of the dual variable of the line's first place; -1 if it isn't there
 * @param money what the changeover before it costs
 * @param workS worked seconds with that changeover, {@code > 0}
 * @param perS what a second late costs
 * @param dueS due date, seconds since the start of the plan
 * @param from first piece of the line's hours in which it can be made
 * @param late first piece in which it is late, {@code >= from}
 */
record HourOffer(
        int order, int begin, int first, double money, double workS, double perS, double dueS, int from, int late) {
    private static final double SHORTEST_S = 1e-3;

    /** The order on its own line's clock. */
    static HourOffer of(LineKernel kernel, int job, int begin, int first, double money, double changeS, double pieceS) {
        int from = piece(kernel.releaseS[job] / pieceS);
        int late = piece(Math.ceil(Math.max(0, kernel.dueWorkedS[job]) / pieceS));
        double workS = Math.max(SHORTEST_S, kernel.runS[job] + changeS);
        return new HourOffer(
                job, begin, first, money, workS, kernel.latePerS[job], kernel.dueS[job], from, Math.max(from, late));
    }

    private static int piece(double number) {
        return (int) Math.min(Integer.MAX_VALUE, number);
    }

    boolean isBegin() {
        return begin >= 0;
    }

    boolean isFirst() {
        return first >= 0;
    }

    /** What it is worth to be made, by the dual variables, less what the changeover costs. */
    double ready(double[] number) {
        return number[order] + (isBegin() ? number[begin] : 0) - (isFirst() ? number[first] : 0) - money;
    }

    /** What all its work costs in a piece of hours; infinite before its release. */
    double cost(int piece, double clockS) {
        if (piece < from) {
            return Double.POSITIVE_INFINITY;
        }
        return piece < late ? 0 : perS * (clockS - dueS + workS / 2);
    }
}
