package spoolyard.scenarios.labour;

import java.time.Duration;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.stream.IntStream;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.CrewWork.Stint;
import spoolyard.scenarios.fault.Warning;

/**
 * Flags what in a roster somebody should have checked against the law. It certifies nothing: a roster without a flag may
 * be forbidden, one with a flag may be allowed by national law or an agreement.
 *
 * <p>Sources: Directive 2003/88/EC, in the summary of EU-OSHA and from memory:
 *
 * <ul>
 *   <li>Article 3, eleven hours of rest without a break in 24 h; here in the 24 h from the start of each shift.
 *   <li>Articles 6 and 16(b), 48 h a week on average with overtime, over up to four months; here 17 weeks.
 *   <li>Article 8(a), normal hours of night workers: eight in 24 h on average. By Article 16(c) the days of weekly rest of
 *       Article 5 are not counted: a week has six days. The period is national law's; here 17 weeks, as for Article 6. Normal
 *       hours are those of the pattern, without extra shifts.
 *   <li>Article 8(b), night workers whose work is of special hazards or heavy strain: eight hours in any 24 h with night
 *       work; here a night shift of more than eight.
 *   <li>Article 2(4), night workers: at least three hours of night time as a normal course; here crews whose pattern has such
 *       a shift.
 * </ul>
 *
 * <p>Fair Labor Standards Act, 29 USC 207, overtime above 40 h in a week of 168 h; 29 CFR 778.105, the week begins when the
 * employer says, from memory. Here it begins with the first shift of a Monday: a shift counts where it starts.
 */
public final class LabourLaw {
    private static final String CLOSING = " National law and agreements rule.";
    private static final double LEAST_REST_H = 11;
    private static final double MOST_AVERAGE_H = 48;
    private static final double MOST_NIGHT_H = 8;
    private static final double DAYS_WITHOUT_WEEKLY_REST = 6;
    private static final double OVERTIME_H = 40;
    private static final int REFERENCE_WEEKS = 17;
    private static final int MOST_NAMED = 4;

    /** Hours below this are the rounding of the clock. */
    private static final double SLACK_H = 1e-6;

    private LabourLaw() {}

    /** Finds what a rule has against the work of some people. */
    private interface Rule {
        Optional<String> finding(CrewWork work);
    }

    /**
     * The flags of a roster.
     *
     * @param roster work of each crew
     * @return one for each rule that is touched: rest, average week, hours of night workers, long nights, overtime
     */
    public static List<Warning> flags(List<CrewWork> roster) {
        List<Warning> flags = new ArrayList<>();
        flag(roster, "rest under 11 h in 24 h, EU 2003/88/EC Art. 3", LabourLaw::shortRest, flags);
        flag(roster, "over 48 h a week on average, EU 2003/88/EC Art. 6", LabourLaw::longAverage, flags);
        flag(
                roster,
                "normal hours of night workers over 8 h in 24 h on average, a week taken as six days,"
                        + " EU 2003/88/EC Art. 8(a)",
                LabourLaw::longNormalHours,
                flags);
        flag(
                roster,
                "nights over 8 h, not for work of special hazards or heavy strain, EU 2003/88/EC Art. 8(b)",
                LabourLaw::longNights,
                flags);
        flag(roster, "over 40 h in a week, overtime pay by US FLSA", LabourLaw::overtime, flags);
        return flags;
    }

    private static void flag(List<CrewWork> roster, String rule, Rule finder, List<Warning> flags) {
        List<CrewWork> touched =
                roster.stream().filter(work -> finder.finding(work).isPresent()).toList();
        if (touched.isEmpty()) {
            return;
        }
        List<String> parts = touched.stream()
                .limit(MOST_NAMED)
                .map(work -> who(work) + " " + finder.finding(work).orElseThrow())
                .toList();
        String more = touched.size() > MOST_NAMED ? " and " + (touched.size() - MOST_NAMED) + " more" : "";
        String message = "labour law, " + rule + ": " + String.join("; ", parts) + more + "." + CLOSING;
        flags.add(new Warning(Warning.Kind.LABOUR_LAW, touched.get(0).origin(), message));
    }

