package spoolyard.core.process;

import java.util.AbstractQueue;
import java.util.ArrayList;
import java.util.Collections;
import java.util.Iterator;
import java.util.List;

/** Spools in no order, any of which can be taken out in constant time: the last one takes its place. */
final class Shelf extends AbstractQueue<Spool> {
    private final List<Spool> spools = new ArrayList<>();

    @Override
    public boolean offer(Spool spool) {
        spool.shelfPlace = spools.size();
        return spools.add(spool);
    }

    @Override
    public Spool poll() {
        return spools.isEmpty() ? null : spools.remove(spools.size() - 1);
    }

    @Override
    public Spool peek() {
        return spools.isEmpty() ? null : spools.get(spools.size() - 1);
    }

    @Override
    public boolean remove(Object object) {
        if (!(object instanceof Spool spool) || !isHere(spool)) {
            return false;
        }
        Spool last = poll();
        if (last != spool) {
            spools.set(spool.shelfPlace, last);
            last.shelfPlace = spool.shelfPlace;
        }
        return true;
    }

    private boolean isHere(Spool spool) {
        return spool.shelfPlace < spools.size() && spools.get(spool.shelfPlace) == spool;
    }

    @Override
    public Iterator<Spool> iterator() {
        return Collections.unmodifiableList(spools).iterator();
    }

    @Override
    public int size() {
        return spools.size();
    }
}
