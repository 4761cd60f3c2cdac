package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import com.fasterxml.jackson.databind.JsonNode;
import com.fasterxml.jackson.databind.ObjectMapper;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CompareCommandTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");
    private static final String BASE = SCENARIOS.resolve("orrenvale").toString();
    private static final String NIGHT = "/shifts/pattern/N/crew/operator=";

    @TempDir
    private Path root;

    @Test
    void comparesTheShippedShiftPatterns() throws IOException {
        Called called = Called.with(
                "compare",
                BASE,
                SCENARIOS.resolve("orrenvale-two-by-twelve").toString(),
                "--set=/time/length=1 week",
                "--replications=4",
                "--out=" + root.resolve("results"));

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out())
                .startsWith("Orrenvale Filament Works, 2027-03-01 06:00 to 2027-03-08 06:00\n"
                        + "A  orrenvale (the base)\nB  orrenvale-two-by-twelve\n")
                .contains("makes", "more good spools a week", "Variance ratio")
                .endsWith("Results in " + root.resolve("results") + "\n");
        assertThat(Files.list(root.resolve("results"))
                        .map(file -> file.getFileName().toString()))
                .contains("summary.json", "differences.csv", "replications.csv", "differences.png");
    }

    /**
     * Four operators at night are enough, one is too few: output falls and scrap rises by far more than chance can do.
     * All intervals hold at once at 95 %. From four to three next to nothing changes.
     */
    @Test
    void findsTheCliffBetweenEnoughAndTooFewOperators() throws IOException {
        Called called = Called.with(
                "compare",
                BASE,
                "three=" + NIGHT + 3,
                "one=" + NIGHT + 1,
                "--set=/time/length=1 week",
                "--replications=6",
                "--no-charts",
                "--json",
                "--out=" + root.resolve("results"));

        JsonNode answers = new ObjectMapper().readTree(called.out()).get("answers");
        JsonNode spools = answers.get(1).at("/differences/good_spools_per_week");
        assertThat(spools.get("high").asDouble()).isNegative();
        assertThat(answers.get(1).at("/differences/scrap_pct/low").asDouble()).isPositive();
        assertThat(answers.get(0).at("/differences/good_spools_per_week/low").asDouble())
                .isGreaterThan(spools.get("high").asDouble());
    }

    @Test
    void givesTheSameFilesForAnyNumberOfThreads() throws IOException {
        for (String threads : List.of("1", "3")) {
            Called.with(
                    "compare",
                    BASE,
                    "three=" + NIGHT + 3,
                    "--set=/time/length=2 days",
                    "--replications=3",
                    "--threads=" + threads,
                    "--no-charts",
                    "--quiet",
                    "--out=" + root.resolve(threads));
        }

        for (String name : List.of("summary.json", "differences.csv", "alternatives.csv", "replications.csv")) {
            assertThat(root.resolve("3").resolve(name))
                    .hasSameBinaryContentAs(root.resolve("1").resolve(name));
        }
    }

    @Test
    void saysThatAnAlternativeWithOtherWordsForTheSamePlantIsTheSame() {
        Called called = Called.with(
                "compare",
                BASE,
                "again=" + NIGHT + 4,
                "--set=/time/length=2 days",
                "--replications=2",
                "--no-charts",
                "--out=" + root.resolve("results"));

        assertThat(called.out()).contains("B is the same as the base in every replication.");
    }

    @Test
    void refusesToCompareWithNothing() {
        Called called = Called.with("compare", BASE);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err())
                .isEqualTo("Missing required parameter: 'ALT'.\n  Mend: see spoolyard compare --help.\n");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "three=/shifts/pattern/N/crew/operator=3 | three=/shifts/pattern/N/crew/operator=2"
                        + " | ALT = three=/shifts/pattern/N/crew/operator=2. There is another of the name three. Names must"
                        + " differ. | write another name and = before it",
                "short=/time/length=1 week | x=/time/length=2 weeks"
                        + " | ALT = short=/time/length=1 week. Runs 2027-03-01 06:00 to 2027-03-08 06:00 (Europe/Berlin),"
                        + " the base 2027-03-01 06:00 to 2027-03-29 06:00 (Europe/Berlin). Must be the same time."
                        + " | give all the same time",
                "money=/costs/currency=USD | x=/costs/currency=USD"
                        + " | ALT = money=/costs/currency=USD. Its costs are in USD, those of the base in EUR. Must be the"
                        + " same. | give both the same costs key",
                "' =/lines/L3/accumulator=80 m' | x=/lines/L3/accumulator=80 m"
                        + " | ALT =  =/lines/L3/accumulator=80 m. Its name is blank. | write a name before the first ="
            })
    void refusesWhatCannotBeCompared(String first, String second, String message, String mend) {
        Called called = Called.with("compare", BASE, first, second, "--out=" + root.resolve("results"));

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message + "\n  Mend: " + mend);
        assertThat(root.resolve("results")).doesNotExist();
    }

    @Test
    void refusesASingleReplicationForItHasNoInterval() {
        Called called = Called.with("compare", BASE, "three=" + NIGHT + 3, "--replications=1");

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith("--replications = 1. Must be a whole number from 2 to 1000000.\n");
    }

    @Test
    void tellsTheFaultsOfAnAlternative() {
        Called called = Called.with("compare", BASE, "three=/shifts/pattern/N/crew/oprator=3");

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains("oprator", "Nothing was run or written.");
    }

    @Test
    void tellsThatAScenarioIsNotThere() {
        Called called = Called.with("compare", BASE, root.resolve("nowhere").toString());

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains("nowhere");
    }
}
