package spoolyard.analysis.report;

import java.time.DayOfWeek;
import java.time.ZonedDateTime;
import java.time.format.DateTimeFormatter;
import java.time.temporal.ChronoUnit;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.core.quantity.Ticks;

/**
 * Where an instant of a plan stands in its picture, and what is written at the days. Immutable.
 *
 * @param clock the plant's clock
 * @param endTick end of the picture, ticks since the start of the plan, {@code > 0}
 * @param left where the plan starts, pixels
 * @param width of the whole time, pixels
 */
record PlanScale(PlantClock clock, long endTick, int left, int width) {
    private static final DateTimeFormatter LONG = DateTimeFormatter.ofPattern("EEE d MMM", Locale.ENGLISH);
    private static final DateTimeFormatter SHORT = DateTimeFormatter.ofPattern("d", Locale.ENGLISH);
    private static final int ROOM_FOR_LONG = 88;
    private static final int ROOM_FOR_SHORT = 24;
    private static final int ROOM_FOR_A_LINE = 5;

    /**
     * The start of the plan, or a midnight on the plant's clock.
     *
     * @param x where, pixels
     * @param label what is written at it; may be empty
     * @param isMonday whether a week begins
     */
    record Day(int x, String label, boolean isMonday) {}

    int x(long tick) {
        return left + (int) Math.round(width * (tick / (double) endTick));
    }

    /** The start and every midnight after it; of many months only Mondays. */
    List<Day> days() {
        double dayWidth = width * (24.0 * Ticks.PER_HOUR) / endTick;
        List<Day> days = new ArrayList<>();
        ZonedDateTime end = clock.at(endTick);
        int free = left;
        for (ZonedDateTime day = clock.start(); day.isBefore(end); day = nextMidnight(day)) {
            boolean isMonday = day.getDayOfWeek() == DayOfWeek.MONDAY;
            boolean isLong = day == clock.start() || isMonday || dayWidth >= ROOM_FOR_LONG;
            int room = isLong ? ROOM_FOR_LONG : ROOM_FOR_SHORT;
            boolean isFree = x(day) >= free && x(day) + room <= left + width;
            boolean isNamed = isFree && (isLong || dayWidth >= ROOM_FOR_SHORT);
            String label = isNamed ? day.format(isLong ? LONG : SHORT) : "";
            free = isNamed ? x(day) + room : free;
            if (isLong || dayWidth >= ROOM_FOR_A_LINE) {
                days.add(new Day(x(day), label, isMonday));
            }
        }
        return days;
    }

    private static ZonedDateTime nextMidnight(ZonedDateTime day) {
        return day.toLocalDate().plusDays(1).atStartOfDay(day.getZone());
    }

    private int x(ZonedDateTime instant) {
        return x(ChronoUnit.MICROS.between(clock.start(), instant));
    }
}
