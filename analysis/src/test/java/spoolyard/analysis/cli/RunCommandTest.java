package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.report.TextReport;

final class RunCommandTest {
    private static final String SCENARIO =
            Path.of("..", "scenarios", "orrenvale").toString();
    private static final String SHORT = "--set=/time/length=3 days";

    @TempDir
    private Path root;

    @Test
    void printsTheReportAndWritesTheResults() throws IOException {
        Path results = root.resolve("results");

        Called called = Called.with("run", SCENARIO, SHORT, "--replications=3", "--out=" + results);

        assertThat(called.code()).isZero();
        assertThat(called.out())
                .startsWith("Orrenvale Filament Works, 2027-03-01 06:00 to 2027-03-04 06:00\n3 replications, seed 1;")
                .contains("Good spools", "per shift", "OEE", "Bottleneck", "docs/cautions.md")
                .endsWith("Results in " + results + "\n");
        assertThat(called.out().lines()).hasSizeLessThanOrEqualTo(TextReport.MOST_LINES + 1);
        assertThat(names(results)).contains("summary.json", "shifts.csv", "spools-per-shift.png");
    }

    @Test
    void givesTheSameFilesForAnyNumberOfThreads() throws IOException {
        Called.with("run", SCENARIO, SHORT, "--replications=3", "--threads=1", "--out=" + root.resolve("one"));
        Called.with("run", SCENARIO, SHORT, "--replications=3", "--threads=3", "--out=" + root.resolve("many"));

        for (String name : names(root.resolve("one"))) {
            assertThat(root.resolve("many").resolve(name))
                    .hasSameBinaryContentAs(root.resolve("one").resolve(name));
        }
        assertThat(names(root.resolve("many"))).isEqualTo(names(root.resolve("one")));
    }

    @Test
    void givesOtherNumbersForAnotherSeed() throws IOException {
        Called.with("run", SCENARIO, SHORT, "--replications=2", "--no-charts", "--out=" + root.resolve("one"));
        Called.with(
                "run", SCENARIO, SHORT, "--replications=2", "--no-charts", "--seed=2", "--out=" + root.resolve("two"));

        assertThat(Files.readString(root.resolve("two/lines.csv")))
                .isNotEqualTo(Files.readString(root.resolve("one/lines.csv")));
    }

    @Test
    void printsOnlyTheSummaryWithJson() throws IOException {
        Path results = root.resolve("results");

        Called called = Called.with("run", SCENARIO, SHORT, "--replications=2", "--json", "--out=" + results);

        JsonNode printed = new ObjectMapper().readTree(called.out());
        assertThat(printed.at("/run/replications").asInt()).isEqualTo(2);
        assertThat(printed.at("/scenario/settings/0").asText()).isEqualTo("/time/length=3 days");
        assertThat(called.out()).isEqualTo(Files.readString(results.resolve("summary.json")));
    }

    @Test
    void printsNothingWhenQuiet() {
        Called called =
                Called.with("run", SCENARIO, SHORT, "--replications=1", "--quiet", "--out=" + root.resolve("results"));

        assertThat(called).isEqualTo(new Called(0, "", ""));
    }

    @Test
    void drawsNothingWithoutCharts() throws IOException {
        Called.with("run", SCENARIO, SHORT, "--replications=1", "--no-charts", "--out=" + root.resolve("results"));

        assertThat(names(root.resolve("results"))).noneMatch(name -> name.endsWith(".png"));
    }

    @Test
    void logsTheEventsOfTheFirstReplication() throws IOException {
        Path log = root.resolve("events.csv");

        Called called = Called.with(
                "run", SCENARIO, SHORT, "--replications=2", "--out=" + root.resolve("results"), "--log=" + log);

        assertThat(called.code()).isZero();
        List<String> lines = Files.readAllLines(log);
        assertThat(lines).hasSizeGreaterThan(1000);
        assertThat(lines.get(0)).isEqualTo("time_local,elapsed_s,station,event,detail");
        assertThat(lines.get(1)).startsWith("2027-03-01 06:00:00.000,0,");
        assertThat(lines.stream().skip(1).map(line -> line.substring(0, 23))).isSorted();
    }

