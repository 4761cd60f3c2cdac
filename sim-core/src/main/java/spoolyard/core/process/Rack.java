package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.Comparator;
import java.util.Optional;
import java.util.PriorityQueue;
import java.util.Queue;
import java.util.function.Consumer;
import java.util.function.Predicate;

/** Waiting places before a finishing station; a place is claimed before a spool is brought. */
final class Rack {
    /** Somebody who wants to bring a spool. */
    interface Claimant {
        /** A place is kept for one spool. */
        void granted();
    }

    private final World world;
    private final int places;
    private final Queue<Spool> spools;
    private final ArrayDeque<Claimant> claimants = new ArrayDeque<>();
    private Consumer<Spool> onArrival = spool -> {};
    private long arrivals;
    private int kept;
    private int held;
    private int peak;
    private long last;
    private double spoolTicks;

    /** First in, first out. */
    Rack(World world, int places) {
        this(world, places, new ArrayDeque<>());
    }

    private Rack(World world, int places, Queue<Spool> spools) {
        this.world = world;
        this.places = places;
        this.spools = spools;
    }

    /** The spool whose exposure clock runs out first is the first out; ties first in, first out. */
    static Rack byClock(World world, int places) {
        Comparator<Spool> byClock = Comparator.comparingLong(Spool::deadlineTick);
        return new Rack(world, places, new PriorityQueue<>(byClock.thenComparingLong(spool -> spool.arrival)));
    }

    /** Spools leave it by {@link #take(Spool)}, in any order. */
    static Rack ofAnyOrder(World world, int places) {
        return new Rack(world, places, new Shelf());
    }

    void whenSpoolArrives(Consumer<Spool> action) {
        onArrival = action;
    }

    boolean hasRoom() {
        return spools.size() + held + kept < places;
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
        add(spool);
    }

    private void add(Spool spool) {
        spool.rackedTick = world.now();
        spool.arrival = arrivals++;
        spools.add(spool);
        peak = Math.max(peak, spools.size() + held);
        onArrival.accept(spool);
    }

    /** A spool stands on a place kept for it, but nobody may take it before {@link #free(Spool)}. */
    void hold() {
        kept--;
        book();
        held++;
        peak = Math.max(peak, spools.size() + held);
    }

    /** A held spool may be taken. */
    void free(Spool spool) {
        book();
        held--;
        add(spool);
    }

    /** A held spool is taken away; whoever does it calls {@link #grant()} afterwards. */
    void dropHeld() {
        book();
        held--;
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

    /** Takes a spool that is in it, wherever it stands; as {@link #take()}. */
    void take(Spool spool) {
        book();
        if (!spools.remove(spool)) {
            throw new IllegalStateException("at tick " + world.now() + ": a spool was taken that is not there.");
        }
    }

    /** Puts the first spool of a kind before all others; false if there is none. Spools must be first in, first out. */
    boolean bringForward(Predicate<Spool> isOfKind) {
        if (spools.isEmpty() || isOfKind.test(spools.element())) {
            return !spools.isEmpty();
        }
        Optional<Spool> found = spools.stream().filter(isOfKind).findFirst();
        found.ifPresent(spool -> {
            ArrayDeque<Spool> queue = (ArrayDeque<Spool>) spools;
            queue.remove(spool);
            queue.addFirst(spool);
        });
        return found.isPresent();
    }

    boolean holdsNone(Predicate<Spool> ofKind) {
        for (Spool spool : spools) {
            if (ofKind.test(spool)) {
                return false;
            }
        }
        return true;
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
        spoolTicks += (double) (spools.size() + held) * (world.now() - last);
        last = world.now();
    }

    int size() {
        return spools.size();
    }

    /** Spools that stand in it and must not be taken. */
    int held() {
        return held;
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
        return world.now() == 0 ? spools.size() + held : spoolTicks / world.now();
    }
}
