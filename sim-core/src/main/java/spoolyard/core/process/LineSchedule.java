package spoolyard.core.process;

import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/** Puts a line's working periods, preheating, shut-downs and planned stops on the calendar. */
final class LineSchedule {
    private final World world;
    private final LineHours hours;
    private final Line line;
    private final long horizon;

    LineSchedule(World world, LineProcess process) {
        this.world = world;
        this.hours = process.hours();
        this.line = process.description();
        this.horizon = world.plant().horizonTicks();
    }

    void schedule() {
        for (Window period : line.workingPeriods()) {
            if (period.endTick() > 0) {
                schedule(period);
            }
        }
        for (Window stop : line.plannedStops()) {
            if (stop.endTick() > 0) {
                at(Math.max(0, stop.startTick()), stop.name() + " begins", () -> hours.plannedStop(stop));
            }
        }
    }

    private void schedule(Window period) {
        long lead = Ticks.ofSeconds(line.startStop().preheatLeadS());
        if (lead > 0 && period.startTick() > 0) {
            at(Math.max(0, period.startTick() - lead), "preheating", hours::preheat);
        }
        at(Math.max(0, period.startTick()), "working period begins", hours::periodBegins);
        if (line.startStop().endOfPeriod() == EndOfPeriod.SHUT_DOWN) {
            long ticks = hours.drawShutDownTicks();
            long start = Math.max(Math.max(0, period.startTick()), period.endTick() - ticks);
            at(start, "shut-down", () -> hours.shutDown(period.endTick() - start));
        }
        at(period.endTick(), "working period ends", hours::periodEnds);
    }

    private void at(long tick, String what, Runnable action) {
        if (tick > horizon) {
            return;
        }
        new TimedEvent(world.engine(), Phase.CALENDAR) {
            @Override
            protected void happen() {
                action.run();
            }

            @Override
            public String toString() {
                return "line " + line.name() + " " + what;
            }
        }.at(tick);
    }
}
