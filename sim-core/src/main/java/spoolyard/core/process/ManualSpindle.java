package spoolyard.core.process;

import spoolyard.core.plant.Winder;
import spoolyard.core.random.Variate;
import spoolyard.core.record.OverflowCause;

/** One position: the winder stands until a person has put on an empty spool, who then finishes the full one. */
final class ManualSpindle extends AbstractSpindle {
    private final Variate stopTime;
    private final Variate finishTime;
    private Spool onSpindle;
    private Spool inHands;

    ManualSpindle(World world, CrewDesk desk, Rack rack, LineProcess line, Strand strand, String name) {
        super(world, desk, rack, line, strand, line.description().winder().crew());
        Winder.Manual winder = (Winder.Manual) line.description().winder();
        this.stopTime = world.streams().variate(winder.stopTimeS(), name + " / swap time");
        this.finishTime = world.streams().variate(winder.finishTimeS(), name + " / finishing time");
    }

    @Override
    public boolean isReady() {
        return onSpindle == null;
    }

    @Override
    public void spoolFull(Spool spool) {
        onSpindle = spool;
        if (inHands == null) {
            call();
        }
    }

    @Override
    public OverflowCause holdUp() {
        return inHands == null ? heldBy() : OverflowCause.SWAP_TOO_SLOW;
    }

    @Override
    long firstStage() {
        strand.workBegins();
        return stopTime.nextTicks();
    }

    @Override
    long nextStage() {
        if (inHands == null) {
            inHands = onSpindle;
            onSpindle = null;
            strand.winderReady();
            return finishTime.nextTicks();
        }
        strand.takenOff(inHands);
        inHands = null;
        return DONE;
    }

    @Override
    void ended() {
        if (onSpindle != null) {
            call();
        }
    }
}
