package spoolyard.core.process;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Product;
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
    private final List<Product> purgedAtWeekEnd = new ArrayList<>();
    private boolean scheduled;
    private boolean closing;
    private boolean isPurging;

    LineHours(LineProcess line, LineCondition condition, StepPlanner planner, LineStops stops, Heating heating) {
        this.line = line;
        this.condition = condition;
        this.planner = planner;
        this.stops = stops;
        this.heating = heating;
    }

    /** What the screw held before each purge at the end of a week. */
    List<Product> purgedAtWeekEnd() {
        return purgedAtWeekEnd;
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

    long drawEndOfWeekTicks(EndOfWeek purge) {
        return planner.drawEndOfWeekTicks(purge);
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
        if (stops.isUnderWay() || isPurging) {
            return;
        }
        if (condition.isHot() || line.program().isRunning()) {
            line.halt(ScrapCause.SHORT_SPOOL);
            line.run(planner.shutDown(ticks), line::goOff);
        } else {
            line.goOff();
        }
    }

    /** The last thing before a long stop; left out while the line is cold, is being put right, or is clean. */
    void endOfWeek(EndOfWeek purge, long ticks, Runnable then) {
        boolean isDue =
                condition.isHot() && condition.inScrew().filter(purge::isFor).isPresent();
        if (!isDue || stops.isUnderWay()) {
            return;
        }
        closing = true;
        isPurging = true;
        line.halt(ScrapCause.SHORT_SPOOL);
        line.run(planner.endOfWeek(purge, ticks), () -> {
            isPurging = false;
            condition.inScrew().ifPresent(held -> {
                purgedAtWeekEnd.add(held);
                condition.holds(purge.cleaned(held));
            });
            then.run();
        });
    }

    void periodEnds() {
        scheduled = false;
        EndOfPeriod policy = line.description().startStop().endOfPeriod();
        if (stops.isUnderWay() || policy == EndOfPeriod.RUN_ON && line.isAtWork()) {
            line.enter(line.clock().state());
        } else {
            isPurging = false;
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
