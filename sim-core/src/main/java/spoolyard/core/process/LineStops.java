package spoolyard.core.process;

import java.util.ArrayDeque;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Stoppage;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.plant.Window;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/** What stops a whole line: the clocks of its causes, the stop under way, and those that wait for their moment. */
final class LineStops implements Struck {
    private final World world;
    private final LineProcess process;
    private final LineCondition condition;
    private final List<StoppageClock> causes = new ArrayList<>();
    private final ArrayDeque<StoppageClock> pending = new ArrayDeque<>();
    private Optional<StoppageClock> standing = Optional.empty();
    private Optional<Window> window = Optional.empty();
    private boolean windowUnderWay;

    LineStops(World world, LineProcess process, LineCondition condition) {
        this.world = world;
        this.process = process;
        this.condition = condition;
        Line line = process.description();
        for (Stoppage cause : line.stoppages()) {
            if (cause.scope() == Stoppage.Scope.STATION) {
                causes.add(new StoppageClock(world, cause, "line " + line.name(), this));
            }
        }
    }

    List<StoppageClock> clocks() {
        return causes;
    }

    void setClocks(boolean making, double kgPerS) {
        for (StoppageClock cause : causes) {
            cause.station(making, kgPerS);
        }
    }

    boolean isUnderWay() {
        return standing.isPresent() || windowUnderWay;
    }

    /** Whether a stop waits for the next full spool. */
    boolean isPending() {
        return !pending.isEmpty();
    }

    /** A planned window opens. */
    void windowOpens(Window opening) {
        window = Optional.of(opening);
    }

    /** Begins a planned window that is open; false if there is none. */
    boolean beginWindow() {
        if (window.filter(open -> open.endTick() > world.now()).isEmpty()) {
            window = Optional.empty();
            return false;
        }
        Window open = window.get();
        process.halt(ScrapCause.SHORT_SPOOL);
        condition.unthreaded(ScrapCause.STOPPAGE);
        windowUnderWay = true;
        Step step = Step.alone(open.name(), LineState.PLANNED_STOP, open.endTick() - world.now(), Step.Waste.NONE);
        process.run(List.of(step), () -> {
            windowUnderWay = false;
            process.decide();
        });
        return true;
    }

    @Override
    public void struckBy(StoppageClock cause) {
        process.tell("stoppage", cause.cause().name());
        if (process.isMaking() ? !cause.cause().beginsAtFullSpool() : process.isIdle()) {
            begin(cause);
        } else {
            pending.add(cause);
        }
    }

    /** Begins the first stop that waits; false if there is none. */
    boolean beginPending() {
        if (pending.isEmpty()) {
            return false;
        }
        begin(pending.remove());
        return true;
    }

    private void begin(StoppageClock cause) {
        cause.takenUp();
        Stoppage stoppage = cause.cause();
        interrupt(stoppage);
        standing = Optional.of(cause);
        boolean runs = stoppage.effect() == Stoppage.Effect.RUNS_TO_WASTE;
        Step.Waste waste = new Step.Waste(runs ? process.kgPerS() : 0, ScrapCause.STOPPAGE, true);
        LineState state = stoppage.planned() ? LineState.PLANNED_STOP : LineState.DOWN;
        Step step = new Step(
                stoppage.name(), state, cause.drawDuration(), waste, stoppage.crew(), TaskKind.STOPPAGE, false);
        process.run(List.of(step), () -> {
            standing = Optional.empty();
            cause.fixed();
            process.decide();
        });
    }

    private void interrupt(Stoppage stoppage) {
        if (stoppage.restart() == Stoppage.Restart.NONE) {
            process.stopMaking();
            return;
        }
        process.halt(ScrapCause.SHORT_SPOOL);
        if (stoppage.restart() == Stoppage.Restart.COLD_START) {
            condition.cooled();
            return;
        }
        if (stoppage.restart() == Stoppage.Restart.THREAD_UP) {
            condition.unthreaded(ScrapCause.STOPPAGE);
        }
        condition.unstable(ScrapCause.STOPPAGE, Optional.of(stoppage));
    }

    /** The crew has come to the step under way after a wait. */
    void waited(long ticks) {
        standing.ifPresent(cause -> cause.waited(ticks));
    }
}
