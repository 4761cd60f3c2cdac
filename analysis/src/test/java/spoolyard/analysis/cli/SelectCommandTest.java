package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class SelectCommandTest {
    private static final String BASE = Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path folder;

    private static final String ONE_AT_NIGHT = "one=/shifts/pattern/N/crew/operator=1";

    @ParameterizedTest
    @ValueSource(strings = {"--first=5", "--two-stage"})
    void findsThatOneOperatorAtNightIsNotTheBest(String option) {
        Called called = Called.with(
                "select",
                BASE,
                ONE_AT_NIGHT,
                "--within=1500",
                "--first=5",
                option.equals("--first=5") ? "--most=60" : option,
                "--set=/time/length=4 days",
                "--out=" + folder);

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out())
                .contains("The best is A orrenvale.", "probability of at least 95 %", "runs in all.")
                .contains(option.equals("--two-stage") ? "Rinott 1978" : "Kim and Nelson 2001");
    }

    @Test
    void writesTheCourseOfTheRace() throws IOException {
        Called called = Called.with(
                "select",
                BASE,
                ONE_AT_NIGHT,
                "--measure=labour_h_per_week",
                "--within=1",
                "--first=5",
                "--set=/time/length=2 days",
                "--out=" + folder);

        assertThat(called.out()).contains("Results in " + folder);
        assertThat(Files.readAllLines(folder.resolve("race.csv")))
                .hasSize(3)
                .startsWith("replications,letter,alternative,mean,dropped_beyond,dropped")
                .anyMatch(row -> row.startsWith("5,A,orrenvale,") && row.endsWith(",yes"))
                .anyMatch(row -> row.startsWith("5,B,one,") && row.endsWith(",no"));
        JsonNode summary =
                new ObjectMapper().readTree(folder.resolve("summary.json").toFile());
        assertThat(summary.at("/best").asText()).isEqualTo("B");
        assertThat(summary.at("/plants/0/dropped_after").asInt()).isEqualTo(5);
        assertThat(summary.at("/plants/1").has("dropped_after")).isFalse();
        assertThat(folder.resolve("race.png")).isNotEmptyFile();
    }

    @Test
    void turnsTheMeasureRoundWhereLessIsBetter() {
        Called called = Called.with(
                "select",
                BASE,
                ONE_AT_NIGHT,
                "--measure=labour_h_per_week",
                "--within=1",
                "--first=5",
                "--set=/time/length=2 days",
                "--out=" + folder);

        assertThat(called.out()).contains("The best is B one.");
    }

    @Test
    void promisesNothingWhenItStopsEarly() {
        Called called = Called.with(
                "select",
                BASE,
                "again=/shifts/pattern/N/crew/operator=3",
                "--measure=scrap_pct",
                "--within=0.0001",
                "--first=5",
                "--most=5",
                "--set=/time/length=2 days",
                "--out=" + folder);

        assertThat(called.out()).contains("Not decided. So far the best is", "nothing is promised");
    }

    @ParameterizedTest
    @CsvSource({
        "--within=0, '--within = 0.0. Must be above 0.'",
        "--within=-3, '--within = -3.0. Must be above 0.'",
        "--confidence=20%, '--confidence = 20%. Must be from 60 % to 99.99 %.'",
        "--confidence=high, '--confidence = high. Must be from 60 % to 99.99 %.'",
        "--first=2, '--first = 2. Must be a whole number from 5 to 1000000.'",
        "--most=4, '--most = 4. Must be a whole number from 10 to 1000000.'",
        "--measure=spools, '--measure = spools. Must be one of good_spools_per_week, good_spools_per_shift,'"
    })
    void refusesWhatMakesNoSense(String option, String message) {
        String within = option.startsWith("--within") ? "--quiet" : "--within=10";
        Called called = Called.with("select", BASE, ONE_AT_NIGHT, option, within);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message).contains("\n  Mend: ");
    }

    @Test
    void asksForTheDifferenceThatMatters() {
        Called called = Called.with("select", BASE, ONE_AT_NIGHT);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith("Missing required option: '--within=AMOUNT'.");
    }
}
