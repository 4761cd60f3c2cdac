package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

final class CheckCommandTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    @TempDir
    private Path root;

    static List<Path> shipped() throws IOException {
        try (Stream<Path> folders = Files.list(SCENARIOS)) {
            return folders.filter(folder -> Files.exists(folder.resolve("plant.yaml")))
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("shipped")
    void findsEveryShippedScenarioSoundAndShowsItOnOneScreen(Path scenario) {
        Called called = Called.with("check", scenario.toString());

        assertThat(called.code()).isZero();
        assertThat(called.err()).isEmpty();
        assertThat(called.out()).contains("scheduled", "load", "At the winders", "Finishing", "No faults, ");
        assertThat(called.out().lines().toList()).allMatch(line -> line.length() <= 100);
        // the summary is one screen; the list of warnings below it is as long as it must be
        assertThat(called.out().lines().takeWhile(line -> !line.startsWith("No faults, ")))
                .hasSizeLessThanOrEqualTo(45);
    }

    /**
     * Worked by hand: 480 h of working time and two Saturdays of 8 h, less four weekly stops of 2 h on L1; its orders are
     * 1602 kg of TPU at 7 kg/h, 498 kg of PA at 9.8 kg/h and 396 kg of PC at 9.1 kg/h, which no other line can make: 228.9 +
     * 50.8 + 43.5 h.
     */
    @Test
    void weighsTheLoadOfALineAgainstItsTime() {
        Called called = Called.with("check", SCENARIOS.resolve("orrenvale").toString());

        assertThat(called.out()).containsPattern("L1 +488\\.0 +323\\.2 +66\\.2 +323\\.2 ");
    }

    @Test
    void showsWhatASettingChanges() {
        Called called = Called.with("check", SCENARIOS.resolve("orrenvale").toString(), "--set=/lines/L1/rate=7 kg/h");

        assertThat(called.out())
                .containsPattern("L1 +488\\.0 +646\\.[345] ")
                .containsPattern("No faults, \\d+ warnings?:");
    }

    @Test
    void tellsWarningsInWrappedSentences() {
        Called called = Called.with(
                "check", SCENARIOS.resolve("orrenvale").toString(), "--set=/shifts/pattern/N/crew/operator=1");

        assertThat(called.code()).isZero();
        assertThat(called.out()).containsPattern("No faults, \\d+ warnings?:\n- ");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
    }

    @Test
    void tellsAllFaultsAtOnceAndEndsWithTwo() throws IOException {
        Path folder = Files.createDirectory(root.resolve("mine"));
        Files.writeString(folder.resolve("plant.yaml"), "spoolyard: 1\nnmae: Mine\ntime: {zone: Mars/Base}\n");

        Called called = Called.with("check", folder.toString());

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.out()).isEmpty();
        assertThat(called.err())
                .contains("plant.yaml:2: ", "nmae", "name", "plant.yaml:3: ", "Mars/Base", "  Mend: ")
                .endsWith(" faults. Nothing was run or written.\n");
    }
}
