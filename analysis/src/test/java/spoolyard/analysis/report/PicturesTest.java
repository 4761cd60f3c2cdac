package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.Map;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.record.LineState;

final class PicturesTest {
    /** Rows at the bottom that hold the legend, whose patches have the same colours, pixels. */
    private static final int LEGEND = 60;

    @ParameterizedTest
    @CsvSource({"1, 8, 1", "2, 168, 2", "8, 672, 5", "40, 8736, 2"})
    void drawsEveryPictureOnWhiteWhateverTheSizeOfThePlant(int lines, long hours, int replications) throws IOException {
        Map<String, byte[]> pictures = Pictures.of(SampleReports.of(SamplePlant.ofHours(lines, hours), replications));

        assertThat(pictures)
                .containsOnlyKeys(
                        "spools-per-shift.png",
                        "scrap-by-cause.png",
                        "losses.png",
                        "time-by-state.png",
                        "bottleneck-over-time.png");
        for (byte[] png : pictures.values()) {
            BufferedImage image = image(png);
            assertThat(image.getWidth()).isEqualTo(ChartLook.WIDTH);
            assertThat(image.getHeight()).isEqualTo(ChartLook.HEIGHT);
            assertThat(new Color(image.getRGB(1, 1))).isEqualTo(Color.WHITE);
        }
    }

    @Test
    void leavesOutSpoolsPerShiftWhereThereIsNoFullShift() {
        Map<String, byte[]> pictures = Pictures.of(SampleReports.of(SamplePlant.ofHours(2, 5), 2));

        assertThat(pictures).doesNotContainKey("spools-per-shift.png").hasSize(4);
    }

    /** The bar of the only line, read off the picture: running time against all the colours above it. */
    @Test
    void drawsTheBarOfALineAsHighAsItsShares() throws IOException {
        RunReport report = SampleReports.of(1, 1, 3);
        double running = report.table(StateSheet.SHEET)
                .at(List.of("line", "L1", LineState.RUNNING.label()), StateSheet.PCT)
                .mean();

        BufferedImage image = image(Pictures.of(report).get("time-by-state.png"));

        int middle = IntStream.range(0, image.getWidth())
                .filter(x -> count(image, x, Palette.PETROL) > 50)
                .skip(40)
                .findFirst()
                .orElseThrow();
        int bar = Palette.ALL.stream()
                .mapToInt(colour -> count(image, middle, colour))
                .sum();
        // One pixel is a quarter of a per cent here, and each border between two colours may cost one.
        assertThat(100.0 * count(image, middle, Palette.PETROL) / bar).isCloseTo(running, within(1.0));
    }

    @Test
    void givesEveryStateOfALineAColour() {
        assertThat(Stream.of(StateGroup.values()).flatMap(group -> group.states().stream()))
                .containsExactlyInAnyOrder(LineState.values());
    }

    private static BufferedImage image(byte[] png) throws IOException {
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static int count(BufferedImage image, int x, Color colour) {
        return (int) IntStream.range(0, image.getHeight() - LEGEND)
                .filter(y -> image.getRGB(x, y) == colour.getRGB())
                .count();
    }
}
