package spoolyard.core.quantity;

/**
 * The simulator's time: whole microseconds since the start of the run, so that equal instants compare equal.
 *
 * <p>A {@code double} holds every whole number up to 2<sup>53</sup> exactly: 285 years of microseconds.
 *
 * @see <a href="../../../../../../../../docs/decisions/0001-time-is-whole-microseconds.md">decision 0001</a>
 */
public interface Ticks {
    /** Ticks in a second. */
    long PER_SECOND = 1_000_000L;

    /** Ticks in an hour. */
    long PER_HOUR = 3_600L * PER_SECOND;

    /** An instant later than any a run reaches: {@value} ticks, about 142 years. */
    long NEVER = 1L << 52;

    /**
     * Nearest whole tick.
     *
     * @param seconds a duration or instant in seconds, {@code >= 0}; {@code +infinity} gives {@link #NEVER}
     * @return whole ticks, at most {@link #NEVER}
     * @throws IllegalArgumentException if {@code seconds} is negative or not a number
     */
    static long ofSeconds(double seconds) {
        if (!(seconds >= 0)) {
            throw new IllegalArgumentException("seconds = " + seconds + ". Must be >= 0.");
        }
        return seconds >= NEVER / (double) PER_SECOND ? NEVER : Math.round(seconds * PER_SECOND);
    }

    /**
     * Seconds in a span of ticks.
     *
     * @param ticks whole ticks, any sign
     * @return seconds
     */
    static double toSeconds(long ticks) {
        return ticks / (double) PER_SECOND;
    }

    /**
     * Hours in a span of ticks.
     *
     * @param ticks whole ticks, any sign
     * @return hours
     */
    static double toHours(long ticks) {
        return ticks / (double) PER_HOUR;
    }
}
