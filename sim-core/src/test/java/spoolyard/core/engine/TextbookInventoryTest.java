package spoolyard.core.engine;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * The (s, S) inventory of a textbook: nine policies in one sequence on one random stream, 120 months each.
 *
 * <p>Source: Law and Kelton, Simulation Modeling and Analysis, section 1.5 (model read: time between demands exponential
 * with mean 0.1 month, sizes 1 to 4, delivery lag uniform 0.5 to 1 month, set-up cost 32, 3 an item, holding 1, shortage 5
 * a month; at equal times delivery, demand, end, evaluation). Costs: long digits recomputed in double precision; they
 * agree to the cent with the published ones, which are from memory.
 */
final class TextbookInventoryTest {
    /**
     * About 1200 draws of half a tick each are 600 / 3.6e9 month; against that stand slopes of some hundred a month in 120
     * months: below the last digit of the recomputed values, which is what is compared.
     */
    private static final double LAST_DIGIT = 1e-6;

    private static final int[][] POLICIES = {
        {20, 40}, {20, 60}, {20, 80}, {20, 100}, {40, 60}, {40, 80}, {40, 100}, {60, 80}, {60, 100}
    };

    @Test
    void repeatsTheCostsOfThePolicies() {
        Lcgrand lcgrand = new Lcgrand();
        List<double[]> costs = new ArrayList<>();
        for (int[] policy : POLICIES) {
            costs.add(new InventoryRun(policy[0], policy[1], lcgrand).costsPerMonth());
        }

        assertThat(costs.get(0)).containsExactly(new double[] {99.258333, 9.247082, 18.102354}, within(LAST_DIGIT));
        assertThat(costs.get(1)).containsExactly(new double[] {90.516667, 17.393264, 14.832259}, within(LAST_DIGIT));
        assertThat(costs.get(3)).containsExactly(new double[] {81.366667, 36.003747, 7.949756}, within(LAST_DIGIT));
        assertThat(costs.get(5)).containsExactly(new double[] {88.400000, 35.915946, 1.144315}, within(LAST_DIGIT));
        assertThat(costs.get(6)).containsExactly(new double[] {84.625000, 46.420456, 1.295654}, within(LAST_DIGIT));
        assertThat(costs.get(7)).containsExactly(new double[] {105.691667, 44.020359, 0.312556}, within(LAST_DIGIT));
    }

    /** One run of 120 months. */
    private static final class InventoryRun {
        private static final double TICKS_PER_MONTH = 3.6e9;
        private static final int MONTHS = 120;
        private static final double[] DEMAND_CDF = {0.167, 0.5, 0.833, 1};

        private final Engine engine = new Engine();
        private final int reorderBelow;
        private final int orderUpTo;
        private final Lcgrand random;
        private int level = 60;
        private int onOrder;
        private long lastTick;
        private double orderingCost;
        private double holdingArea;
        private double shortageArea;

        // The book's ranks of simultaneous events, as four of our phases in the same order.
        private final TimedEvent delivery = new Step(Phase.FINISH, this::deliver);
        private final TimedEvent demand = new Step(Phase.RELEASE, this::take);
        private final TimedEvent end = new Step(Phase.CALENDAR, this::stop);
        private final TimedEvent evaluation = new Step(Phase.SERVE, this::evaluate);

        InventoryRun(int reorderBelow, int orderUpTo, Lcgrand random) {
            this.reorderBelow = reorderBelow;
            this.orderUpTo = orderUpTo;
            this.random = random;
        }

        /** Ordering, holding and shortage cost a month. */
        double[] costsPerMonth() {
            demand.in(ticks(random.exponential(0.1)));
            end.at(ticks(MONTHS));
            evaluation.at(0);
            engine.runUntil(ticks(MONTHS));
            double areaUnit = TICKS_PER_MONTH * MONTHS;
            return new double[] {orderingCost / MONTHS, holdingArea / areaUnit, 5 * shortageArea / areaUnit};
        }

        private void deliver() {
            level += onOrder;
        }

        private void take() {
            double u = random.next();
            int size = 1;
            while (u >= DEMAND_CDF[size - 1]) {
                size++;
            }
            level -= size;
            demand.in(ticks(random.exponential(0.1)));
        }

        private void evaluate() {
            if (level < reorderBelow) {
                onOrder = orderUpTo - level;
                orderingCost += 32 + 3 * onOrder;
                delivery.in(ticks(0.5 + 0.5 * random.next()));
            }
            evaluation.in(ticks(1));
        }

        private void stop() {
            delivery.cancel();
            demand.cancel();
            evaluation.cancel();
        }

        private void integrate() {
            double span = engine.now() - lastTick;
            holdingArea += span * Math.max(0, level);
            shortageArea += span * Math.max(0, -level);
            lastTick = engine.now();
        }

        private static long ticks(double months) {
            return Math.round(months * TICKS_PER_MONTH);
        }

        private final class Step extends TimedEvent {
            private final Runnable action;

            Step(Phase phase, Runnable action) {
                super(engine, phase);
                this.action = action;
            }

            @Override
            protected void happen() {
                integrate();
                action.run();
            }
        }
    }
}
