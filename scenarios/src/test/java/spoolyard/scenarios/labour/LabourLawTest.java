package spoolyard.scenarios.labour;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/**
 * Rosters worked by hand against Directive 2003/88/EC, Articles 2(4), 3, 6, 8 and 16 (summary of EU-OSHA, and memory), and 29
 * USC 207 (from memory). Normal hours of night workers: hours of the pattern over days less one day of weekly rest in seven,
 * so hours of a week over six.
 */
final class LabourLawTest {
    private static final String PLANT =
            """
            spoolyard: 1
            name: A packing hall
            time: {zone: Europe/Berlin, start: 2027-01-04 00:00, length: 2 weeks}
            inbound: {hall 2: {every: 60 s, spool: 1 kg}}
            finishing: {packing: {kind: packing, places: 1, crew: packer, cycle: [{takes: 48 s}], rack: unlimited}}
            crew: {roles: {packer: {}}}
            shifts:
            """;

    @TempDir
    private Path folder;

    private List<String> flags(String shifts) throws Exception {
        Files.writeString(folder.resolve("plant.yaml"), PLANT + shifts.indent(2));
        Scenario scenario = ScenarioReader.read(folder, List.of());
        return scenario.warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.LABOUR_LAW)
                .map(Warning::message)
                .toList();
    }

    private static String week(String name, String start, String end, String days) {
        return "  " + name + ": {days: [" + days + "], start: " + start + ", end: " + end + ", crew: {packer: 1}}\n";
    }

    /** Five times 8 h are 40 h, not above; 16 h lie between two shifts. */
    @Test
    void flagsNothingInFiveDaysOfEightHours() throws Exception {
        assertThat(flags("pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri")))
                .isEmpty();
    }

    /** Six times 8 h are 48 h: overtime, but not above 48 h on average. */
    @Test
    void flagsTheSixthDayAsOvertimeOnly() throws Exception {
        assertThat(flags("pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri, Sat")))
                .containsExactly("labour law, over 40 h in a week, overtime pay by US FLSA:"
                        + " people of shift D up to 48.0 h, in 2 of 2 weeks. National law and agreements rule.");
    }

    /** Seven times 8 h are 56 h. */
    @Test
    void flagsSevenDaysAWeekAboveTheAverageOf48Hours() throws Exception {
        assertThat(flags("pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri, Sat, Sun")))
                .hasSize(2)
                .first()
                .isEqualTo("labour law, over 48 h a week on average, EU 2003/88/EC Art. 6:"
                        + " people of shift D 56.0 h over 2 weeks. National law and agreements rule.");
    }

    /** A meal break of 30 min is no time at work, ten minutes are: six shifts of 7.5 h are 45 h. */
    @Test
    void countsShortBreaksAndNoMeals() throws Exception {
        String breaks = ", breaks: {tea: {after: 1 h, length: 10 min}, meal: {after: 4 h, length: 30 min}}}\n";
        String six = week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri, Sat").replace("}}\n", "}" + breaks);

        assertThat(flags("pattern:\n" + six)).hasSize(1).first().asString().contains("up to 45.0 h");
    }

    /**
     * 22:00 to 07:00 is nine hours, seven of them in night time: 36 h on six days are 6 h a day, but each night has more than
     * eight. 15:00 to 01:00 has two in night time and is no night work.
     */
    @Test
    void flagsNightsOfNineHoursButNotLateEvenings() throws Exception {
        assertThat(flags("pattern:\n" + week("N", "22:00", "07:00", "Mon, Tue, Wed, Thu")))
                .containsExactly("labour law, nights over 8 h, not for work of special hazards or heavy strain,"
                        + " EU 2003/88/EC Art. 8(b):"
                        + " people of shift N up to 9.0 h in a night shift. National law and agreements rule.");
        assertThat(flags("pattern:\n" + week("E", "15:00", "01:00", "Mon, Tue, Wed, Thu")))
                .isEmpty();
    }

    /** A shift of 14 h leaves ten hours of the day. */
    @Test
    void flagsAShiftThatLeavesNoRoomForRest() throws Exception {
        assertThat(flags("pattern:\n" + week("D", "06:00", "20:00", "Mon, Wed")))
                .containsExactly("labour law, rest under 11 h in 24 h, EU 2003/88/EC Art. 3:"
                        + " people of shift D 10.0 h from D of 2027-01-04 on. National law and agreements rule.");
    }

    /** From 22:00 on Tuesday to 06:00 on Wednesday are eight hours. */
    @Test
    void findsAQuickReturnInARota() throws Exception {
        String pattern = "pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri")
                + week("E", "14:00", "22:00", "Mon, Tue, Wed, Thu, Fri");

        assertThat(flags(
                        pattern + "crews: {red: [D, E, D, off, off, off, off], blue: [E, D, E, off, off, off, off]}\n"))
                .containsExactly("labour law, rest under 11 h in 24 h, EU 2003/88/EC Art. 3:"
                        + " crew red 8.0 h from E of 2027-01-05 on; crew blue 8.0 h from E of 2027-01-04 on."
                        + " National law and agreements rule.");
    }

    /** Six days on and two off, eight hours each: 24 days are three turns with 18 shifts, 144 h in 24/7 weeks are 42 h. */
    @Test
    void averagesARotaOverWholeTurns() throws Exception {
        String every = "Mon, Tue, Wed, Thu, Fri, Sat, Sun";
        String pattern = "pattern:\n" + week("D", "06:00", "14:00", every);
        String crews = "crews: {red: [D, D, D, D, D, D, off, off], blue: [off, off, off, off, off, off, D, D]}\n";

        List<String> flags = flags(pattern + crews);

        assertThat(flags)
                .hasSize(1)
                .first()
                .asString()
                .contains("crew red up to 48.0 h, in ")
                .endsWith("8 weeks." + " National law and agreements rule.");
    }

    /** Red's sixth shift of the week is Saturday's overtime; without a name nobody can be told to have worked it. */
    @Test
    void countsOvertimeForTheCrewThatWorksIt() throws Exception {
        String pattern = "pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri");
        String crews = "crews: {red: [D, D, D, D, D, off, off]}\nextra:\n  more: {shift: D, dates: [2027-01-09]";

        assertThat(flags(pattern + crews + ", worked_by: red}\n"))
                .containsExactly("labour law, over 40 h in a week, overtime pay by US FLSA:"
                        + " crew red up to 48.0 h, in 1 of 2 weeks. National law and agreements rule.");
        assertThat(flags(pattern + crews + "}\n")).isEmpty();
    }

    /** On holidays nobody works: four shifts of 10 h and none in the second week. */
    @Test
    void leavesHolidaysAndCancelledShiftsOut() throws Exception {
        String pattern = "pattern:\n" + week("D", "06:00", "16:00", "Mon, Tue, Wed, Thu, Fri")
                + "holidays: [2027-01-08]\n"
                + "changes: {off: {shift: D, dates: [2027-01-15], cancelled: yes}}\n";

        assertThat(flags(pattern)).isEmpty();
    }

    private static final String EVERY = "Mon, Tue, Wed, Thu, Fri, Sat, Sun";

    private static String shifts(String... shifts) {
        return "pattern:\n" + String.join("", shifts);
    }

    private static String crews(String red, String blue) {
        return "crews: {red: [" + red + "], blue: [" + blue + "]}\n";
    }

    private static String normalHours(String who) {
        return "labour law, normal hours of night workers over 8 h in 24 h on average, a week taken as six days,"
                + " EU 2003/88/EC Art. 8(a): " + who + ". National law and agreements rule.";
    }

    /**
     * Two by twelve, two days, two nights, four off: in eight weeks seven turns of 4 x 12 h = 336 h, 42 h a week, 7 h on each of
     * six days, so the average holds although each night has twelve. Article 8(a) is not touched, 8(b) is. Seven days of a turn
     * of eight hold three or four shifts: 28 shifts in eight weeks are four weeks of four, 48 h, and four of three.
     */
    @Test
    void averagesAlternatingNightsOfTwelveHoursOverTheWholeRoster() throws Exception {
        String pattern = shifts(week("D", "06:00", "18:00", EVERY), week("N", "18:00", "06:00", EVERY));

        List<String> flags = flags(pattern + crews("D, D, N, N, off, off, off, off", "off, off, off, off, D, D, N, N"));

        assertThat(flags).hasSize(2);
        assertThat(flags.get(0)).contains("Art. 8(b): crew red up to 12.0 h in a night shift; crew blue up to 12.0 h");
        assertThat(flags.get(1)).contains("FLSA: crew red up to 48.0 h, in 4 of 8 weeks; crew blue up to 48.0 h");
    }

    /** Two by twelve, five in a week: one of days and one of nights, 60 h each, so 10 h on each of six days. */
    @Test
    void flagsAlternatingWeeksOfFiveNightsOfTwelveHours() throws Exception {
        String pattern = shifts(week("D", "06:00", "18:00", EVERY), week("N", "18:00", "06:00", EVERY));
        String days = "D, D, D, D, D, off, off";
        String nights = "N, N, N, N, N, off, off";

        List<String> flags = flags(pattern + crews(days + ", " + nights, nights + ", " + days));

        assertThat(flags)
                .hasSize(4)
                .contains(normalHours("crew red 10.0 h over 2 weeks; crew blue 10.0 h over 2 weeks"));
        assertThat(flags.get(0)).contains("Art. 6: crew red 60.0 h over 2 weeks; crew blue 60.0 h over 2 weeks.");
    }

    /**
     * Three shifts, a week of each, six days: 48 h over six days are eight, not above. With a hand-over of a quarter of an hour
     * 49.5 h are 8.25.
     */
    @Test
    void flagsAThreeShiftRotationWhenTheHandOverComesOnTop() throws Exception {
        String six = "Mon, Tue, Wed, Thu, Fri, Sat";
        String pattern = shifts(
                week("D", "06:00", "14:00", six), week("E", "14:00", "22:00", six), week("N", "22:00", "06:00", six));
        String early = "D, D, D, D, D, D, off";
        String late = "E, E, E, E, E, E, off";
        String night = "N, N, N, N, N, N, off";
        String crews = "crews: {red: [" + early + ", " + late + ", " + night + "]}\n";
        String handOver = "every_shift: {hand_over: {length: 15 min, overlap: yes}}\n";

        assertThat(flags(pattern + crews)).hasSize(1).first().asString().contains("FLSA", "48.0 h, in 3 of 3 weeks");
        List<String> flags = flags(handOver + pattern + crews);
        assertThat(flags).hasSize(4).contains(normalHours("crew red 8.3 h over 3 weeks"));
        assertThat(flags.get(0)).contains("Art. 6: crew red 49.5 h over 3 weeks.");
        assertThat(flags.get(2)).contains("Art. 8(b): crew red up to 8.3 h in a night shift.");
        assertThat(flags.get(3)).contains("FLSA: crew red up to 49.5 h, in 3 of 3 weeks.");
    }

    /** Long days count for night workers too: 60 h of days, 40 h of nights, 50 h a week, 8.33 h a day; no night has over eight. */
    @Test
    void countsTheDayShiftsOfANightWorker() throws Exception {
        String pattern = shifts(week("D", "06:00", "16:00", EVERY), week("N", "22:00", "06:00", EVERY));
        String days = "D, D, D, D, D, D, off";
        String nights = "N, N, N, N, N, off, off";

        List<String> flags = flags(pattern + crews(days + ", " + nights, nights + ", " + days));

        assertThat(flags).hasSize(3).contains(normalHours("crew red 8.3 h over 2 weeks; crew blue 8.3 h over 2 weeks"));
        assertThat(flags).noneMatch(flag -> flag.contains("Art. 8(b)"));
        String daysOnly = "crews: {red: [" + days + "]}\n";
        assertThat(flags(shifts(week("D", "06:00", "16:00", EVERY)) + daysOnly))
                .noneMatch(flag -> flag.contains("Art. 8"));
    }

    /** Permanent nights: six of 8 h are 48 h, 8.0 a day, not above; seven are 56 h, 9.33. */
    @Test
    void flagsPermanentNightsFromTheSeventhOn() throws Exception {
        assertThat(flags(shifts(week("N", "22:00", "06:00", "Mon, Tue, Wed, Thu, Fri, Sat"))))
                .hasSize(1)
                .first()
                .asString()
                .contains("FLSA");
        assertThat(flags(shifts(week("N", "22:00", "06:00", EVERY))))
                .hasSize(3)
                .contains(normalHours("people of shift N 9.3 h over 2 weeks"));
    }

    /**
     * Six nights of 8 h are the normal hours, 48 h; a seventh as overtime makes 52 h a week over two weeks for Article 6, which
     * counts overtime, and leaves the normal hours of Article 8(a) at eight.
     */
    @Test
    void leavesOvertimeOutOfTheNormalHours() throws Exception {
        String pattern = shifts(week("N", "22:00", "06:00", "Mon, Tue, Wed, Thu, Fri, Sat"));
        String red = "crews: {red: [N, N, N, N, N, N, off]}\n";
        String extra = "extra:\n  more: {shift: N, dates: [2027-01-10], worked_by: red}\n";

        List<String> flags = flags(pattern + red + extra);

        assertThat(flags).hasSize(2);
        assertThat(flags.get(0)).contains("Art. 6: crew red 52.0 h over 2 weeks.");
        assertThat(flags.get(1)).contains("FLSA: crew red up to 56.0 h, in 2 of 2 weeks.");
    }

    /** One night as overtime makes no night worker of a crew of days: it is not the normal course of their work. */
    @Test
    void takesNobodyForANightWorkerWhoHasASingleExtraNight() throws Exception {
        String pattern =
                shifts(week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri"), week("N", "20:00", "06:00", "Mon, Tue"));
        String crews = crews("D, D, D, D, off, off, off", "N, N, off, off, off, off, off");
        String extra = "extra:\n  more: {shift: N, dates: [2027-01-08], worked_by: red}\n";

        assertThat(flags(pattern + crews + extra))
                .filteredOn(flag -> flag.contains("Art. 8"))
                .hasSize(1)
                .first()
                .asString()
                .contains("crew blue up to 10.0 h")
                .doesNotContain("red");
    }

    /**
     * 06:00 to 10:00 and 12:00 to 16:00 on one day, next at 06:00: two hours lie between the shifts, but fourteen are free in
     * the 24 h from each. With 20:00 to 22:00 besides there are eight, from 22:00 to 06:00.
     */
    @Test
    void looksForTheLongestRestOfTheDay() throws Exception {
        String pattern = shifts(week("D", "06:00", "10:00", "Mon, Tue, Wed"));
        String red = "crews: {red: [D, D, D, off, off, off, off]}\n";
        String split = "extra:\n  second: {shift: D, start: 12:00, end: 16:00, dates: [2027-01-04], worked_by: red}\n";
        String third = "  third: {shift: D, start: 20:00, end: 22:00, dates: [2027-01-04], worked_by: red}\n";

        assertThat(flags(pattern + red + split)).isEmpty();
        assertThat(flags(pattern + red + split + third))
                .containsExactly("labour law, rest under 11 h in 24 h, EU 2003/88/EC Art. 3:"
                        + " crew red 8.0 h from D of 2027-01-04 on. National law and agreements rule.");
    }

    /**
     * Seventeen weeks of 12 h x 5 in a rota of 34: 60 h a week over the first seventeen, 24 h over the others. The average over
     * all is 42 h; the reference period of four months shows 60.
     */
    @Test
    void takesTheWorstReferencePeriod() throws Exception {
        String pattern = shifts(week("D", "06:00", "18:00", EVERY));
        String full = "D, D, D, D, D, off, off, ".repeat(17);
        String thin = "D, D, off, off, off, off, off, ".repeat(17);
        String red = "crews: {red: [" + full + thin.substring(0, thin.length() - 2) + "]}\n";

        assertThat(flags(pattern + red))
                .hasSize(2)
                .first()
                .asString()
                .contains("Art. 6: crew red 60.0 h over 17 weeks.");
    }
}
