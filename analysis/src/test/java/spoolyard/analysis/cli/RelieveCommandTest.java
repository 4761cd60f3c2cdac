package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class RelieveCommandTest {
    private static final String SMALL = "../scenarios/two-lines";

    @TempDir
    private Path folder;

    @Test
    void ranksReliefsAndWritesThemAll() throws Exception {
        Path csv = folder.resolve("reliefs.csv");

        Called called = Called.with(
                "relieve", SMALL, "--set", "/time/length=3 days", "--replications", "3", "--csv", csv.toString());

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .contains("what relieving one thing at a time brings")
                .contains("all intervals hold at once with 95 % confidence")
                .containsPattern("(?m)^L[12]: 10 % faster, winder and all");
        List<String> rows = Files.readAllLines(csv);
        assertThat(rows.get(0)).startsWith("kind,station,change,good_spools_per_week,");
        assertThat(rows).anyMatch(row -> row.startsWith("crew,operator,one more in each shift,"));
        List<Double> gains = rows.stream()
                .skip(1)
                .map(row -> Double.valueOf(row.split(",(?=[-\\d])")[1]))
                .toList();
        assertThat(gains).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    @Test
    void relievesOnlyWhatIsAskedFor() {
        Called called =
                Called.with("relieve", SMALL, "--set", "/time/length=1 days", "--replications", "2", "--only", "crew");

        assertThat(called.out()).contains("operator: one more in each shift").doesNotContain("faster");
    }

    @Test
    void isTheSameForAnyNumberOfThreads() {
        String[] call = {
            "relieve", SMALL, "--set", "/time/length=1 days", "--replications", "2", "--only", "line", "--threads", "1"
        };
        Called one = Called.with(call);
        call[call.length - 1] = "3";

        assertThat(Called.with(call).out()).isEqualTo(one.out());
    }

    @ParameterizedTest
    @CsvSource({
        "--only, croew, '--only = croew. Must be one of: crew, line, buffer,'",
        "--only, oven, '--only = oven. Must leave something to relieve: this plant has none of it.'",
        "--replications, 1, '--replications = 1. Must be a whole number from 2'",
        "--csv, gains.txt, '--csv = gains.txt. Must be a file name that ends in .csv.'"
    })
    void saysWhatIsWrong(String option, String value, String message) {
        Called called = Called.with("relieve", SMALL, option, value);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).startsWith(message);
        assertThat(called.out()).isEmpty();
    }
}
