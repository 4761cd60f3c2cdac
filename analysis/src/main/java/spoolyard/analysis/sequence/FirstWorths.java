package spoolyard.analysis.sequence;

import java.util.List;

/** What orders may be worth to begin with: what each costs in a plan. */
final class FirstWorths {
    private FirstWorths() {}

    /**
     * Shares out what a plan costs. Each order pays for its lateness; orders of one product that follow each other share the changeover
     * before them.
     *
     * @param lines all lines
     * @param plan a plan of the problem
     * @param isFree which orders are not frozen; the others are worth 0
     * @return money for each order of the problem
     */
    static double[] of(List<LineOrders> lines, Plan plan, boolean[] isFree) {
        double[] worth = new double[isFree.length];
        for (int line = 0; line < lines.size(); line++) {
            share(lines.get(line), lines.get(line).free(plan.lines().get(line)), worth);
        }
        return worth;
    }

    private static void share(LineOrders line, int[] orders, double[] worth) {
        double workedS = line.startS;
        int from = line.products;
        int first = 0;
        double shared = 0;
        for (int place = 0; place < orders.length; place++) {
            int order = orders[place];
            int entry = from * line.products + line.productOf[order];
            if (line.productOf[order] != from) {
                spread(orders, first, place, shared, worth);
                first = place;
                shared = 0;
            }
            shared += line.money[entry];
            workedS = line.endS(workedS, order, entry);
            worth[order] += line.kernel.lateCost(order, workedS);
            from = line.productOf[order];
        }
        spread(orders, first, orders.length, shared, worth);
    }

    private static void spread(int[] orders, int first, int end, double shared, double[] worth) {
        for (int place = first; place < end; place++) {
            worth[orders[place]] += shared / (end - first);
        }
    }
}
