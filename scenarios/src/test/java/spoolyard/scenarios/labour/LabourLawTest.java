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
 * Rosters worked by hand against Directive 2003/88/EC, Articles 3, 6 and 8 (summary of EU-OSHA), and 29 USC 207 (from
 * memory).
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

    /** 22:00 to 07:00 is nine hours, seven of them in night time; 15:00 to 01:00 has two there and is no night work. */
    @Test
    void flagsNightsOfNineHoursButNotLateEvenings() throws Exception {
        assertThat(flags("pattern:\n" + week("N", "22:00", "07:00", "Mon, Tue, Wed, Thu")))
                .containsExactly("labour law, night work over 8 h in 24 h on average, EU 2003/88/EC Art. 8:"
                        + " people of shift N 9.0 h a night. National law and agreements rule.");
        assertThat(flags("pattern:\n" + week("E", "15:00", "01:00", "Mon, Tue, Wed, Thu")))
                .isEmpty();
    }

    /** A shift of 14 h leaves ten hours of the day. */
    @Test
    void flagsAShiftThatLeavesNoRoomForRest() throws Exception {
        assertThat(flags("pattern:\n" + week("D", "06:00", "20:00", "Mon, Wed")))
                .containsExactly("labour law, rest under 11 h a day, EU 2003/88/EC Art. 3:"
                        + " people of shift D 10.0 h after D of 2027-01-04. National law and agreements rule.");
    }

    /** From 22:00 on Tuesday to 06:00 on Wednesday are eight hours. */
    @Test
    void findsAQuickReturnInARota() throws Exception {
        String pattern = "pattern:\n" + week("D", "06:00", "14:00", "Mon, Tue, Wed, Thu, Fri")
                + week("E", "14:00", "22:00", "Mon, Tue, Wed, Thu, Fri");

        assertThat(flags(
                        pattern + "crews: {red: [D, E, D, off, off, off, off], blue: [E, D, E, off, off, off, off]}\n"))
                .containsExactly("labour law, rest under 11 h a day, EU 2003/88/EC Art. 3:"
                        + " crew red 8.0 h before D of 2027-01-06; crew blue 8.0 h before D of 2027-01-05."
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
}
