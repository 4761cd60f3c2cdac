package spoolyard.core.process;

import java.util.AbstractQueue;
import java.util.Iterator;
import java.util.LinkedHashSet;
import java.util.Set;

/** Spools in the order in which they came, any of which can be taken out in constant time. */
final class Shelf extends AbstractQueue<Spool> {
    private final Set<Spool> spools = new LinkedHashSet<>();

    @Override
    public boolean offer(Spool spool) {
        return spools.add(spool);
    }

    @Override
    public Spool poll() {
        Spool first = peek();
        spools.remove(first);
        return first;
    }

    @Override
    public Spool peek() {
        Iterator<Spool> all = spools.iterator();
        return all.hasNext() ? all.next() : null;
    }

    @Override
    public boolean remove(Object spool) {
        return spools.remove(spool);
    }

    @Override
    public Iterator<Spool> iterator() {
        return spools.iterator();
    }

    @Override
    public int size() {
        return spools.size();
    }
}
