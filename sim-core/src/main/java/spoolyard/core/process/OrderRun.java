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
    private int opening;
    private int filled;
    private int made;
    private int packed;
    private int lost;
    private int forgiven;
    private boolean inHand;

    OrderRun(Order order, int index) {
        this.order = order;
        this.index = index;
    }

    boolean isBegun() {
        return startTick != Ticks.NEVER;
    }

    void begin(String onLine, long now) {
        line = onLine;
        startTick = isBegun() ? startTick : now;
        inHand = true;
    }

    /** Its line has made all of it, or so it seems now. */
    void leavesLine() {
        inHand = false;
    }

    /** A spool of it stands in a rack when the run starts. */
    void spoolAtStart(long now) {
        opening++;
        spoolFilled();
        spoolMade(now);
    }

    /** One of these is lost; {@link #spoolLost} follows. */
    void lostOfStart() {
        opening--;
    }

    /** A spool has become full that will be good. */
    void spoolFilled() {
        filled++;
    }

    boolean isFilled() {
        return filled >= wanted();
    }

    /** A good spool is off the winder. */
    void spoolMade(long now) {
        made++;
        if (made == wanted()) {
            madeTick = now;
        }
    }

    /** A spool of the order is packed; false if the order was already complete and the spool is surplus. */
    boolean spoolPacked(long now) {
        if (packed == wanted()) {
            return false;
        }
        packed++;
        noteIfComplete(now);
        return true;
    }

    private void noteIfComplete(long now) {
        if (packed == wanted()) {
            packedTick = now;
        }
    }

    boolean isPacked() {
        return packed == wanted();
    }

    /** Spools that make it complete. */
    private int wanted() {
        return order.spools() - forgiven;
    }

    /**
     * A good spool of it was lost behind the line.
     *
     * @param most spools that may be missing in the end
     * @return true if the order must go back among the open ones, for its line makes it no more
     */
    boolean spoolLost(long now, int most) {
        lost++;
        made--;
        filled--;
        if (made < wanted()) {
            madeTick = Ticks.NEVER;
        }
        if (inHand || filled >= wanted()) {
            return false;
        }
        if (forgiven < most) {
            forgiven++;
            madeTick = made == wanted() ? now : madeTick;
            noteIfComplete(now);
            return false;
        }
        return true;
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
        return new OrderResult(
                order.id(), line, startTick, madeTick, packedTick, made - opening, packed, lost, forgiven);
    }
}
