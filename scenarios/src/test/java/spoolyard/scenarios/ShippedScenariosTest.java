package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.choice.ChoicesFile;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.fault.Warning;
import spoolyard.scenarios.format.StarterScenario;

final class ShippedScenariosTest {
    static Stream<Path> shipped() throws IOException {
        try (Stream<Path> folders = Files.list(Path.of("."))) {
            return folders.filter(folder -> Files.exists(folder.resolve("plant.yaml"))).toList().stream();
        }
    }

    @Test
    void shipsTheReferencePlantItsVariationsAndASmallOne() throws IOException {
        assertThat(shipped().map(p -> p.getFileName().toString()))
                .contains(
                        "orrenvale",
                        "orrenvale-by-colour",
                        "orrenvale-easter",
                        "orrenvale-planned",
                        "orrenvale-three-at-night",
                        "orrenvale-two-by-twelve",
                        "two-lines");
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void readsWithoutFaultsOrSurprisingWarnings(Path folder) throws Exception {
        // The reference plant's hoppers are sized for PLA; that they are small for PETG and PA is part of the plant.
        assertThat(ScenarioReader.read(folder, List.of()).warnings())
                .allMatch(warning -> warning.kind() == Warning.Kind.DRYER_TOO_SMALL
                        || warning.kind() == Warning.Kind.LABOUR_LAW
                                && (folder.endsWith("orrenvale-two-by-twelve") || folder.endsWith("orrenvale-easter")));
    }

    /**
     * Hand: 12 h and 10 min of hand-over less a meal of 30 min are 11 h 40 min; five in the fuller week of two are 58.3 h,
     * seven in two weeks 40.8 h a week. Between shifts lie 11 h 50 min, but one hour less in the night in which the clocks
     * go forward.
     */
    @Test
    void flagsTheTwelveHourRosterAsItsCommentSays() throws Exception {
        List<String> flags = ScenarioReader.read(Path.of("orrenvale-two-by-twelve"), List.of()).warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.LABOUR_LAW)
                .map(Warning::message)
                .toList();

        assertThat(flags).hasSize(3).allMatch(flag -> flag.endsWith(" National law and agreements rule."));
        assertThat(flags.get(0)).contains("EU 2003/88/EC Art. 3", "D 10.8 h before D of 2027-03-28");
        assertThat(flags.get(1)).contains("EU 2003/88/EC Art. 8", " 11.7 h a night");
        assertThat(flags.get(2)).contains("US FLSA", "A up to 58.3 h, in 2 of 4 weeks");
    }

    /** Two rooms more, another winder, one operator more or fewer, another rule: 3 x 2 x 3 x 2. */
    @Test
    void readsAllMixesOfTheShippedChoices() throws Exception {
        List<Mix> mixes =
                ChoicesFile.read(Path.of("orrenvale/choices.yaml"), 100).mixes();

        List<Scenario> scenarios = new MixScenarios(Path.of("orrenvale"), List.of()).read(mixes);

        assertThat(scenarios).hasSize(36);
        assertThat(scenarios.stream()
                        .map(scenario -> scenario.info().contentHash())
                        .distinct())
                .hasSize(36);
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void namesTheSchemaForEditors(Path folder) throws Exception {
        String first = Files.readAllLines(folder.resolve("plant.yaml")).get(0);

        Path schema = folder.resolve(first.replaceFirst("^# yaml-language-server: \\$schema=", ""));
        assertThat(schema).isRegularFile();
    }

    @Test
    void holdsTheWholeReferencePlant() throws Exception {
        Plant plant = ScenarioReader.read(Path.of("orrenvale"), List.of()).plant();

        assertThat(plant.lines()).hasSize(8);
        assertThat(plant.lines().stream().mapToDouble(Line::nominalRateKgPerH).sum())
                .isEqualTo(218);
        assertThat(plant.book().orders()).hasSize(120).allSatisfy(order -> assertThat(order.lines())
                .isNotEmpty());
        assertThat(plant.book().orders().stream().mapToInt(o -> o.spools()).sum())
                .isEqualTo(56_280);
        assertThat(plant.shifts()).hasSize(4 * 5 * 3 + 2);
        assertThat(headsOf(plant, "D") + headsOf(plant, "E") + headsOf(plant, "N"))
                .isEqualTo(34);
    }

    private static int headsOf(Plant plant, String name) {
        Shift shift = plant.shifts().stream()
                .filter(s -> s.name().equals(name))
                .findFirst()
                .orElseThrow();
        return shift.heads().stream().mapToInt(Integer::intValue).sum();
    }

    @Test
    void changesTheScheduleInThreeLinesOfPatch() throws Exception {
        List<String> lines = Files.readAllLines(Path.of("orrenvale-three-at-night/plant.yaml"));

        assertThat(lines.stream().filter(line -> !line.startsWith("#"))).hasSizeLessThanOrEqualTo(5);
    }

    @Test
    void worksTwoByTwelveRoundTheClockFortyTwoHoursAWeek() throws Exception {
        Plant plant = ScenarioReader.read(Path.of("orrenvale-two-by-twelve"), List.of())
                .plant();

        assertThat(plant.lines()).allSatisfy(line -> assertThat(line.workingPeriods())
                .singleElement()
                .matches(period -> period.endTick() > plant.horizonTicks()));
        for (String shift : List.of("D", "N")) {
            double hours = plant.shifts().stream()
                    .filter(each -> each.name().equals(shift))
                    .mapToDouble(each -> Ticks.toHours(each.endTick() - each.startTick()))
                    .sum();
            assertThat(hours / 2 / 4).as("each of the two crews of " + shift).isBetween(41.5, 42.0);
        }
    }

    @Test
    void writesAStarterThatIsTheSmallPlant(@TempDir Path parent) throws Exception {
        Path folder = parent.resolve("a/b");

        List<Path> written = StarterScenario.write(folder);

        assertThat(written).hasSize(4).allSatisfy(file -> assertThat(file).isRegularFile());
        assertThat(ScenarioReader.read(folder, List.of()).plant())
                .isEqualTo(ScenarioReader.read(Path.of("two-lines"), List.of()).plant());
        assertThat(withoutFirstLine(folder)).isEqualTo(withoutFirstLine(Path.of("two-lines")));
    }

    private static List<String> withoutFirstLine(Path folder) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("plant.yaml"));
        return lines.subList(1, lines.size());
    }

    @Test
    void writesAStarterIntoAnEmptyFolder(@TempDir Path folder) throws Exception {
        StarterScenario.write(folder);

        assertThat(ScenarioReader.read(folder, List.of()).warnings()).isEmpty();
    }

    @ParameterizedTest
    @ValueSource(strings = {"full", "full/note.txt", "full/note.txt/deeper"})
    void refusesToWriteAStarterOverAnything(String target, @TempDir Path parent) throws IOException {
        Files.createDirectory(parent.resolve("full"));
        Files.writeString(parent.resolve("full/note.txt"), "mine");

        Fault fault = catchThrowableOfType(ScenarioException.class, () -> StarterScenario.write(parent.resolve(target)))
                .faults()
                .get(0);

        assertThat(fault.kind()).isEqualTo(FaultKind.NOT_WRITABLE);
        assertThat(fault.text())
                .startsWith(parent.resolve(target) + ": folder = ")
                .endsWith("\n  Mend: name another folder; nothing was changed.");
        assertThat(parent.resolve("full")).isDirectoryContaining("glob:**note.txt");
        try (Stream<Path> inside = Files.list(parent.resolve("full"))) {
            assertThat(inside).hasSize(1);
        }
    }
}
