package spoolyard.analysis.report;

import java.time.LocalDate;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.scenarios.ShiftRoster;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.CrewWork.Stint;
import spoolyard.scenarios.calendar.ShiftPlan;

/**
 * A roster as rows of days: a crew, or a shift that no rota names, with its shift for each day of a turn. Immutable.
 *
 * @param roster who works when
 */
record RosterRows(ShiftRoster roster) {
    /** More days than this are no picture. */
    private static final int MOST_DAYS = 28;

    /**
     * A row.
     *
     * @param work the crew's work
     * @param shifts names of its shifts, one a day from day 1 of the cycle on; empty for a day off
     */
    record Row(CrewWork work, List<Optional<String>> shifts) {
        Row {
            shifts = List.copyOf(shifts);
        }

        double weekH() {
            return work.stints().stream().mapToDouble(Stint::lengthH).sum() / work.weeks();
        }
    }

    /** First day shown, day 1 of the cycle. */
    LocalDate firstDay() {
        return roster.plan().cycle().firstDay();
    }

    /** Days of the longest rota, or of the cycle where it is longer; 28 at most. */
    int days() {
        int longest = roster.plan().rotas().stream()
                .mapToInt(rota -> rota.days().size())
                .max()
                .orElse(0);
        return Math.min(MOST_DAYS, Math.max(longest, roster.plan().cycle().days()));
    }

    boolean isCut() {
        return roster.plan().rotas().stream().anyMatch(rota -> rota.days().size() > MOST_DAYS)
                || roster.plan().cycle().days() > MOST_DAYS;
    }

    /** Names of the shifts, in file order. */
    List<String> shiftNames() {
        return roster.plan().pattern().stream()
                .map(shift -> shift.template().name())
                .toList();
    }

    List<Row> rows() {
        List<Row> rows = new ArrayList<>();
        for (CrewWork work : roster.work()) {
            rows.add(new Row(
                    work,
                    IntStream.range(0, days())
                            .mapToObj(day -> shiftOn(work, firstDay().plusDays(day)))
                            .toList()));
        }
        return rows;
    }

    private Optional<String> shiftOn(CrewWork work, LocalDate date) {
        ShiftPlan plan = roster.plan();
        if (work.isCrew()) {
            return plan.rotas().stream()
                    .filter(rota -> rota.crew().equals(work.name()))
                    .findFirst()
                    .flatMap(rota -> rota.shiftOn(date, plan.cycle()));
        }
        return plan.pattern().stream()
                .filter(shift -> shift.template().name().equals(work.name()))
                .filter(shift -> shift.days().fallsOn(date, plan.cycle()))
                .map(shift -> shift.template().name())
                .findFirst();
    }
}
