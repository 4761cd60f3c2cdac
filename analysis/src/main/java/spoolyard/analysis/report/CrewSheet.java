package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.record.RunResult.CrewResult;

/** The crew by role and shift. */
final class CrewSheet {
    static final Column<CrewResult> BUSY =
            Column.average("busy_pct_of_present", crew -> 100 * crew.busyS() / crew.presentS());

    static final Sheet<CrewResult> SHEET = new Sheet<>(
            "crew",
            List.of("role", "shift"),
            (setting, result) -> result.crew(),
            crew -> List.of(crew.role(), crew.shift()),
            List.of(
                    BUSY,
                    Column.amount("present_h", crew -> crew.presentS() / 3600),
                    Column.amount("busy_h", crew -> crew.busyS() / 3600),
                    Column.amount("walking_h", crew -> crew.walkingS() / 3600),
                    Column.amount("on_break_h", crew -> crew.breakS() / 3600),
                    Column.amount("paid_h", crew -> crew.paidS() / 3600),
                    Column.amount("tasks", CrewResult::tasks),
                    Column.average("mean_call_to_arrival_s", crew -> crew.tasks() == 0 ? Double.NaN : crew.meanWaitS()),
                    Column.amount("longest_call_to_arrival_s", CrewResult::longestWaitS)));

    private CrewSheet() {}
}
