package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class PrecisionTest {
    private static final String SCENARIO =
            Path.of("..", "scenarios", "orrenvale").toString();
    private static final String SHORT = "--set=/time/length=2 days";

    @TempDir
    private Path root;

    @Test
    void runsUntilTheIntervalIsNarrowAndGivesWhatThatNumberOfReplicationsGives() throws IOException {
        Called called = Called.with(
                "run", SCENARIO, SHORT, "--precision=5%", "--no-charts", "--out=" + root.resolve("precise"));

        assertThat(called.code()).isZero();
        Matcher told = Pattern.compile("As precise as 5.00 % after (\\d+) replications: good_spools_per_week \\+/- "
                        + "[0-5]\\.\\d\\d %\\.\n--replications (\\d+) gives the same again\\. Stopping by the interval")
                .matcher(called.out());
        assertThat(told.find()).isTrue();
        assertThat(called.out()).contains("\n" + told.group(1) + " replications, seed 1;");
        Called.with(
                "run",
                SCENARIO,
                SHORT,
                "--replications=" + told.group(1),
                "--no-charts",
                "--out=" + root.resolve("fixed"));
        assertThat(root.resolve("precise/summary.json")).hasSameBinaryContentAs(root.resolve("fixed/summary.json"));
    }

    @Test
    void stopsAtTheCap() {
        Called called = Called.with(
                "compare",
                SCENARIO,
                "three=/shifts/pattern/N/crew/operator=3",
                SHORT,
                "--precision=0.01%",
                "--replications=10",
                "--no-charts",
                "--out=" + root.resolve("results"));

        assertThat(called.out()).contains("Stopped at the most there may be, short of 0.01 %, after 10 replications:");
    }

    @Test
    void stopsWhenTheTimeIsUp() {
        Called called =
                Called.with("run", SCENARIO, SHORT, "--budget=1s", "--no-charts", "--out=" + root.resolve("results"));

        assertThat(called.out()).containsPattern("The time was up after \\d+ replications:");
    }

    @ParameterizedTest
    @CsvSource({
        "--precision=1, '--precision = 1. Must be from 0.01 % to 50 %.'",
        "--precision=90%, '--precision = 90%. Must be from 0.01 % to 50 %.'",
        "--budget=60, '--budget = 60. Must be a time from 1 s to 7 days.'",
        "--budget=0s, '--budget = 0s. Must be a time from 1 s to 7 days.'",
        "--measure=oee, '--measure = oee. Must be one of good_spools_per_week,'"
    })
    void refusesWhatMakesNoSense(String option, String message) {
        Called called = Called.with("run", SCENARIO, option, "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message).contains("\n  Mend: ");
    }

    @Test
    void refusesACapBelowWhatAnIntervalNeeds() {
        Called called = Called.with("run", SCENARIO, "--precision=1%", "--replications=5");

        assertThat(called.err()).startsWith("--replications = 5. Must be a whole number from 10 to 1000000.");
    }
}
