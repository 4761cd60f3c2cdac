package spoolyard.analysis.report;

import java.time.Duration;
import java.time.LocalDate;
import java.time.format.TextStyle;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.scenarios.ShiftRoster;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.CrewWork.Stint;
import spoolyard.scenarios.calendar.ShiftTemplate;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

/** Rosters for a screen: the shift systems in a table, or one roster drawn day by day. */
public final class RosterText {
    private static final int NAME = 26;
    private static final int NUMBER = 11;
    private static final int WIDEST_NAME = 16;
    private static final int MOST_CREWS = 12;
    private static final Pattern RULE = Pattern.compile("Art\\. \\d+(\\([a-z]\\))?|FLSA");

    private final Ink ink;

    /**
     * For a screen.
     *
     * @param ink what it can show
     */
    public RosterText(Ink ink) {
        this.ink = ink;
    }

    /**
     * All shift systems.
     *
     * @return lines of text
     */
    public List<String> systems() {
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(row("Shift system", "crews", "h a week", "covered", "in a row", "least rest") + "  law"));
        lines.add(ink.faint(row("", "", "average", "h a week", "days", "h") + "  touches"));
        for (ShiftSystem system : ShiftSystem.values()) {
            ShiftRoster roster = ShiftRoster.of(system);
            lines.add(row(
                            system.label(),
                            String.valueOf(roster.work().size()),
                            hours(roster),
                            number(roster.work().stream()
                                    .mapToDouble(RosterText::weekH)
                                    .sum()),
                            String.valueOf(roster.work().stream()
                                    .mapToInt(RosterText::longestRun)
                                    .max()
                                    .orElse(0)),
                            leastRest(roster.work()))
                    + "  " + rules(roster));
            lines.add(ink.faint("  " + system.title()));
        }
        lines.add("");
        lines.add("h a week: from begin to end of the shifts, breaks included, over a whole turn. Law: articles of");
        lines.add("EU 2003/88/EC, and weeks above 40 h for US overtime pay; a pointer, no verdict.");
        return lines;
    }

    private static String row(String name, String... numbers) {
        return Cell.left(name, NAME)
                + Stream.of(numbers).map(text -> Cell.right(text, NUMBER)).collect(Collectors.joining());
    }

    private static String hours(ShiftRoster roster) {
        return roster.work().stream()
                .map(work -> number(weekH(work)))
                .distinct()
                .collect(Collectors.joining(", "));
    }

    private static String number(double value) {
        return Figures.shown(value, value == Math.rint(value) ? 0 : 1);
    }

    private static double weekH(CrewWork work) {
        return work.stints().stream().mapToDouble(Stint::lengthH).sum() / work.weeks();
    }

    /** Days in a row on which a shift starts. */
    private static int longestRun(CrewWork work) {
        int longest = 0;
        int run = 0;
        LocalDate before = LocalDate.MIN;
        for (Stint stint : work.stints()) {
            LocalDate day = stint.start().toLocalDate();
            run = before.equals(day.minusDays(1)) ? run + 1 : 1;
            longest = Math.max(longest, run);
            before = day;
        }
        return longest;
    }

    private static String leastRest(List<CrewWork> work) {
        OptionalDouble least = work.stream()
                .flatMapToDouble(crew -> IntStream.range(1, crew.stints().size())
                        .mapToDouble(i -> Duration.between(
                                                crew.stints().get(i - 1).end(),
                                                crew.stints().get(i).start())
                                        .toMinutes()
                                / 60.0))
                .min();
        return least.isPresent() ? number(least.getAsDouble()) : "";
    }

    private String rules(ShiftRoster roster) {
        List<String> rules = new ArrayList<>();
        for (Warning flag : roster.flags()) {
            Matcher rule = RULE.matcher(flag.message());
            if (rule.find()) {
                rules.add(rule.group());
            }
        }
        return rules.isEmpty() ? ink.none() : String.join(", ", rules);
    }

    /**
     * A roster day by day.
     *
     * @param roster who works when
     * @return lines of text
     */
    public List<String> drawn(ShiftRoster roster) {
        RosterRows rows = new RosterRows(roster);
        int name = Math.min(
                WIDEST_NAME,
                2
                        + rows.rows().stream()
                                .mapToInt(row -> row.work().name().length())
                                .max()
                                .orElse(0));
        int cell = 1
                + Math.max(
                        2,
                        rows.shiftNames().stream()
                                .mapToInt(String::length)
                                .max()
                                .orElse(1));
        List<String> lines = new ArrayList<>();
        lines.add(ink.faint(heading(rows, name, cell)));
        for (RosterRows.Row row : rows.rows().stream().limit(MOST_CREWS).toList()) {
            String days = row.shifts().stream()
                    .map(shift -> Cell.left(shift.orElse("."), cell))
                    .collect(Collectors.joining());
            lines.add(Cell.left(shortened(row.work().name(), name - 1), name) + days
                    + Cell.right(number(row.weekH()), 6) + " h");
        }
        if (rows.rows().size() > MOST_CREWS) {
            lines.add("  and " + (rows.rows().size() - MOST_CREWS) + " more");
        }
        lines.add("");
        lines.add(times(roster) + (rows.isCut() ? "; the first " + rows.days() + " days shown" : ""));
        roster.flags().forEach(flag -> lines.add("Look at: " + flag.message()));
        return lines;
    }

    private static String shortened(String text, int width) {
        return text.length() <= width ? text : text.substring(0, width);
    }

    private static String heading(RosterRows rows, int name, int cell) {
        StringBuilder heading = new StringBuilder(Cell.left("", name));
        boolean isWeekly = rows.days() % 7 == 0;
        for (int day = 0; day < rows.days(); day++) {
            String weekday = rows.firstDay()
                    .plusDays(day)
                    .getDayOfWeek()
                    .getDisplayName(TextStyle.SHORT, Locale.ENGLISH)
                    .substring(0, 2);
            heading.append(Cell.left(isWeekly ? weekday : String.valueOf(day + 1), cell));
        }
        return heading + "a week";
    }

    private static String times(ShiftRoster roster) {
        return roster.plan().pattern().stream()
                .map(shift -> shift.template())
                .map(RosterText::time)
                .collect(Collectors.joining("; "));
    }

    private static String time(ShiftTemplate shift) {
        Duration length = shift.end().usualLength(shift.start());
        return shift.name() + " " + shift.start() + " to " + shift.start().plus(length);
    }
}
