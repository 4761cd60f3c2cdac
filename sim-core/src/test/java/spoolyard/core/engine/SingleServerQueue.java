package spoolyard.core.engine;

import java.util.ArrayDeque;
import java.util.Deque;
import java.util.function.DoubleSupplier;

/**
 * A queue before one server, on the engine, for comparison with textbook runs. One time unit of the book is an hour of
 * ticks, 3.6e9 of them, so that rounding to whole ticks stays far below the digits compared.
 */
final class SingleServerQueue {
    static final double TICKS_PER_UNIT = 3.6e9;

    private final Engine engine = new Engine();
    private final DoubleSupplier betweenArrivals;
    private final DoubleSupplier service;
    private final long delaysWanted;
    private final Deque<Long> arrivalsWaiting = new ArrayDeque<>();
    private final TimedEvent arrival = new Step(Phase.FINISH, this::arrive);
    private final TimedEvent departure = new Step(Phase.RELEASE, this::depart);
    private boolean busy;
    private long lastTick;
    private double queueArea;
    private double busyArea;

    // What is reported: frozen when the wanted number of delays is reached.
    long delays;
    double totalDelay;
    double totalSquaredDelay;
    double longestDelay;
    int longestQueue;
    double meanInQueue;
    double utilisation;
    double endTime;

    SingleServerQueue(DoubleSupplier betweenArrivals, DoubleSupplier service, long delaysWanted) {
        this.betweenArrivals = betweenArrivals;
        this.service = service;
        this.delaysWanted = delaysWanted;
    }

    void runUntil(double endTimeUnits) {
        arrival.in(ticks(betweenArrivals));
        engine.runUntil(Math.round(endTimeUnits * TICKS_PER_UNIT));
        if (delays < delaysWanted) {
            integrate();
            freeze();
        }
    }

    private void arrive() {
        arrival.in(ticks(betweenArrivals));
        if (busy) {
            arrivalsWaiting.add(engine.now());
            longestQueue = Math.max(longestQueue, arrivalsWaiting.size());
        } else {
            serve(0);
        }
    }

    private void depart() {
        busy = false;
        if (!arrivalsWaiting.isEmpty()) {
            serve((engine.now() - arrivalsWaiting.remove()) / TICKS_PER_UNIT);
        }
    }

    private void serve(double delay) {
        busy = true;
        delays++;
        totalDelay += delay;
        totalSquaredDelay += delay * delay;
        longestDelay = Math.max(longestDelay, delay);
        departure.in(ticks(service));
        if (delays == delaysWanted) {
            freeze();
            arrival.cancel();
            departure.cancel();
        }
    }

    private void freeze() {
        endTime = engine.now() / TICKS_PER_UNIT;
        meanInQueue = queueArea / engine.now();
        utilisation = busyArea / engine.now();
    }

    private void integrate() {
        long span = engine.now() - lastTick;
        queueArea += (double) span * arrivalsWaiting.size();
        busyArea += busy ? span : 0;
        lastTick = engine.now();
    }

    private static long ticks(DoubleSupplier units) {
        return Math.round(units.getAsDouble() * TICKS_PER_UNIT);
    }

    private final class Step extends TimedEvent {
        private final Runnable action;

        Step(Phase phase, Runnable action) {
            super(engine, phase);
            this.action = action;
        }

        @Override
        protected void happen() {
            integrate();
            action.run();
        }
    }
}
