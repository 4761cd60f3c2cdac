package spoolyard.core.process;

import spoolyard.core.plant.Line;
import spoolyard.core.random.Uniforms;
import spoolyard.core.record.ScrapCause;

/** Counts the full spools of a line and sends the good ones to the rack. */
final class WinderOutput {
    private final World world;
    private final Line line;
    private final int index;
    private final Floor floor;
    private final LineLedger ledger;
    private final Uniforms defects;

    WinderOutput(World world, Line line, int index, Floor floor, LineLedger ledger) {
        this.world = world;
        this.line = line;
        this.index = index;
        this.floor = floor;
        this.ledger = ledger;
        this.defects = world.streams().uniforms("line " + line.name() + " / winding defect");
    }

    /** A spool is full; whether it is good is settled now and seen when it is taken off. */
    Spool newSpool(OrderRun order, boolean isFirstAfterThreadUp, double massKg) {
        double risk = isFirstAfterThreadUp ? line.defectProbabilityAfterThreadUp() : line.defectProbability();
        boolean good = defects.next() >= risk;
        if (good) {
            order.spoolFilled();
        }
        return new Spool(order.index, index, order.order.product().spoolKg(), massKg, good);
    }

    /** A full spool has left the winder: good ones go to the rack, others to scrap. */
    void takenOff(Spool spool) {
        if (spool.good) {
            ledger.goodSpools++;
            ledger.goodKg += spool.massKg;
            floor.flow().made(spool);
            floor.rack().put(spool);
        } else {
            ledger.rejectedSpools++;
            ledger.scrap(ScrapCause.WINDING_DEFECT, spool.massKg);
            floor.rack().release();
        }
        if (world.log().isOn()) {
            world.tell(line.name(), spool.good ? "good spool" : "rejected spool", Double.toString(spool.sizeKg));
        }
    }
}
