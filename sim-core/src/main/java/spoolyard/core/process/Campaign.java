package spoolyard.core.process;

import java.util.Optional;

/** What a line makes of one product without a break, as seen from behind the line. */
final class Campaign {
    private final LotLuck luck;
    private Optional<Lot> openLot = Optional.empty();
    private int onTheWay;
    private boolean ended;

    Campaign(LotLuck luck) {
        this.luck = luck;
    }

    LotLuck luck() {
        return luck;
    }

    Optional<Lot> openLot() {
        return openLot;
    }

    void open(Lot lot) {
        openLot = Optional.of(lot);
    }

    void lotClosed() {
        openLot = Optional.empty();
    }

    /** A spool is full that will be good. */
    void spoolMade() {
        onTheWay++;
    }

    /** A spool has come into quarantine. */
    void spoolArrived() {
        onTheWay--;
    }

    /** A spool was lost on the way. */
    void spoolLost() {
        onTheWay--;
        closeIfOver();
    }

    /** No spool will be added. */
    void ends() {
        ended = true;
        closeIfOver();
    }

    /** All its spools have come into quarantine or were lost. */
    boolean isOver() {
        return ended && onTheWay == 0;
    }

    private void closeIfOver() {
        if (isOver()) {
            openLot.ifPresent(Lot::close);
        }
    }
}
