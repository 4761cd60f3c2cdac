package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Window;
import spoolyard.core.quantity.Ticks;

/** Puts a line's working periods, preheating, shut-downs and planned stops on the calendar. */
final class LineSchedule {
    private final World world;
    private final LineProcess process;
    private final LineHours hours;
    private final Line line;
    private final long horizon;

    LineSchedule(World world, LineProcess process) {
        this.world = world;
        this.process = process;
        this.hours = process.hours();
        this.line = process.description();
        this.horizon = world.plant().horizonTicks();
    }

    void schedule() {
        Optional<EndOfWeek> purge = world.plant().changeovers().endOfWeek();
        for (int i = 0; i < line.workingPeriods().size(); i++) {
            int number = i;
            if (line.workingPeriods().get(i).endTick() > 0) {
                schedule(
                        line.workingPeriods().get(i),
                        purge.filter(rule -> rule.comesAfter(line.workingPeriods(), number, horizon)));
            }
        }
        for (Window stop : line.plannedStops()) {
            if (stop.endTick() > 0) {
                at(Math.max(0, stop.startTick()), stop.name() + " begins", () -> hours.plannedStop(stop));
            }
        }
    }

    private void schedule(Window period, Optional<EndOfWeek> purge) {
        long lead = Ticks.ofSeconds(line.startStop().preheatLeadS());
        long begin = Math.max(0, period.startTick());
        if (lead > 0 && period.startTick() > 0) {
            at(Math.max(0, period.startTick() - lead), "preheating", hours::preheat);
        }
        at(begin, "working period begins", hours::periodBegins);
        boolean shutsDown = line.startStop().endOfPeriod() == EndOfPeriod.SHUT_DOWN;
        long ticks = shutsDown ? hours.drawShutDownTicks() : 0;
        long start = Math.max(begin, period.endTick() - ticks);
        purge.ifPresent(rule -> endOfWeek(rule, begin, start, () -> {
            if (shutsDown) {
                hours.shutDown(Math.max(0, period.endTick() - world.now()));
            } else {
                process.decide();
            }
        }));
        if (shutsDown) {
            at(start, "shut-down", () -> hours.shutDown(period.endTick() - start));
        }
        at(period.endTick(), "working period ends", hours::periodEnds);
    }

    /** Ends when the line is to be shut down or goes off; if its crew comes late it does so afterwards. */
    private void endOfWeek(EndOfWeek purge, long begin, long end, Runnable late) {
        long ticks = hours.drawEndOfWeekTicks(purge);
        long start = Math.max(begin, end - ticks);
        at(
                start,
                "end-of-week purge",
                () -> hours.endOfWeek(purge, ticks, () -> {
                    if (world.now() > end) {
                        late.run();
                    }
                }));
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
