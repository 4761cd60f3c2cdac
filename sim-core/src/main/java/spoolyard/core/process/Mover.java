package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.List;

/** Moves spools from one rack to another, one by one as there is room, in the order given. */
final class Mover implements Rack.Claimant {
    private final Rack from;
    private final Rack to;
    private final ArrayDeque<Spool> spools = new ArrayDeque<>();

    Mover(Rack from, Rack to) {
        this.from = from;
        this.to = to;
    }

    void move(List<Spool> more) {
        spools.addAll(more);
        more.forEach(spool -> to.claim(this));
    }

    @Override
    public void granted() {
        Spool spool = spools.remove();
        from.take(spool);
        to.put(spool);
        from.grant();
    }
}
