package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Winder;
import spoolyard.core.random.Variate;
import spoolyard.core.record.OverflowCause;

/** Two positions: the machine moves the strand over; a person unloads the full spool while the next one fills. */
final class TwoPositionSpindle extends AbstractSpindle {
    private final Variate transferTime;
    private final Variate unloadTime;
    private final TimedEvent transfer;
    private Spool waiting;
    private Spool inTransfer;
    private Spool unloading;

    TwoPositionSpindle(World world, CrewDesk desk, Rack rack, LineProcess line, Strand strand, String name) {
        super(world, desk, rack, line, strand, line.description().winder().crew());
        Winder.TwoPosition winder = (Winder.TwoPosition) line.description().winder();
        this.transferTime = world.streams().variate(winder.transferTimeS(), name + " / transfer time");
        this.unloadTime = world.streams().variate(winder.unloadTimeS(), name + " / unloading time");
        this.transfer = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                transferred();
            }

            @Override
            public String toString() {
                return name + " transfer";
            }
        };
    }

    @Override
    public boolean isReady() {
        return waiting == null && inTransfer == null;
    }

    @Override
    public void spoolFull(Spool spool) {
        if (unloading == null) {
            beginTransfer(spool);
        } else {
            waiting = spool;
        }
    }

    @Override
    public OverflowCause holdUp() {
        return inTransfer == null ? heldBy() : OverflowCause.SWAP_TOO_SLOW;
    }

    @Override
    boolean isTransferring() {
        return inTransfer != null;
    }

    private void beginTransfer(Spool spool) {
        inTransfer = spool;
        strand.workBegins();
        transfer.in(transferTime.nextTicks());
    }

    private void transferred() {
        unloading = inTransfer;
        inTransfer = null;
        strand.winderReady();
        call();
    }

    @Override
    long firstStage() {
        return unloadTime.nextTicks();
    }

    @Override
    long nextStage() {
        strand.takenOff(unloading);
        unloading = null;
        return DONE;
    }

    @Override
    void ended() {
        if (waiting != null) {
            Spool spool = waiting;
            waiting = null;
            beginTransfer(spool);
            strand.holdUpChanged();
        }
    }
}