    private static String who(CrewWork work) {
        return (work.isCrew() ? "crew " : "people of shift ") + work.name();
    }

    /** The longest rest in the 24 hours from the start of a shift is too short. */
    private static Optional<String> shortRest(CrewWork work) {
        return IntStream.range(0, work.stints().size())
                .filter(i -> restH(work.stints(), i) < LEAST_REST_H - SLACK_H)
                .mapToObj(i -> text(
                        "%.1f h from %s on",
                        restH(work.stints(), i), work.stints().get(i).label()))
                .findFirst();
    }

    private static double restH(List<Stint> stints, int first) {
        ZonedDateTime dayEnds = stints.get(first).start().plusHours(24);
        ZonedDateTime free = stints.get(first).end();
        double longest = 0;
        for (int i = first + 1; i < stints.size() && stints.get(i).start().isBefore(dayEnds); i++) {
            longest = Math.max(longest, hours(free, stints.get(i).start()));
            free = stints.get(i).end().isAfter(free) ? stints.get(i).end() : free;
        }
        return Math.max(longest, hours(free, dayEnds));
    }

    private static double hours(ZonedDateTime from, ZonedDateTime to) {
        return Math.max(0, Duration.between(from, to).toMillis() / 3.6e6);
    }

    private static Optional<String> longAverage(CrewWork work) {
        Average worst = worstAverage(weeksH(work, stint -> true));
        return found(worst.hours() > MOST_AVERAGE_H + SLACK_H, "%.1f h over %d weeks", worst.hours(), worst.weeks());
    }

    private static Optional<String> longNormalHours(CrewWork work) {
        Average worst = worstAverage(weeksH(work, stint -> !stint.isExtra()));
        double dayH = worst.hours() / DAYS_WITHOUT_WEEKLY_REST;
        return found(
                isOfNightWorkers(work) && dayH > MOST_NIGHT_H + SLACK_H, "%.1f h over %d weeks", dayH, worst.weeks());
    }

    private static boolean isOfNightWorkers(CrewWork work) {
        return work.stints().stream().anyMatch(stint -> !stint.isExtra() && stint.isNight());
    }

    private static Optional<String> longNights(CrewWork work) {
        double longest = work.stints().stream()
                .filter(Stint::isNight)
                .mapToDouble(Stint::atWorkH)
                .max()
                .orElse(0);
        return found(
                isOfNightWorkers(work) && longest > MOST_NIGHT_H + SLACK_H, "up to %.1f h in a night shift", longest);
    }

    /**
     * The largest average of weeks that follow one another.
     *
     * @param hours a week
     * @param weeks over which it is taken: the reference period, or all weeks if they are fewer
     */
    private record Average(double hours, int weeks) {}

    private static Average worstAverage(double[] weeksH) {
        int span = Math.min(REFERENCE_WEEKS, weeksH.length);
        double worst = IntStream.rangeClosed(0, weeksH.length - span)
                .mapToDouble(from ->
                        Arrays.stream(weeksH, from, from + span).average().orElse(0))
                .max()
                .orElse(0);
        return new Average(worst, span);
    }

    private static Optional<String> overtime(CrewWork work) {
        double[] weeks = weeksH(work, stint -> true);
        double most = Arrays.stream(weeks).max().orElse(0);
        long over = Arrays.stream(weeks)
                .filter(hours -> hours > OVERTIME_H + SLACK_H)
                .count();
        return found(over > 0, "up to %.1f h, in %d of %d weeks", most, over, weeks.length);
    }

    private static double[] weeksH(CrewWork work, Predicate<Stint> counts) {
        double[] weeks = new double[work.weeks()];
        work.stints().stream().filter(counts).forEach(stint -> weeks[stint.week()] += stint.atWorkH());
        return weeks;
    }

    private static Optional<String> found(boolean isTouched, String form, Object... values) {
        return isTouched ? Optional.of(text(form, values)) : Optional.empty();
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
