package spoolyard.core.process;

import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.record.OverflowCause;

/** What manual and two-position winders share: a place in the rack first, then a person. */
abstract class AbstractSpindle extends Task implements Spindle, Rack.Claimant {
    final Strand strand;
    private final World world;
    private final CrewDesk desk;
    private final Rack rack;
    private final LineLedger ledger;
    private long askedTick;
    private boolean blocked;

    AbstractSpindle(World world, CrewDesk desk, Rack rack, LineProcess line, Strand strand, CrewNeed crew) {
        super(
                TaskKind.SPOOL_SWAP,
                desk.rolesOf(crew),
                line.index(),
                line.description().place());
        this.strand = strand;
        this.world = world;
        this.desk = desk;
        this.rack = rack;
        this.ledger = line.ledger();
    }

    /** Asks for the person who takes the full spool to the rack. */
    final void call() {
        askedTick = world.now();
        blocked = true;
        rack.claim(this);
    }

    @Override
    public final void granted() {
        blocked = false;
        ledger.blockedTicks += world.now() - askedTick;
        desk.raise(this);
    }

    @Override
    final long begin() {
        ledger.swapWaited(world.now() - askedTick);
        strand.holdUpChanged();
        return firstStage();
    }

    @Override
    final void interrupted() {
        strand.workInterrupted();
    }

    @Override
    final void resumed() {
        strand.holdUpChanged();
    }

    /** Duration of the first attended stage, ticks. */
    abstract long firstStage();

    final OverflowCause heldBy() {
        if (blocked) {
            return OverflowCause.RACK_FULL;
        }
        return isInHand() ? OverflowCause.SWAP_TOO_SLOW : OverflowCause.NO_CREW;
    }

    /** Whether a full spool waits here that nobody will ever come for. */
    final boolean isForgotten() {
        return !isReady() && !isTransferring() && isIdle() && !blocked;
    }

    /** Whether the machine is moving the strand to the empty spool by itself. */
    boolean isTransferring() {
        return false;
    }

    /** Blocked time that is still running, ticks. */
    final long openBlockedTicks() {
        return blocked ? world.now() - askedTick : 0;
    }
}
