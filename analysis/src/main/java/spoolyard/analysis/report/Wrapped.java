package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;

/** Breaks sentences into lines between words. */
final class Wrapped {
    /** A blank, but not one that parts the thousands of a number. */
    private static final String BETWEEN_WORDS = "(?<!\\d) | (?!\\d{3}(?!\\d))";

    private Wrapped() {}

    /**
     * The lines of a text.
     *
     * @param text words with single spaces
     * @param indent begins every line but the first
     * @param width characters; a word that is longer stands alone and is not cut
     * @return at least one line
     */
    static List<String> lines(String text, String indent, int width) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder();
        for (String word : text.split(BETWEEN_WORDS)) {
            if (!line.toString().isBlank() && line.length() + 1 + word.length() > width) {
                lines.add(line.toString());
                line = new StringBuilder(indent);
            }
            line.append(line.toString().isBlank() ? "" : " ").append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
