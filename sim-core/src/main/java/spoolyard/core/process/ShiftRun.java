package spoolyard.core.process;

import java.util.List;
import spoolyard.core.engine.Phase;
import spoolyard.core.engine.TimedEvent;
import spoolyard.core.plant.Break;
import spoolyard.core.plant.Shift;
import spoolyard.core.record.RunResult.ShiftResult;

/** One shift as it runs: its people come and go, and what the lines have made in it is read off. */
final class ShiftRun {
    private final Shift description;
    private final CrewDesk desk;
    private final List<CrewLedger> ledgers;
    private final TimedEvent start;
    private final TimedEvent arrive;
    private final TimedEvent end;
    private LineTotals atStart;
    private LineTotals atEnd;

    ShiftRun(Shift description, CrewDesk desk, List<CrewLedger> ledgers, LineTotals.Source lines) {
        this.description = description;
        this.desk = desk;
        this.ledgers = ledgers;
        this.start = event("starts", () -> atStart = lines.read());
        this.arrive = event("crew arrives", () -> desk.arrive(this));
        this.end = event("ends", () -> {
            desk.leave(this);
            atEnd = lines.read();
        });
    }

    private TimedEvent event(String what, Runnable action) {
        return new TimedEvent(desk.engine(), Phase.CALENDAR) {
            @Override
            protected void happen() {
                action.run();
            }

            @Override
            public String toString() {
                return "shift " + description.name() + " " + what;
            }
        };
    }

    /** Puts its instants on the calendar; a shift already running at the start of the run begins then. */
    void schedule(long horizon) {
        long from = Math.max(0, description.startTick());
        long to = Math.min(horizon, description.endTick());
        if (to <= from) {
            return;
        }
        end.at(to);
        start.at(from);
        long handOver = description.handOverOverlaps() ? 0 : description.handOverTicks();
        if (description.startTick() + handOver < to) {
            arrive.at(Math.max(from, description.startTick() + handOver));
        }
        payCrew(from, to);
    }

    private void payCrew(long from, long to) {
        long overlap = description.handOverOverlaps() && description.startTick() >= 0 ? description.handOverTicks() : 0;
        for (int role = 0; role < ledgers.size(); role++) {
            ledgers.get(role).paid(heads(role) * (to - from + overlap), description.payFactor());
        }
    }

    int heads(int role) {
        return description.heads().get(role);
    }

    CrewLedger ledger(int role) {
        return ledgers.get(role);
    }

    List<Break> breaks() {
        return description.breaks();
    }

    long startTick() {
        return description.startTick();
    }

    long endTick() {
        return description.endTick();
    }

    double pace() {
        return description.pace();
    }

    /** Whether it has begun and ended within the run. */
    boolean isOver() {
        return atEnd != null;
    }

    /** What the lines have made in it; only once it is over. */
    ShiftResult result() {
        LineTotals made = atEnd.minus(atStart);
        return new ShiftResult(
                description.name(),
                description.startTick(),
                description.endTick(),
                made.goodSpoolsList(),
                made.goodKgList(),
                made.scrapKgList());
    }
}
