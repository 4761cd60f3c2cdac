package spoolyard.analysis.cli;

import java.util.Comparator;
import java.util.List;
import java.util.Locale;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spoolyard.analysis.schedule.Spot;

/**
 * An order to be moved, as it was typed: {@code SO-4112 L3 after SO-4107}. Immutable.
 *
 * @param order the order
 * @param line its new line
 * @param spot its place there
 */
record MoveArgument(String order, String line, Spot spot) {
    private static final Pattern FORM = Pattern.compile("(.+?) (first|last|before|after)(?: (.+))?");

    /**
     * Reads it. Names of lines may have blanks.
     *
     * @param typed what was typed
     * @param lines names of all lines
     * @return order, line and place, none of which need be known
     * @throws InputException if it has another form
     */
    static MoveArgument of(String typed, List<String> lines) throws InputException {
        Matcher form = FORM.matcher(typed.strip().replaceAll("\\s+", " "));
        String head = form.matches() ? form.group(1) : "";
        int end = lines.stream()
                .filter(line -> head.endsWith(" " + line))
                .max(Comparator.comparingInt(String::length))
                .map(line -> head.length() - line.length())
                .orElse(head.lastIndexOf(' ') + 1);
        boolean isTold = form.matches() && form.group(2).matches("before|after") == (form.group(3) != null);
        if (!isTold || end < 2) {
            throw new InputException(
                    "--move = " + typed,
                    "Must be an order, a line and first, last, before ORDER or after ORDER.",
                    "write for example --move \"SO-4112 L3 after SO-4107\"");
        }
        Spot.Kind kind = Spot.Kind.valueOf(form.group(2).toUpperCase(Locale.ROOT));
        String other = form.group(3) == null ? "" : form.group(3);
        return new MoveArgument(head.substring(0, end - 1), head.substring(end), new Spot(kind, other));
    }
}
