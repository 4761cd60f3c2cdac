package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.List;

/**
 * The hours in which a line can make or change over. Immutable.
 *
 * <p>Work on a line is counted in <em>worked seconds</em>: time that passes only inside a span. An order begun on Friday
 * goes on where it stood on Monday. After the last span the line is taken to work on at its average share of the
 * time from 0 to the end of that span.
 *
 * <p>Example: spans 6 h to 14 h of two days. 9 worked hours end at 7 h on the second day.
 */
public final class WorkingTime {
    private static final int PLACES_A_SPAN = 4;

    private final double[] startS;
    private final double[] endS;
    private final double[] workedBeforeS;
    private final double workedS;
    private final double stretch;
    private final int[] spanAt;
    private final double placeS;

    private WorkingTime(List<Span> spans) {
        int count = spans.size();
        startS = spans.stream().mapToDouble(Span::startS).toArray();
        endS = spans.stream().mapToDouble(Span::endS).toArray();
        workedBeforeS = new double[count + 1];
        for (int i = 0; i < count; i++) {
            workedBeforeS[i + 1] = workedBeforeS[i] + endS[i] - startS[i];
        }
        workedS = workedBeforeS[count];
        stretch = workedS > 0 && workedS < Double.POSITIVE_INFINITY ? Math.max(1, endS[count - 1] / workedS) : 1;
        spanAt = new int[workedS < Double.POSITIVE_INFINITY ? PLACES_A_SPAN * count + 1 : 1];
        placeS = spanAt.length > 1 && workedS > 0 ? workedS / (spanAt.length - 1) : Double.POSITIVE_INFINITY;
        index();
    }

    private void index() {
        int span = 0;
        for (int place = 0; place < spanAt.length; place++) {
            while (span + 1 < startS.length && workedBeforeS[span + 1] < place * placeS) {
                span++;
            }
            spanAt[place] = span;
        }
    }

    /**
     * A stretch of time in which the line works.
     *
     * @param startS begin, seconds since the start of the plan, {@code >= 0}
     * @param endS end, {@code > startS}
     */
    public record Span(double startS, double endS) {}

    /**
     * Day and night without end.
     *
     * @return worked seconds are seconds of the clock
     */
    public static WorkingTime always() {
        return new WorkingTime(List.of(new Span(0, Double.POSITIVE_INFINITY)));
    }

    /**
     * Some spans.
     *
     * @param spans disjoint, by start, at least one
     * @return the working time
     * @throws IllegalArgumentException if there is none, or one is empty, begins before 0 or before the end of the last
     */
    public static WorkingTime of(List<Span> spans) {
        double reachedS = 0;
        for (Span span : spans) {
            if (!(span.startS >= reachedS && span.endS > span.startS)) {
                throw new IllegalArgumentException(
                        span + ". Must begin at or after " + reachedS + " s and not be empty.");
            }
            reachedS = span.endS;
        }
        if (spans.isEmpty()) {
            throw new IllegalArgumentException("0 spans. Must be at least one.");
        }
        return new WorkingTime(spans);
    }

    /**
     * All of it.
     *
     * @return worked seconds to the end of the last span; may be infinite
     */
    public double totalS() {
        return workedS;
    }

    /**
     * The end of the last span.
     *
     * @return seconds since the start of the plan; may be infinite
     */
    public double lastEndS() {
        return endS[endS.length - 1];
    }

    /**
     * When work ends.
     *
     * @param work worked seconds since the start of the plan, {@code >= 0}
     * @return seconds since the start of the plan; at the seam of two spans the end of the first
     */
    public double endOfS(double work) {
        if (work > workedS) {
            return lastEndS() + (work - workedS) * stretch;
        }
        int span = spanOf(work);
        return startS[span] + (work - workedBeforeS[span]);
    }

    /**
     * When work begins.
     *
     * @param work worked seconds since the start of the plan, {@code >= 0}
     * @return seconds since the start of the plan; at the seam of two spans the start of the second
     */
    public double startOfS(double work) {
        if (work >= workedS) {
            return endOfS(work);
        }
        int span = spanOf(work);
        return work >= workedBeforeS[span + 1] ? startS[span + 1] : startS[span] + (work - workedBeforeS[span]);
    }

    private int spanOf(double work) {
        int span = spanAt[(int) (work / placeS)];
        while (workedBeforeS[span + 1] < work) {
            span++;
        }
        return span;
    }

    /**
     * How much is worked until an instant.
     *
     * @param instantS seconds since the start of the plan
     * @return worked seconds, 0 before the first span
     */
    public double workedUntilS(double instantS) {
        if (instantS >= lastEndS()) {
            return workedS + (instantS - lastEndS()) / stretch;
        }
        int found = Arrays.binarySearch(startS, instantS);
        int span = found >= 0 ? found : -found - 2;
        return span < 0 ? 0 : workedBeforeS[span] + Math.min(instantS, endS[span]) - startS[span];
    }
}
