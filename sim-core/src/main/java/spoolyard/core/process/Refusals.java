package spoolyard.core.process;

import java.util.List;
import spoolyard.core.plant.Lab;
import spoolyard.core.record.ScrapCause;

/** Lets accepted lots out of quarantine and sends refused ones to be sorted, wound anew or ground. */
final class Refusals {
    private final World world;
    private final Lab lab;
    private final Rack quarantine;
    private final Losses losses;
    private final StationProcess sorting;
    private final StationProcess respooling;
    private final Mover onward;
    private final Mover toSorting;
    private final Mover toRespooling;

    Refusals(World world, Rack quarantine, Rack next, Losses losses, Rework rework) {
        this.world = world;
        this.lab = world.plant().finishing().quality().lab().orElseThrow();
        this.quarantine = quarantine;
        this.losses = losses;
        this.sorting = rework.sorting();
        this.respooling = rework.respooling();
        this.onward = new Mover(quarantine, next);
        this.toSorting = new Mover(quarantine, sorting.rack());
        this.toRespooling = new Mover(quarantine, respooling.rack());
    }

    /** Spools may go on. */
    void release(List<Spool> spools) {
        onward.move(spools);
    }

    /** A lot is refused. */
    void deal(Lot lot, LotLedger ledger) {
        Lab.Refusal shares = lab.refusal();
        double u = lot.luck().drawRefusal();
        int spools = lot.spools().size();
        if (u < shares.sorted()) {
            ledger.sorted += spools;
            ledger.ground += lot.defective();
            toSorting.move(lot.spools());
        } else if (u < shares.sorted() + shares.respooled()) {
            ledger.respooled += spools;
            toRespooling.move(lot.spools());
        } else {
            ledger.ground += spools;
            lot.spools().forEach(spool -> grind(spool, ScrapCause.REFUSED_BY_LAB));
        }
    }

    /** Grinds the spools of a lot that the gauge flagged and the lab rejects, whatever becomes of the others. */
    void rejectFlagged(Lot lot) {
        lot.rejected().forEach(spool -> grind(spool, ScrapCause.FLAGGED_SPOOL));
    }

    private void grind(Spool spool, ScrapCause cause) {
        quarantine.take(spool);
        losses.lose(spool, cause);
        quarantine.grant();
    }

    /** Takes the defective spools out of a sorted batch. */
    void sorted(List<Spool> batch) {
        batch.removeIf(spool -> {
            if (spool.defective) {
                losses.lose(spool, ScrapCause.REFUSED_BY_LAB);
            }
            return spool.defective;
        });
    }

    /** Wound anew: the spools are sound, and out in the air since now. */
    void respooled(List<Spool> batch) {
        for (Spool spool : batch) {
            spool.defective = false;
            spool.exposedTick = world.now();
        }
    }
}
