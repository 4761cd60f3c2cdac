package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
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
    private final Optional<LotLuck> luck;
    private Optional<Campaign> campaign = Optional.empty();

    WinderOutput(World world, Line line, int index, Floor floor, LineLedger ledger) {
        this.world = world;
        this.line = line;
        this.index = index;
        this.floor = floor;
        this.ledger = ledger;
        this.defects = world.streams().uniforms("line " + line.name() + " / winding defect");
        this.luck = LotLuck.of(world, "line " + line.name());
    }

    /** A spool is full; whether it is good is settled now and seen when it is taken off. */
    Spool newSpool(OrderRun order, boolean isFirstAfterThreadUp, double massKg) {
        double risk = isFirstAfterThreadUp ? line.defectProbabilityAfterThreadUp() : line.defectProbability();
        boolean good = defects.next() >= risk;
        if (good) {
            order.spoolFilled();
        }
        Product product = order.order.product();
        Spool spool = new Spool(order.index, index, product.spoolKg(), massKg, good, Optional.of(product.polymer()));
        if (good) {
            spool.campaign = campaign();
        }
        return spool;
    }

    private Optional<Campaign> campaign() {
        if (campaign.isEmpty()) {
            campaign = luck.map(Campaign::new);
        }
        campaign.ifPresent(Campaign::spoolMade);
        return campaign;
    }

    /** What the line makes next is another campaign. */
    void campaignEnds() {
        campaign.ifPresent(Campaign::ends);
        campaign = Optional.empty();
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
