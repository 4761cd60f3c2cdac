package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;

/** How busy the crew is, a row for each role, a column for each shift. */
final class CrewTable {
    private static final int MOST_ROWS = 8;
    private static final int MOST_SHIFTS = 4;
    private static final int NAME = 21;
    private static final int WIDTH = 17;

    private final Estimates crew;
    private final Ink ink;
    private final Cell cell;
    private final List<String> roles;
    private final List<String> shifts;

    CrewTable(RunReport report, Ink ink) {
        this.crew = report.table(CrewSheet.SHEET);
        this.ink = ink;
        this.cell = new Cell(ink);
        this.roles = crew.keys().stream().map(key -> key.get(0)).distinct().toList();
        this.shifts = crew.keys().stream().map(key -> key.get(1)).distinct().toList();
    }

    /**
     * Heading and roles.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        StringBuilder heading = new StringBuilder(Cell.left("Crew, % busy", NAME));
        shownShifts().forEach(shift -> heading.append(Cell.left("   " + shift, WIDTH)));
        lines.add(ink.strong(heading.toString().stripTrailing()));
        int shown = roles.size() > MOST_ROWS ? MOST_ROWS - 1 : roles.size();
        roles.subList(0, shown).forEach(role -> lines.add(row(role)));
        if (shown < roles.size() || shifts.size() > MOST_SHIFTS) {
            lines.add(ink.faint("  and more in crew.csv"));
        }
        return lines;
    }

    private String row(String role) {
        StringBuilder row = new StringBuilder(Cell.left(role, NAME));
        for (String shift : shownShifts()) {
            List<String> key = List.of(role, shift);
            row.append(
                    crew.keys().contains(key)
                            ? cell.aligned(crew.at(key, CrewSheet.BUSY), 1, 5, WIDTH - 5)
                            : Cell.left(Cell.right(ink.none(), 5), WIDTH));
        }
        return row.toString().stripTrailing();
    }

    private List<String> shownShifts() {
        return shifts.subList(0, Math.min(shifts.size(), MOST_SHIFTS));
    }
}
