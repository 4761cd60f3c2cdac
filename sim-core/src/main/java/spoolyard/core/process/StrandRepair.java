package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.random.Variate;

/** Puts one strand right after it broke, while the rest of the line goes on: a person threads it, then it settles. */
final class StrandRepair extends Task implements Struck {
    private final World world;
    private final CrewDesk desk;
    private final LineProcess line;
    private final Strand strand;
    private final StoppageClock clock;
    private final Variate settling;
    private final TimedEvent settled;
    private boolean running;

    StrandRepair(World world, CrewDesk desk, LineProcess line, Strand strand, String name, Stoppage cause) {
        super(
                TaskKind.STOPPAGE,
                desk.rolesOf(cause.crew()),
                line.index(),
                line.description().place());
        this.world = world;
        this.desk = desk;
        this.line = line;
        this.strand = strand;
        this.clock = new StoppageClock(world, cause, name, this);
        this.settling = world.streams()
                .variate(
                        clock.cause()
                                .stabiliseS()
                                .orElse(line.description().startStop().stabiliseS()),
                        name + " / " + cause.name() + " / stabilising");
        this.settled = new TimedEvent(world.engine(), Phase.FINISH) {
            @Override
            protected void happen() {
                running = false;
                line.making().strandRepaired(strand);
            }

            @Override
            public String toString() {
                return name + " settled";
            }
        };
    }

    StoppageClock clock() {
        return clock;
    }

    Strand strand() {
        return strand;
    }

    boolean isRunning() {
        return running;
    }

    /** Somebody works on the strand, or it settles. */
    boolean isAttended() {
        return running && !isWaiting();
    }

    @Override
    public void struckBy(StoppageClock cause) {
        line.making().strandBroke(this);
    }

    /** Calls for a person. */
    void start() {
        running = true;
        desk.raise(this);
    }

    @Override
    long begin() {
        clock.waited(world.now() - raisedTick());
        line.making().strandRepairChanged();
        return clock.drawDuration();
    }

    @Override
    long nextStage() {
        return DONE;
    }

    @Override
    void interrupted() {
        line.making().strandRepairChanged();
    }

    @Override
    void ended() {
        clock.fixed();
        boolean settles = clock.cause().restart() != Stoppage.Restart.NONE;
        settled.in(settles ? settling.nextTicks() : 0);
    }

    /** The whole line has been interrupted and will be threaded anew. */
    void abort() {
        if (!running) {
            return;
        }
        running = false;
        settled.cancel();
        desk.withdraw(this);
        if (clock.isStanding()) {
            clock.fixed();
        }
    }
}
