package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;

/** Fits parts of a sentence on a line. */
final class Fitted {
    private static final String MORE = " ...";

    private Fitted() {}

    /**
     * Parts on as many lines as they need.
     *
     * @param separator text between parts; its blanks go where a line ends
     * @param parts the parts
     * @param room characters of a line; a part that is longer stands alone
     * @return at least one line
     */
    static List<String> lines(String separator, List<String> parts, int room) {
        List<String> lines = new ArrayList<>();
        String line = "";
        for (String part : parts) {
            String longer = line.isEmpty() ? part : line + separator + part;
            if (longer.length() > room && !line.isEmpty()) {
                lines.add(line + separator.strip());
                longer = part;
            }
            line = longer;
        }
        lines.add(line);
        return lines;
    }

    /**
     * As many parts as find room, the first ones first; dots stand for those that do not.
     *
     * @param begin what the line begins with
     * @param separator text between parts
     * @param parts the parts
     * @param room characters
     * @return at most {@code room} characters if {@code begin} has no more than that
     */
    static String joined(String begin, String separator, List<String> parts, int room) {
        for (int kept = parts.size(); kept > 0; kept--) {
            String line = begin + String.join(separator, parts.subList(0, kept)) + (kept < parts.size() ? MORE : "");
            if (line.length() <= room) {
                return line;
            }
        }
        return Cell.clipped(begin.strip(), room);
    }
}
