package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Consumer;

/** Spools that are judged together. */
final class Lot {
    private final Campaign campaign;
    private final double defectShare;
    private final Consumer<Lot> whenClosed;
    private final List<Spool> spools = new ArrayList<>();
    private boolean open = true;
    private boolean cut;
    private long closedTick;
    private int testsLeft;
    private int defective;
    private int condemned;

    Lot(Campaign campaign, Consumer<Lot> whenClosed) {
        this.campaign = campaign;
        this.defectShare = campaign.luck().drawDefectShare();
        this.whenClosed = whenClosed;
    }

    void add(Spool spool) {
        spool.defective = campaign.luck().isDefective(defectShare);
        spools.add(spool);
        defective += spool.defective ? 1 : 0;
        condemned += spool.condemned ? 1 : 0;
    }

    /** Takes out the spools that the gauge flagged and the lab rejects. */
    List<Spool> rejected() {
        if (condemned == 0) {
            return List.of();
        }
        List<Spool> rejected = spools.stream().filter(spool -> spool.condemned).toList();
        spools.removeAll(rejected);
        condemned = 0;
        defective = (int) spools.stream().filter(spool -> spool.defective).count();
        return rejected;
    }

    LotLuck luck() {
        return campaign.luck();
    }

    List<Spool> spools() {
        return spools;
    }

    boolean isOpen() {
        return open;
    }

    /** No spool comes any more. */
    void close() {
        open = false;
        campaign.lotClosed();
        whenClosed.accept(this);
    }

    /** Closed for want of room. */
    void cut() {
        cut = true;
        close();
    }

    boolean isCut() {
        return cut;
    }

    /** Tests that hold it have been asked for. */
    void awaits(int tests, long now) {
        testsLeft = tests;
        closedTick = now;
    }

    /** A test that holds it is done; true if it was the last. */
    boolean tested() {
        testsLeft--;
        return testsLeft == 0;
    }

    long closedTick() {
        return closedTick;
    }

    long defective() {
        return defective;
    }
}
