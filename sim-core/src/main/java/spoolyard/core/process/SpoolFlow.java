package spoolyard.core.process;

import java.util.List;
import spoolyard.core.plant.Finishing;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.RunResult.FlowResult;

/** Follows the spools from winder or gate to pallet, in numbers. */
final class SpoolFlow {
    private final World world;
    private final Finishing finishing;
    private final List<OrderRun> orders;
    private long made;
    private long opening;
    private long accepted;
    private long packed;
    private long lost;
    private long surplus;
    private long cartons;
    private long pallets;
    private long looseSpools;
    private long inSystemTicks;
    private double areaTicks;
    private long last;

    SpoolFlow(World world, List<OrderRun> orders) {
        this.world = world;
        this.finishing = world.plant().finishing();
        this.orders = orders;
    }

    /** A good spool is off the winder. */
    void made(Spool spool) {
        book();
        made++;
        spool.madeTick = world.now();
        spool.exposedTick = world.now();
        orders.get(spool.order).spoolMade(world.now());
    }

    /** A spool stands in a rack when the run starts; its time in the system counts from then. */
    void opened(Spool spool, double ageS) {
        book();
        opening++;
        spool.madeTick = world.now();
        spool.exposedTick = world.now() - Ticks.ofSeconds(ageS);
        if (spool.order != Spool.NONE) {
            orders.get(spool.order).spoolAtStart(world.now());
        }
    }

    /** A spool has come through the gate. */
    void accepted(Spool spool) {
        book();
        accepted++;
        spool.madeTick = world.now();
        spool.exposedTick = world.now();
    }

    /** A spool was lost on the way. */
    void lost() {
        book();
        lost++;
    }

    /** A spool has passed the last station. */
    void packed(Spool spool) {
        book();
        packed++;
        inSystemTicks += world.now() - spool.madeTick;
        if (spool.order == Spool.NONE) {
            looseSpools++;
            closeLooseCartons(finishing.cartonOf(spool.sizeKg));
        } else {
            packForOrder(orders.get(spool.order), spool.sizeKg);
        }
    }

    private void packForOrder(OrderRun order, double sizeKg) {
        if (!order.spoolPacked(world.now())) {
            surplus++;
            return;
        }
        if (order.isPacked() || order.packed() % finishing.cartonOf(sizeKg) == 0) {
            closeCarton();
        }
    }

    private void closeLooseCartons(int size) {
        if (looseSpools >= size) {
            looseSpools -= size;
            closeCarton();
        }
    }

    private void closeCarton() {
        cartons++;
        if (cartons % finishing.cartonsPerPallet() == 0) {
            pallets++;
        }
    }

    private void book() {
        areaTicks += (double) inSystem() * (world.now() - last);
        last = world.now();
    }

    long madeSoFar() {
        return made;
    }

    long inSystem() {
        return opening + made + accepted - packed - lost;
    }

    FlowResult result(long waiting, long inWork) {
        book();
        return new FlowResult(
                opening,
                made,
                accepted,
                packed,
                waiting,
                inWork,
                surplus,
                cartons,
                pallets,
                packed == 0 ? 0 : Ticks.toSeconds(inSystemTicks) / packed,
                world.now() == 0 ? 0 : areaTicks / world.now());
    }
}
