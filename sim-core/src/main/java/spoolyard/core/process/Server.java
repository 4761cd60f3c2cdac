package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.record.ServerState;

/** One work place of a finishing station: machine-paced, or worked by one person at a time. */
final class Server implements Struck {
    private final World world;
    private final CrewDesk desk;
    private final StationProcess station;
    private final TimedEvent cycleEnd;
    private final Task work;
    private final StateClock<ServerState> states = new StateClock<>(ServerState.values(), ServerState.CLOSED);
    private final List<Spool> batch = new ArrayList<>();
    private final List<StoppageClock> clocks = new ArrayList<>();
    private final ArrayDeque<StoppageClock> standing = new ArrayDeque<>();
    private final boolean hasCrew;
    private boolean blocked;
    private long cycleLeft;

    Server(World world, CrewDesk desk, StationProcess station, String name) {
        this.world = world;
        this.desk = desk;
        this.station = station;
        this.hasCrew = !station.description().crew().isNobody();
        this.cycleEnd = event(name + " cycle ends", this::cycleOver);
        this.work = new Work();
        for (Stoppage cause : station.description().stoppages()) {
            clocks.add(new StoppageClock(world, cause, name, this));
        }
    }

    private TimedEvent event(String what, Runnable action) {
        return new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                action.run();
            }

            @Override
            public String toString() {
                return what;
            }
        };
    }

    StateClock<ServerState> states() {
        return states;
    }

    List<Spool> batch() {
        return batch;
    }

    /** A person has been called and the batch is not taken yet. */
    boolean isCalling() {
        return hasCrew && !work.isIdle() && batch.isEmpty();
    }

    boolean isFree() {
        return batch.isEmpty() && standing.isEmpty() && station.isOpen() && work.isIdle();
    }

    /** Offers waiting spools: a free place takes them or calls for a person. */
    void offer() {
        if (!isFree()) {
            return;
        }
        if (hasCrew) {
            desk.raise(work);
            show();
        } else {
            station.takeBatch(batch);
            startCycle(station.drawCycleTicks(batch.get(0)));
            station.rack().grant();
        }
    }

    void openingChanged() {
        if (!station.isOpen() && isCalling()) {
            desk.withdraw(work);
        }
        show();
    }

    private void startCycle(long ticks) {
        cycleEnd.in(ticks);
        show();
    }

    private void cycleOver() {
        if (station.mustRepeat()) {
            startCycle(station.drawCycleTicks(batch.get(0)));
            return;
        }
        handOn();
        station.offerWork();
    }

    private void handOn() {
        countMass();
        blocked = true;
        station.batchDone(this);
        show();
    }

    /** The next station, or the pallet, has taken the batch. */
    void batchGone() {
        blocked = false;
        show();
    }

    /** Offers work again after the batch has gone later than its cycle ended. */
    void unblocked() {
        batchGone();
        station.offerWork();
    }

    @Override
    public void struckBy(StoppageClock cause) {
        standing.add(cause);
        if (standing.size() == 1) {
            if (cycleEnd.isScheduled()) {
                cycleLeft = cycleEnd.tick() - world.now();
                cycleEnd.cancel();
            }
            desk.suspend(work);
            beginRepair();
        }
        show();
        station.offerWork();
    }

    private void beginRepair() {
        desk.raise(new Repair(standing.element()));
    }

    private void fixed() {
        standing.remove().fixed();
        if (!standing.isEmpty()) {
            beginRepair();
        } else if (!batch.isEmpty() && !blocked) {
            goOn();
        }
        show();
        station.offerWork();
    }

    private void goOn() {
        if (hasCrew) {
            desk.raise(work);
        } else {
            startCycle(cycleLeft);
        }
    }

    /** Shows on its clocks what it does. */
    void show() {
        ServerState before = states.state();
        states.enter(stateNow(), world.now());
        if (states.state() != before) {
            station.placeTurns(before, states.state());
        }
        boolean working = states.state() == ServerState.WORKING;
        for (StoppageClock clock : clocks) {
            clock.station(working, 0);
        }
    }

    /** Counts the mass of a finished batch on the clocks that go by mass. */
    private void countMass() {
        for (StoppageClock clock : clocks) {
            for (Spool spool : batch) {
                clock.passed(spool.massKg);
            }
        }
    }

    private ServerState stateNow() {
        if (!standing.isEmpty()) {
            return ServerState.DOWN;
        }
        if (blocked) {
            return ServerState.BLOCKED;
        }
        if (!batch.isEmpty()) {
            return hasCrew && !work.isInHand() ? ServerState.WAITING_FOR_CREW : ServerState.WORKING;
        }
        if (!station.isOpen()) {
            return ServerState.CLOSED;
        }
        if (isCalling()) {
            return ServerState.WAITING_FOR_CREW;
        }
        return station.lacksCartons() ? ServerState.NO_CARTON : ServerState.STARVED;
    }

    /** The work of a crew-paced place: batch after batch, until there is none or the person is needed elsewhere. */
    private final class Work extends Task {
        Work() {
            super(
                    station.description().kind(),
                    desk.rolesOf(station.description().crew()),
                    NO_LINE,
                    station.description().place());
        }

        @Override
        long begin() {
            return takeNext();
        }

        private long takeNext() {
            if (!station.hasWork()) {
                return 0;
            }
            station.takeBatch(batch);
            show();
            long ticks = station.drawCycleTicks(batch.get(0));
            station.rack().grant();
            return ticks;
        }

        @Override
        long nextStage() {
            if (batch.isEmpty()) {
                return DONE;
            }
            if (station.mustRepeat()) {
                return station.drawCycleTicks(batch.get(0));
            }
            handOn();
            boolean goesOn = !blocked
                    && standing.isEmpty()
                    && station.isOpen()
                    && station.rack().size() > 0
                    && !desk.isNeededElsewhere(member(), this);
            return goesOn ? takeNext() : DONE;
        }

        @Override
        void interrupted() {
            show();
        }

        @Override
        void resumed() {
            show();
        }

        @Override
        void ended() {
            show();
            station.offerWork();
        }
    }

    /** Puts right a stoppage. */
    private final class Repair extends Task {
        private final StoppageClock cause;

        Repair(StoppageClock cause) {
            super(
                    TaskKind.STOPPAGE,
                    desk.rolesOf(cause.cause().crew()),
                    NO_LINE,
                    station.description().place());
            this.cause = cause;
        }

        @Override
        long begin() {
            cause.waited(world.now() - raisedTick());
            return cause.drawDuration();
        }

        @Override
        long nextStage() {
            return DONE;
        }

        @Override
        void ended() {
            fixed();
        }
    }
}
