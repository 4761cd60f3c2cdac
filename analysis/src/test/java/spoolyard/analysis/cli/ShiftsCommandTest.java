package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.nio.file.Files;
import java.nio.file.Path;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

final class ShiftsCommandTest {
    private static final String ORRENVALE = "../scenarios/orrenvale";

    @TempDir
    private Path folder;

    /** Hand: five crews share 168 h a week, 33.6 h each; six shifts in a row; 24 h between the last day and an evening. */
    @Test
    void listsEverySystemWithItsHours() {
        Called called = Called.with("shifts");

        assertThat(called.code()).isEqualTo(ExitCode.OK);
        for (ShiftSystem system : ShiftSystem.values()) {
            assertThat(called.out()).containsPattern("(?m)^" + system.label() + " ");
        }
        assertThat(called.out())
                .containsPattern("(?m)^3x8-7-days-5-crews +5 +33\\.6 +168 +6 +16  FLSA$")
                .containsPattern("(?m)^2x12-2-2-3 +4 +42 +168 +3 +12  Art\\. 8\\(b\\), FLSA$")
                .containsPattern("(?m)^day-shift +1 +40 +40 +5 +16  –$");
    }

    @Test
    void drawsASystemDayByDayWithTheKeysToCopy() {
        Called called = Called.with("shifts", "2x12-4-on-4-off");

        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .containsPattern("(?m)^A  D  D  D  D  \\.  \\.  \\.  \\.  N  N  N  N  \\.  \\.  \\.  \\. +42 h$")
                .contains("D 06:00 to 18:00; N 18:00 to 06:00")
                .contains("Look at: labour law, nights over 8 h")
                .contains(ShiftSystem.FOUR_ON_FOUR_OFF.text());
    }

    @Test
    void drawsTheRosterOfAScenario() {
        Called called = Called.with("shifts", ORRENVALE);

        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out()).containsPattern("(?m)^red    D  D  D  D  D  \\.  \\.  E  .* 40(\\.8)? h$");
    }

    /** Days and nights are as long and as many, so their colours fill the same area but for the letters and edges. */
    @Test
    void drawsAPicture() throws Exception {
        Path picture = folder.resolve("roster.png");

        Called called = Called.with("shifts", "2x12-2-2-3", "--picture", picture.toString());

        assertThat(called.out()).endsWith("Picture in " + picture + System.lineSeparator());
        BufferedImage image = ImageIO.read(Files.newInputStream(picture));
        double byDay = shareOf(image, new Color(0xDFA30A));
        double byNight = shareOf(image, new Color(0x4FACE6));
        assertThat(byDay).isGreaterThan(0.02);
        assertThat(byNight / byDay).isBetween(0.9, 1.1);
    }

    private static double shareOf(BufferedImage image, Color colour) {
        long count = 0;
        for (int x = 0; x < image.getWidth(); x++) {
            for (int y = 0; y < image.getHeight(); y++) {
                count += (image.getRGB(x, y) & 0xFFFFFF) == (colour.getRGB() & 0xFFFFFF) ? 1 : 0;
            }
        }
        return count / (double) (image.getWidth() * image.getHeight());
    }

    @ParameterizedTest
    @CsvSource({
        "2x12, ROSTER = 2x12. Must be a shift system (day-shift,",
        "../scenarios/no-such-plant, ROSTER = ../scenarios/no-such-plant. Must be a shift system"
    })
    void saysWhatIsWrong(String what, String message) {
        Called called = Called.with("shifts", what);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).startsWith(message);
    }

    @Test
    void wantsARosterForAPicture() {
        Called called =
                Called.with("shifts", "--picture", folder.resolve("a.png").toString());

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("Must go with a roster to draw.");
    }
}
