package spoolyard.analysis.report;

import java.util.List;
import java.util.stream.IntStream;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult;

/**
 * An order and how it was kept in one replication. Immutable.
 *
 * <p>An order is late if it was packed after its due date, or was due within the run and is not packed at its end. One
 * that is due after the end and not packed yet is undecided: neither late nor on time.
 *
 * @param order what was promised
 * @param result what came of it
 * @param horizonTicks end of the run
 */
record Promise(Order order, RunResult.OrderResult result, long horizonTicks) {
    private static final double TICKS_PER_DAY = 24.0 * Ticks.PER_HOUR;

    /**
     * All orders of a replication.
     *
     * @param plant the plant
     * @param result the replication, with the orders in the same order as the book
     * @return one for each order
     */
    static List<Promise> all(Plant plant, RunResult result) {
        List<Order> orders = plant.book().orders();
        return IntStream.range(0, orders.size())
                .mapToObj(i -> new Promise(orders.get(i), result.orders().get(i), result.horizonTicks()))
                .toList();
    }

    /**
     * Number of late orders.
     *
     * @param promises orders of a replication
     * @return how many are late
     */
    static double lateOrders(List<Promise> promises) {
        return promises.stream().filter(Promise::isLate).count();
    }

    /**
     * Number of orders packed in full.
     *
     * @param promises orders of a replication
     * @return how many
     */
    static double packedOrders(List<Promise> promises) {
        return promises.stream().filter(Promise::isPacked).count();
    }

    /**
     * Spools ordered times days late, over all late orders.
     *
     * @param promises orders of a replication
     * @return spool-days; an order not packed counts up to the end of the run
     */
    static double lateSpoolDays(List<Promise> promises) {
        return promises.stream()
                .filter(Promise::isLate)
                .mapToDouble(promise -> promise.order.spools() * promise.daysLate())
                .sum();
    }

    /**
     * Share of the orders on time among those that are decided.
     *
     * @param promises orders of a replication
     * @return per cent; not a number if none is decided
     */
    static double onTimePercent(List<Promise> promises) {
        long decided = promises.stream().filter(Promise::isDecided).count();
        return 100 * (decided - lateOrders(promises)) / decided;
    }

    boolean isPacked() {
        return result.packedTick() != Ticks.NEVER;
    }

    boolean isDecided() {
        return isPacked() || order.dueTick() < horizonTicks;
    }

    boolean isLate() {
        return isPacked() ? result.packedTick() > order.dueTick() : order.dueTick() < horizonTicks;
    }

    /**
     * Days from due date to packed, or to the end of the run.
     *
     * @return 0 if not late
     */
    double daysLate() {
        long end = isPacked() ? result.packedTick() : horizonTicks;
        return isLate() ? (end - order.dueTick()) / TICKS_PER_DAY : 0;
    }
}