    @Test
    void showsABarOnATerminalAndTakesItAwayAgain() {
        Called called = Called.with(
                Simulator.REAL, true, "run", SCENARIO, SHORT, "--replications=2", "--out=" + root.resolve("results"));

        assertThat(called.err()).contains("1 of 2 replications");
        assertThat(called.err().substring(called.err().lastIndexOf("1 of 2 replications")))
                .matches("(?s)1 of 2 replications\r +\r");
    }

    @ParameterizedTest
    @CsvSource({
        "--replications=0, '--replications = 0. Must be a whole number from 1 to 1000000.'",
        "--replications=-3, '--replications = -3. Must be a whole number from 1 to 1000000.'",
        "--threads=0, '--threads = 0. Must be a whole number from 1 to 1024.'"
    })
    void refusesNumbersOutOfRange(String option, String message) {
        Called called = Called.with("run", SCENARIO, option, "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).isEqualTo(message + "\n  Mend: give such a number.\n");
        assertThat(root.resolve("results")).doesNotExist();
    }

    @Test
    void tellsAllFaultsOfAScenarioAndWritesNothing() {
        Called called = Called.with(
                "run",
                SCENARIO,
                "--set=/lines/L2/rate=18 m",
                "--set=/lines/L3/strnds=2",
                "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.out()).isEmpty();
        assertThat(called.err())
                .contains("--set: /lines/L2/rate = 18 m.", "strnds", "strands", "  Mend: ")
                .endsWith(" faults. Nothing was run or written.\n");
        assertThat(root.resolve("results")).doesNotExist();
    }

    @Test
    void refusesAFolderThatIsNotOursBeforeItRuns() throws IOException {
        Path folder = Files.createDirectory(root.resolve("thesis"));
        Files.writeString(folder.resolve("chapter1.txt"), "");

        Called called = Called.with("run", SCENARIO, SHORT, "--out=" + folder);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.out()).isEmpty();
        assertThat(called.err()).contains("Holds what no run wrote: chapter1.txt.");
    }

    @Test
    void endsWithOneWhenTheProgramIsAtFaultAndSaysHowToReportIt() {
        Simulator broken = (plant, seed, log) -> replication -> {
            throw new IllegalStateException("line L3 at 3600 s: negative level");
        };

        Called called = Called.with(broken, false, "run", SCENARIO, SHORT, "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(1);
        assertThat(called.err())
                .contains("Internal failure: java.lang.IllegalStateException: line L3 at 3600 s: negative level.")
                .contains("  Mend: add --debug to the same command and report what it prints")
                .doesNotContain("\tat ");
        assertThat(root.resolve("results")).doesNotExist();
    }

    @Test
    void printsAStackTraceOnlyWhenDebugging() {
        Simulator broken = (plant, seed, log) -> replication -> {
            throw new IllegalStateException("broken");
        };

        Called called =
                Called.with(broken, false, "run", SCENARIO, SHORT, "--debug", "--out=" + root.resolve("results"));

        assertThat(called.err()).contains("\tat spoolyard.analysis");
    }

    @Test
    void endsWithTwoWhenTheDiskIsFull() {
        Simulator full = (plant, seed, log) -> replication -> {
            throw new UncheckedIOException(new FileSystemException("events.csv", null, "No space left on device"));
        };

        Called called = Called.with(full, false, "run", SCENARIO, SHORT, "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains("events.csv: No space left on device.", "  Mend: ");
    }

    @Test
    void namesTheResultsAfterTheScenario() throws IOException {
        Path scenario = Path.of("..", "scenarios", "orrenvale", "plant.yaml");

        assertThat(ScenarioArgument.nameOf(scenario)).isEqualTo("orrenvale");
        assertThat(ScenarioArgument.nameOf(scenario.getParent())).isEqualTo("orrenvale");
        assertThat(ScenarioArgument.nameOf(Path.of("nights.yaml"))).isEqualTo("nights");
        assertThat(ScenarioArgument.nameOf(Path.of("."))).isEqualTo("analysis");
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> children = Files.list(folder)) {
            return children.map(child -> child.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }
}
