package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.record.ScrapCause;

/**
 * The spools of one line whose colour is still to be judged. They stand in the rack, where nobody may take them; released they
 * go on in the order in which they came, refused they are scrap.
 */
final class ColourHold {
    private enum State {
        PENDING,
        RELEASED,
        REFUSED
    }

    private final Rack rack;
    private final Losses losses;
    private final List<Spool> held = new ArrayList<>();
    private State state = State.PENDING;
    private long standing;
    private long scrapped;

    ColourHold(Rack rack, Losses losses) {
        this.rack = rack;
        this.losses = losses;
    }

    /** A good spool is off the winder, with a place kept for it. */
    void takenOff(Spool spool) {
        switch (state) {
            case PENDING -> {
                rack.hold();
                held.add(spool);
                standing++;
            }
            case RELEASED -> rack.put(spool);
            case REFUSED -> {
                scrap(spool);
                rack.release();
            }
        }
    }

    /** The colour is right. */
    void release() {
        state = State.RELEASED;
        held.forEach(rack::free);
        held.clear();
    }

    /** The colour is wrong. */
    void refuse() {
        state = State.REFUSED;
        for (Spool spool : held) {
            rack.dropHeld();
            scrap(spool);
        }
        held.clear();
        rack.grant();
    }

    private void scrap(Spool spool) {
        scrapped++;
        losses.lose(spool, ScrapCause.REFUSED_COLOUR);
    }

    /** Spools that stood held. */
    long standing() {
        return standing;
    }

    /** Of these, released. */
    long released() {
        return state == State.RELEASED ? standing : 0;
    }

    /** Spools refused, those that were still at the winder included. */
    long scrapped() {
        return scrapped;
    }
}
