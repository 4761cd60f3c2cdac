package spoolyard.core.process;

import java.util.ArrayDeque;

/**
 * Where a strand was out of tolerance: stretches by metres that have entered the accumulator, until they are on a full
 * spool. What enters during a swap, or while the accumulator is caught up, may end on the spool after the present one.
 */
final class Blemishes {
    /** Stretches of no length are roundings, or went to waste. */
    private static final double SLACK_M = 1e-5;

    private record Stretch(double fromM, double toM) {}

    private final ArrayDeque<Stretch> stretches = new ArrayDeque<>();

    void begin(double atM) {
        stretches.addLast(new Stretch(atM, Double.POSITIVE_INFINITY));
    }

    void end(double atM) {
        if (!stretches.isEmpty()) {
            stretches.addLast(new Stretch(stretches.removeLast().fromM(), atM));
        }
    }

    void clear() {
        stretches.clear();
    }

    /** Whether there is any on the metres up to a full spool's end; what is wholly on it is forgotten. */
    boolean takeUpTo(double endM) {
        boolean any = false;
        while (!stretches.isEmpty() && stretches.getFirst().fromM() < endM - SLACK_M) {
            Stretch first = stretches.removeFirst();
            any |= first.toM() - first.fromM() > SLACK_M;
            if (first.toM() > endM + SLACK_M) {
                stretches.addFirst(new Stretch(endM, first.toM()));
                return any;
            }
        }
        return any;
    }
}
