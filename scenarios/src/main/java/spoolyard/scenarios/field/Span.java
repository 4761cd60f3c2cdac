package spoolyard.scenarios.field;

import java.math.BigDecimal;
import java.math.MathContext;
import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.Optional;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.format.Dimension;
import spoolyard.scenarios.format.Quantity;

/**
 * A stretch of calendar: whole days by the clock on the wall (a day is 23 or 25 hours long when the clocks change), or a
 * fixed time. Immutable.
 *
 * @param days whole days
 * @param time fixed time, added after the days
 */
public record Span(long days, Duration time) {
    private static final int MOST_DAYS = 3660;

    /**
     * A stretch longer than nothing and at most ten years. In days and weeks it goes by the wall clock, in other units by
     * the stopwatch.
     *
     * @return the kind
     */
    public static Kind<Span> kind() {
        return new TextKind<>(
                Span::parse,
                FaultKind.NOT_A_VALUE,
                "Must be a time > 0 and <= 10 years in " + Dimension.TIME.offeredUnits()
                        + "; days and weeks as whole numbers.",
                "write for example 4 weeks, 7 days or 8 h",
                new Span(1, Duration.ZERO));
    }

    /**
     * A number of whole days by the wall clock.
     *
     * @param most most days
     * @return the kind; values are days
     */
    public static Kind<Integer> days(int most) {
        return new TextKind<>(
                text -> parse(text)
                        .filter(span -> span.days > 0 && span.days <= most)
                        .map(span -> (int) span.days),
                FaultKind.NOT_A_VALUE,
                "Must be 1 to " + most + " whole days, in days or weeks.",
                "write for example 7 days",
                1);
    }

    /**
     * The instant this much later.
     *
     * @param instant the instant
     * @return the later one
     */
    public ZonedDateTime after(ZonedDateTime instant) {
        return instant.plusDays(days).plus(time);
    }

    private static Optional<Span> parse(String text) {
        Optional<Quantity> quantity = Quantity.parse(text);
        Optional<BigDecimal> seconds =
                quantity.flatMap(q -> q.in(Dimension.TIME)).map(BigDecimal::valueOf);
        if (seconds.isEmpty()
                || seconds.get().signum() <= 0
                || days(seconds.get()).doubleValue() > MOST_DAYS) {
            return Optional.empty();
        }
        if (!quantity.get().unit().matches("d|days?|weeks?")) {
            long nanos = seconds.get().movePointRight(9).longValue();
            return Optional.of(new Span(0, Duration.ofNanos(nanos)));
        }
        BigDecimal days = days(seconds.get()).stripTrailingZeros();
        return days.scale() <= 0 ? Optional.of(new Span(days.longValue(), Duration.ZERO)) : Optional.empty();
    }

    private static BigDecimal days(BigDecimal seconds) {
        return seconds.divide(BigDecimal.valueOf(86_400), MathContext.DECIMAL64);
    }
}
