package spoolyard.scenarios.field;

import java.time.DateTimeException;
import java.time.LocalDate;
import java.time.LocalDateTime;
import java.time.LocalTime;
import java.time.ZoneId;
import java.util.Optional;
import java.util.function.Function;
import java.util.function.Supplier;
import java.util.regex.Pattern;
import spoolyard.scenarios.fault.FaultKind;

/** Dates and times of day, in ISO 8601 form with a space allowed in place of the T. */
public final class Times {
    private static final Pattern DATE = Pattern.compile("\\d{4}-\\d{2}-\\d{2}");
    private static final Pattern TIME = Pattern.compile("\\d{2}:\\d{2}");
    private static final Pattern DATE_AND_TIME = Pattern.compile(DATE + "[ T]" + TIME);

    private Times() {}

    /**
     * A date.
     *
     * @return the kind
     */
    public static Kind<LocalDate> date() {
        return kind(
                text -> DATE.matcher(text).matches() ? attempt(() -> LocalDate.parse(text)) : Optional.empty(),
                "Must be a date as year-month-day.",
                "write for example 2027-03-26",
                LocalDate.EPOCH);
    }

    /**
     * A time of day. {@code 24:00} is midnight at the end of the day and reads as 00:00.
     *
     * @return the kind
     */
    public static Kind<LocalTime> timeOfDay() {
        return kind(
                Times::timeOfDay,
                "Must be a time of day as hours:minutes, 00:00 to 24:00.",
                "write for example 06:00",
                LocalTime.MIDNIGHT);
    }

    /**
     * A date with a time of day.
     *
     * @return the kind
     */
    public static Kind<LocalDateTime> dateTime() {
        return kind(
                Times::dateTime,
                "Must be a date and a time as year-month-day hours:minutes.",
                "write for example 2027-03-01 06:00",
                LocalDate.EPOCH.atStartOfDay());
    }

    /**
     * A date, optionally with a time of day.
     *
     * @param ifDateOnly the instant a date alone stands for
     * @return the kind
     */
    public static Kind<LocalDateTime> dateOrDateTime(Function<LocalDate, LocalDateTime> ifDateOnly) {
        return kind(
                text -> DATE.matcher(text).matches()
                        ? attempt(() -> LocalDate.parse(text)).map(ifDateOnly)
                        : dateTime(text),
                "Must be a date as year-month-day, optionally with hours:minutes.",
                "write for example 2027-03-05 or 2027-03-05 14:00",
                LocalDate.EPOCH.atStartOfDay());
    }

    /**
     * A time zone.
     *
     * @return the kind
     */
    public static Kind<ZoneId> zone() {
        return kind(
                text -> ZoneId.getAvailableZoneIds().contains(text) ? Optional.of(ZoneId.of(text)) : Optional.empty(),
                "Must be a time zone of the IANA list.",
                "write for example Europe/Berlin, or UTC",
                ZoneId.of("UTC"));
    }

    private static Optional<LocalTime> timeOfDay(String text) {
        if (text.equals("24:00")) {
            return Optional.of(LocalTime.MIDNIGHT);
        }
        return TIME.matcher(text).matches() ? attempt(() -> LocalTime.parse(text)) : Optional.empty();
    }

    private static Optional<LocalDateTime> dateTime(String text) {
        boolean isShaped = DATE_AND_TIME.matcher(text).matches();
        return isShaped ? attempt(() -> LocalDateTime.parse(text.replace(' ', 'T'))) : Optional.empty();
    }

    private static <T> Kind<T> kind(Function<String, Optional<T>> parse, String allowed, String mend, T standIn) {
        return new TextKind<>(parse, FaultKind.NOT_A_VALUE, allowed, mend, standIn);
    }

    private static <T> Optional<T> attempt(Supplier<T> parse) {
        try {
            return Optional.of(parse.get());
        } catch (DateTimeException e) {
            return Optional.empty();
        }
    }
}
