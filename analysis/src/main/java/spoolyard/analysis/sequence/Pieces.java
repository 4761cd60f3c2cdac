package spoolyard.analysis.sequence;

/**
 * A line's sequence as it would be after a move: stretches of the present sequences, one after the other. Reused from move to
 * move. For one thread.
 */
final class Pieces {
    private static final int MOST = 6;

    final int[] line = new int[MOST];
    final int[] from = new int[MOST];
    final int[] to = new int[MOST];
    int count;
    /** Number of orders of the line itself before the first that is moved. */
    int kept;

    /** Starts with the first orders of the line itself, which stay. */
    Pieces keep(int orders) {
        kept = orders;
        count = 0;
        return this;
    }

    /** Adds places {@code first} (in) to {@code end} (out) of a line; nothing if that is empty. */
    Pieces add(int ofLine, int first, int end) {
        if (end > first) {
            line[count] = ofLine;
            from[count] = first;
            to[count] = end;
            count++;
        }
        return this;
    }
}
