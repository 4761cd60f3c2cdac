package spoolyard.core.process;

import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Window;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/** What the calendar makes a line do: preheat, begin and end its working period, stop for maintenance. */
final class LineHours {
    private final LineProcess line;
    private final LineCondition condition;
    private final StepPlanner planner;
    private final LineStops stops;
    private final Heating heating;
    private boolean scheduled;
    private boolean closing;

    LineHours(LineProcess line, LineCondition condition, StepPlanner planner, LineStops stops, Heating heating) {
        this.line = line;
        this.condition = condition;
        this.planner = planner;
        this.stops = stops;
        this.heating = heating;
    }

    /** Within a working period. */
    boolean isScheduled() {
        return scheduled;
    }

    /** Within a working period and not yet shutting down for its end. */
    boolean mayWork() {
        return scheduled && !closing;
    }

    long drawShutDownTicks() {
        return planner.drawShutDownTicks();
    }

    void preheat() {
        if (!scheduled && !condition.isHot() && !line.isAtWork()) {
            heatUp();
        }
    }

    /** Heats up and soaks, with nobody needed, then goes on. */
    void heatUp() {
        line.run(heating.fromCold(line.orders().polymer()), () -> {
            condition.heated();
            if (scheduled) {
                line.decide();
            } else {
                line.enter(LineState.NOT_SCHEDULED);
            }
        });
    }

    void periodBegins() {
        scheduled = true;
        closing = false;
        if (line.program().isWaiting()) {
            line.enter(LineState.WAITING_FOR_CREW);
        } else if (!line.isAtWork()) {
            line.decide();
        }
    }

    void shutDown(long ticks) {
        closing = true;
        if (stops.isUnderWay()) {
            return;
        }
        if (condition.isHot() || line.program().isRunning()) {
            line.halt(ScrapCause.SHORT_SPOOL);
            line.run(planner.shutDown(ticks), line::goOff);
        } else {
            line.goOff();
        }
    }

    void periodEnds() {
        scheduled = false;
        EndOfPeriod policy = line.description().startStop().endOfPeriod();
        if (stops.isUnderWay() || policy == EndOfPeriod.RUN_ON && line.isAtWork()) {
            line.enter(line.clock().state());
        } else {
            line.goOff();
        }
    }

    void plannedStop(Window window) {
        stops.windowOpens(window);
        if (line.isAtWork() ? !line.program().isRunning() : line.isIdle()) {
            line.halt(ScrapCause.SHORT_SPOOL);
            line.decide();
        }
    }
}
