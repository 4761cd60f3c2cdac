package spoolyard.scenarios.labour;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.scenarios.calendar.CrewWork;
import spoolyard.scenarios.calendar.CrewWork.Stint;
import spoolyard.scenarios.fault.Warning;

/**
 * Flags what in a roster somebody should have checked against the law. It certifies nothing: a roster without a flag may
 * be forbidden, one with a flag may be allowed by national law or an agreement.
 *
 * <p>Sources: Directive 2003/88/EC, Articles 3 (daily rest), 6 and 16 (48 h, reference period up to four months) and 8
 * (night work), in the summary of EU-OSHA; Fair Labor Standards Act, 29 USC 207 (overtime above 40 h in a week of 168 h),
 * from memory.
 */
public final class LabourLaw {
    private static final String CLOSING = " National law and agreements rule.";
    private static final double LEAST_REST_H = 11;
    private static final double MOST_AVERAGE_H = 48;
    private static final double MOST_NIGHT_H = 8;
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
     * @return one for each rule that is touched: rest, average week, night work, overtime
     */
    public static List<Warning> flags(List<CrewWork> roster) {
        List<Warning> flags = new ArrayList<>();
        flag(roster, "rest under 11 h a day, EU 2003/88/EC Art. 3", LabourLaw::shortRest, flags);
        flag(roster, "over 48 h a week on average, EU 2003/88/EC Art. 6", LabourLaw::longAverage, flags);
        flag(roster, "night work over 8 h in 24 h on average, EU 2003/88/EC Art. 8", LabourLaw::longNights, flags);
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

    /** Too little time between two shifts, or a shift so long that 24 hours have no room for the rest. */
    private static Optional<String> shortRest(CrewWork work) {
        Stream<String> gaps = IntStream.range(1, work.stints().size())
                .filter(i -> restH(work, i) < LEAST_REST_H - SLACK_H)
                .mapToObj(i -> text(
                        "%.1f h before %s", restH(work, i), work.stints().get(i).label()));
        Stream<String> lengths = work.stints().stream()
                .filter(stint -> stint.lengthH() > 24 - LEAST_REST_H + SLACK_H)
                .map(stint -> text("%.1f h after %s", 24 - stint.lengthH(), stint.label()));
        return Stream.concat(gaps, lengths).findFirst();
    }

    private static double restH(CrewWork work, int i) {
        Stint earlier = work.stints().get(i - 1);
        return Duration.between(earlier.end(), work.stints().get(i).start()).toMillis() / 3.6e6;
    }

    private static Optional<String> longAverage(CrewWork work) {
        double[] weeks = weeksH(work);
        int span = Math.min(REFERENCE_WEEKS, weeks.length);
        double worst = IntStream.rangeClosed(0, weeks.length - span)
                .mapToDouble(from -> IntStream.range(from, from + span)
                        .mapToDouble(week -> weeks[week])
                        .average()
                        .orElse(0))
                .max()
                .orElse(0);
        return found(worst > MOST_AVERAGE_H + SLACK_H, "%.1f h over %d weeks", worst, span);
    }

    private static Optional<String> longNights(CrewWork work) {
        double average = work.stints().stream()
                .filter(Stint::isNight)
                .mapToDouble(Stint::atWorkH)
                .average()
                .orElse(0);
        return found(average > MOST_NIGHT_H + SLACK_H, "%.1f h a night", average);
    }

    private static Optional<String> overtime(CrewWork work) {
        double[] weeks = weeksH(work);
        double most = IntStream.range(0, weeks.length)
                .mapToDouble(week -> weeks[week])
                .max()
                .orElse(0);
        long over = IntStream.range(0, weeks.length)
                .filter(week -> weeks[week] > OVERTIME_H + SLACK_H)
                .count();
        return found(over > 0, "up to %.1f h, in %d of %d weeks", most, over, weeks.length);
    }

    private static double[] weeksH(CrewWork work) {
        double[] weeks = new double[work.weeks()];
        work.stints().forEach(stint -> weeks[stint.week()] += stint.atWorkH());
        return weeks;
    }

    private static Optional<String> found(boolean isTouched, String form, Object... values) {
        return isTouched ? Optional.of(text(form, values)) : Optional.empty();
    }

    private static String text(String form, Object... values) {
        return String.format(Locale.ROOT, form, values);
    }
}
