package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CrewCommandTest {
    private static final String SMALL = "../scenarios/two-lines";

    @TempDir
    private Path folder;

    @Test
    void showsMoreAndFewerPeopleWithThePublishedCurvesBeside() throws Exception {
        Path csv = folder.resolve("crew.csv");
        Path picture = folder.resolve("crew.png");

        Called called = Called.with(
                "crew",
                SMALL,
                "--set",
                "/time/length=2 days",
                "--replications",
                "3",
                "--to",
                "3",
                "--csv",
                csv.toString(),
                "--picture",
                picture.toString());

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .contains("3 winders under more and fewer of the role operator")
                .contains("Ashcroft 1950")
                .containsPattern("(?m)^1 +3\\.0 ")
                .containsPattern("(?m)^3 +1\\.0 .* 100\\.00 +100\\.00 +100\\.00$");
        assertThat(called.out().lines())
                .allSatisfy(line -> assertThat(line.length()).isLessThanOrEqualTo(100));
        List<String> rows = Files.readAllLines(csv);
        assertThat(rows).hasSize(4);
        assertThat(rows.get(0))
                .startsWith("people,winders_each,efficiency_pct,")
                .endsWith("_own_constant_pct");
        assertThat(Files.readAllBytes(picture)).startsWith(0x89, 'P', 'N', 'G');
    }

    @Test
    void isTheSameForAnyNumberOfThreads() {
        String[] call = {"crew", SMALL, "--set", "/time/length=1 days", "--replications", "2", "--threads", "1"};
        Called one = Called.with(call);
        call[call.length - 1] = "3";

        assertThat(Called.with(call).out()).isEqualTo(one.out());
    }

    @ParameterizedTest
    @CsvSource({
        "--role, operater, '--role = operater. Must be a role that changes spools and that a shift has: operator'",
        "--from, 2.5, '--from = 2.5. Must be a whole number.'",
        "--from, 0, '--from = 0. Must be a whole number from 1 to 100.'",
        "--to, 0, '--to = 0. Must be a whole number from 1 to 100.'",
        "--replications, 1, '--replications = 1. Must be a whole number from 2'",
        "--csv, crew.txt, '--csv = crew.txt. Must be a file name that ends in .csv.'"
    })
    void saysWhatIsWrong(String option, String value, String message) {
        Called called = Called.with("crew", SMALL, option, value);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).startsWith(message);
        assertThat(called.out()).isEmpty();
    }
}
