package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.capacity.CapacitySummary;
import spoolyard.scenarios.capacity.CrewCapacity;
import spoolyard.scenarios.capacity.LineCapacity;
import spoolyard.scenarios.capacity.StationCapacity;
import spoolyard.scenarios.capacity.SwapArithmetic;

/** Load against capacity in three small tables: lines, the crew at the winders, finishing. */
final class CapacityTables {
    private static final int NAME = 15;
    private static final int NUMBER = 10;
    private static final int MOST_LINES = 16;
    private static final int MOST_CREW = 10;

    private final CapacitySummary summary;
    private final Ink ink;

    CapacityTables(CapacitySummary summary, Ink ink) {
        this.summary = summary;
        this.ink = ink;
    }

    /**
     * The tables.
     *
     * @return lines of text
     */
    List<String> lines() {
        List<String> lines = new ArrayList<>();
        lines.add(heading("Line", "scheduled", "load", "load", "only here", "spools", "heads", "wait", "worst"));
        lines.add(ink.faint(row("", "h", "h", "%", "h", "per h", "busy", "s", "s")));
        add(lines, summary.lines().stream().map(this::row).toList(), MOST_LINES);
        lines.add(ink.faint(
                "load: hours at full rate, no loss, for the orders due in the run; only here: no other line"));
        lines.add(ink.faint("can make them; wait: longest a spool may wait for a person, usual and worst product"));
        if (!summary.crew().isEmpty()) {
            lines.add("");
            lines.add(heading("At the winders", "shift", "heads", "present", "busy", "busy %"));
            add(lines, summary.crew().stream().map(this::row).toList(), MOST_CREW);
        }
        lines.add("");
        lines.add(heading("Finishing", "capacity", "demand", "load %", "peak wait", "room"));
        add(lines, summary.stations().stream().map(this::row).toList(), MOST_CREW);
        return lines;
    }

    private static void add(List<String> lines, List<String> rows, int most) {
        int shown = rows.size() > most ? most - 1 : rows.size();
        lines.addAll(rows.subList(0, shown));
        if (shown < rows.size()) {
            lines.add("  and " + (rows.size() - shown) + " more");
        }
    }

    private String row(LineCapacity line) {
        return row(
                line.line(),
                number(line.scheduledH(), 1),
                number(line.loadH(), 1),
                number(100 * line.loadShare(), 1),
                number(line.onlyHereH(), 1),
                number(line.spoolsPerH(), 1),
                number(line.attendedHeads(), 2),
                wait(line.usual()),
                wait(line.hardest()));
    }

    private String row(CrewCapacity crew) {
        return row(
                crew.role(),
                Cell.clipped(crew.shift(), NUMBER - 1),
                String.valueOf(crew.heads()),
                number(crew.presentHeads(), 2),
                number(crew.attendedHeads(), 2),
                number(100 * crew.loadShare(), 1));
    }

    private String row(StationCapacity station) {
        return row(
                station.station(),
                number(station.capacitySpools(), 0),
                number(station.demandSpools(), 0),
                number(100 * station.demandSpools() / station.capacitySpools(), 1),
                number(station.peakWaiting(), 0),
                number(station.roomSpools(), 0));
    }

    private String wait(Optional<SwapArithmetic> swap) {
        return swap.map(each -> number(each.longestWaitS(), 0)).orElse(ink.none());
    }

    private String number(double value, int decimals) {
        return Double.isFinite(value) && value < Integer.MAX_VALUE ? Figures.shown(value, decimals) : ink.none();
    }

    private String heading(String name, String... titles) {
        return ink.strong(row(name, titles));
    }

    private static String row(String name, String... cells) {
        StringBuilder row = new StringBuilder(Cell.left(name, NAME));
        for (String cell : cells) {
            row.append(Cell.right(cell, NUMBER));
        }
        return row.toString();
    }
}
