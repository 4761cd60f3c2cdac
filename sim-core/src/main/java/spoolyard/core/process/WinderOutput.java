package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.plant.Gauge;
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
    private final ColourApproval colour;
    private final Uniforms defects;
    private final Uniforms flags;
    private final Optional<LotLuck> luck;
    private Optional<Campaign> campaign = Optional.empty();

    WinderOutput(World world, LineProcess process, Floor floor, ColourApproval colour) {
        this.world = world;
        this.line = process.description();
        this.index = process.index();
        this.colour = colour;
        this.floor = floor;
        this.ledger = process.ledger();
        this.defects = world.streams().uniforms("line " + line.name() + " / winding defect");
        this.flags = world.streams().uniforms("line " + line.name() + " / flagged spool");
        this.luck = LotLuck.of(world, "line " + line.name());
    }

    /** A spool is full; whether it is good is settled now and seen when it is taken off. */
    Spool newSpool(OrderRun order, boolean isFirstAfterThreadUp, double massKg, boolean isBlemished) {
        double risk = isFirstAfterThreadUp ? line.defectProbabilityAfterThreadUp() : line.defectProbability();
        boolean isWellWound = defects.next() >= risk;
        SpoolGrade byGauge = isBlemished ? blemished() : SpoolGrade.GOOD;
        boolean isForLab = luck.isPresent() && byGauge == SpoolGrade.FLAG_REJECTED;
        SpoolGrade unlessIllWound = isForLab ? SpoolGrade.GOOD : byGauge;
        SpoolGrade grade = isWellWound ? unlessIllWound : SpoolGrade.WINDING_DEFECT;
        if (grade == SpoolGrade.GOOD) {
            order.spoolFilled();
        }
        Spool spool = Spool.full(order.index, index, order.order.product(), massKg, grade);
        if (grade == SpoolGrade.GOOD) {
            spool.campaign = campaign();
            spool.hold = colour.hold();
            spool.condemned = isForLab;
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

    private SpoolGrade blemished() {
        if (line.gauge().orElseThrow().policy() instanceof Gauge.Policy.Flag flag) {
            ledger.gauge.flaggedSpools++;
            return flags.next() < flag.rejected() ? SpoolGrade.FLAG_REJECTED : SpoolGrade.GOOD;
        }
        return SpoolGrade.B_GRADE;
    }

    /** A spool has left the winder: good ones go to the rack, others to scrap or to second quality. */
    void takenOff(Spool spool) {
        if (spool.grade == SpoolGrade.GOOD) {
            ledger.goodSpools++;
            ledger.goodKg += spool.massKg;
            floor.flow().made(spool);
            spool.hold.ifPresentOrElse(
                    hold -> hold.takenOff(spool), () -> floor.rack().put(spool));
        } else {
            book(spool);
            floor.rack().release();
        }
        if (world.log().isOn()) {
            world.tell(line.name(), spool.grade.label(), Double.toString(spool.sizeKg));
        }
    }

    private void book(Spool spool) {
        GaugeLedger gauge = ledger.gauge;
        Optional<ScrapBin> bin = spool.product.flatMap(floor.stores()::binFor);
        switch (spool.grade) {
            case WINDING_DEFECT -> {
                ledger.rejectedSpools++;
                ledger.scrap(ScrapCause.WINDING_DEFECT, spool.massKg, bin);
            }
            case CUT_SHORT -> {
                gauge.cutSpools++;
                ledger.scrap(ScrapCause.GAUGE_CUT, spool.massKg, bin);
            }
            case FLAG_REJECTED -> {
                gauge.flaggedRejectedSpools++;
                ledger.scrap(ScrapCause.FLAGGED_SPOOL, spool.massKg, bin);
            }
            case B_GRADE -> {
                gauge.bGradeSpools++;
                gauge.bGradeKg += spool.massKg;
            }
            case GOOD -> throw new IllegalStateException("a good spool is no loss");
        }
    }
}
