package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class WarmupCommandTest {
    private static final String SCENARIO =
            Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path root;

    @Test
    void tellsTheWarmUpAndDrawsIt() throws IOException {
        Path picture = root.resolve("warmup.png");

        Called called = Called.with(
                "warmup", SCENARIO, "--set=/time/length=2 weeks", "--replications=4", "--picture=" + picture);

        assertThat(called.code()).isZero();
        assertThat(called.err()).isEmpty();
        assertThat(called.out())
                .startsWith("Orrenvale Filament Works: warm-up, 4 replications, seed 1\n")
                .containsPattern("MSER-5 (cuts|would cut)")
                .contains("All 32 full shifts", "After the warm-up", "batch means")
                .endsWith("Picture in " + picture + "\n");
        assertThat(ImageIO.read(picture.toFile()).getWidth()).isEqualTo(1280);
    }

    @ParameterizedTest
    @CsvSource({
        "--replications=1, '--replications = 1. Must be a whole number from 2 to 1000000.'",
        "--picture=x.gif, '--picture = x.gif. Must be a file name that ends in .png.'",
        "--window=40, '--window = 40. Must be a whole number from 0 to 30.'"
    })
    void refusesWhatMakesNoSense(String option, String message) {
        Called called = Called.with("warmup", SCENARIO, option);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).startsWith(message).contains("\n  Mend: ");
    }

    @Test
    void refusesARunTooShortToSettle() {
        Called called = Called.with("warmup", SCENARIO, "--set=/time/length=2 days");

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains("Has 6 full shifts. Must have at least 20 to look for a warm-up in.");
    }
}
