package spoolyard.core.process;

import java.util.ArrayDeque;

/** Waiting places before a finishing station: first in, first out; a place is claimed before a spool is brought. */
final class Rack {
    /** Somebody who wants to bring a spool. */
    interface Claimant {
        /** A place is kept for one spool. */
        void granted();
    }

    private final World world;
    private final int places;
    private final ArrayDeque<Spool> spools = new ArrayDeque<>();
    private final ArrayDeque<Claimant> claimants = new ArrayDeque<>();
    private Runnable onArrival = () -> {};
    private int kept;
    private int peak;
    private long last;
    private double spoolTicks;

    Rack(World world, int places) {
        this.world = world;
        this.places = places;
    }

    void whenSpoolArrives(Runnable action) {
        onArrival = action;
    }

    boolean hasRoom() {
        return spools.size() + kept < places;
    }

    /** Keeps a place, now or when one becomes free, in the order of asking. */
    void claim(Claimant claimant) {
        if (claimants.isEmpty() && hasRoom()) {
            kept++;
            claimant.granted();
        } else {
            claimants.add(claimant);
        }
    }

    /** Keeps a place that is known to be free. */
    void keep() {
        kept++;
    }

    /** Puts a spool on a place kept for it. */
    void put(Spool spool) {
        kept--;
        book();
        spool.rackedTick = world.now();
        spools.add(spool);
        peak = Math.max(peak, spools.size());
        onArrival.run();
    }

    /** Gives up a place kept for a spool that won't come. */
    void release() {
        kept--;
        grant();
    }

    /** Takes the first spool; whoever takes calls {@link #grant()} once what was taken is under way. */
    Spool take() {
        book();
        return spools.remove();
    }

    Spool first() {
        return spools.element();
    }

    /** Gives free places to those who wait for one. */
    void grant() {
        while (!claimants.isEmpty() && hasRoom()) {
            kept++;
            claimants.remove().granted();
        }
    }

    private void book() {
        spoolTicks += (double) spools.size() * (world.now() - last);
        last = world.now();
    }

    int size() {
        return spools.size();
    }

    int places() {
        return places;
    }

    int keptPlaces() {
        return kept;
    }

    int peak() {
        return peak;
    }

    double meanSize() {
        book();
        return world.now() == 0 ? spools.size() : spoolTicks / world.now();
    }
}
