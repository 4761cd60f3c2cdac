package spoolyard.scenarios.read;

import java.util.Arrays;

/** Finds the line of a character in a text. Line ends are LF, CR or CR LF. Immutable. */
final class LineStarts {
    private final int[] starts;

    LineStarts(String text) {
        int[] found = new int[text.length() + 1];
        int count = 1;
        for (int i = 0; i < text.length(); i++) {
            char c = text.charAt(i);
            boolean isHalfOfPair = c == '\r' && i + 1 < text.length() && text.charAt(i + 1) == '\n';
            if ((c == '\n' || c == '\r') && !isHalfOfPair) {
                found[count++] = i + 1;
            }
        }
        this.starts = Arrays.copyOf(found, count);
    }

    /** Line of the character at a position, from 1. */
    int lineAt(long position) {
        int index = Arrays.binarySearch(starts, (int) position);
        return index >= 0 ? index + 1 : -index - 1;
    }
}
