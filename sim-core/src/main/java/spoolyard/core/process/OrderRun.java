package spoolyard.core.process;

import spoolyard.core.plant.Order;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult.OrderResult;

/** An order as it runs. */
final class OrderRun {
    final Order order;
    final int index;
    private String line = "";
    private long startTick = Ticks.NEVER;
    private long madeTick = Ticks.NEVER;
    private long packedTick = Ticks.NEVER;
    private int filled;
    private int made;
    private int packed;

    OrderRun(Order order, int index) {
        this.order = order;
        this.index = index;
    }

    boolean isBegun() {
        return startTick != Ticks.NEVER;
    }

    void begin(String onLine, long now) {
        line = onLine;
        startTick = now;
    }

    /** A spool has become full that will be good. */
    void spoolFilled() {
        filled++;
    }

    boolean isFilled() {
        return filled >= order.spools();
    }

    /** A good spool is off the winder. */
    void spoolMade(long now) {
        made++;
        if (made == order.spools()) {
            madeTick = now;
        }
    }

    /** A spool of the order is packed; false if the order was already complete and the spool is surplus. */
    boolean spoolPacked(long now) {
        if (packed == order.spools()) {
            return false;
        }
        packed++;
        if (packed == order.spools()) {
            packedTick = now;
        }
        return true;
    }

    boolean isPacked() {
        return packed == order.spools();
    }

    int packed() {
        return packed;
    }

    int filled() {
        return filled;
    }

    int made() {
        return made;
    }

    OrderResult result() {
        return new OrderResult(order.id(), line, startTick, madeTick, packedTick, made, packed);
    }
}
