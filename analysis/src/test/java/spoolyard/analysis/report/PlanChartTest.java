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
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.colour.Viewing;
import spoolyard.core.plant.Colour;

/**
 * Reads the picture. One line of the sample makes 400 spools of 1 kg at 18 kg/h, of which 0.8 % are rejected: 22.4014 h for
 * each of its three orders, natural, red and black, with nothing between them.
 */
final class PlanChartTest {
    private static final double ORDER_H = 400 / 0.992 / 18;
    private static final int LEFT = 96;
    private static final int RIGHT = 24;
    private static final int BAR = 124 + 10;
    private static final int BELOW_BAR = 124 + 72 - 4;
    private static final int ABOVE_BAR = 124 + 4;

    private static BufferedImage drawn(int lines, long hours, Map<String, List<String>> frozen) throws IOException {
        byte[] png = PlanChart.png(
                SamplePlans.of(SamplePlant.ofHours(lines, hours), frozen), SamplePlans.CLOCK, Viewing.D65_10);
        return ImageIO.read(new ByteArrayInputStream(png));
    }

    private static Color swatch(int order) {
        Colour colour =
                SamplePlant.of(1, 1).book().orders().get(order).product().colour();
        return Swatch.of(colour, Viewing.D65_10);
    }

    private static List<Integer> found(BufferedImage image, int y, Color colour) {
        return IntStream.range(0, image.getWidth())
                .filter(x -> image.getRGB(x, y) == colour.getRGB())
                .boxed()
                .toList();
    }

    @Test
    void drawsEachOrderInItsTrueColourFromItsStartToItsEnd() throws IOException {
        BufferedImage image = drawn(1, 168, Map.of());

        double hour = (image.getWidth() - LEFT - RIGHT) / 168.0;
        for (int order = 0; order < 3; order++) {
            List<Integer> bar = found(image, BAR, swatch(order));
            assertThat(bar.get(0)).isCloseTo((int) Math.round(LEFT + order * ORDER_H * hour), within(2));
            assertThat(bar).hasSizeBetween((int) (ORDER_H * hour) - 3, (int) (ORDER_H * hour) + 1);
        }
    }

    /** Open from 0 to 120 h of 168. */
    @Test
    void shadesClosedTime() throws IOException {
        BufferedImage image = drawn(1, 168, Map.of());

        double hour = (image.getWidth() - LEFT - RIGHT) / 168.0;
        List<Integer> closed = found(image, ABOVE_BAR, Palette.MIST);
        assertThat(closed.get(0)).isCloseTo((int) Math.round(LEFT + 120 * hour), within(2));
        // Two midnights stand in it.
        assertThat(closed).hasSizeBetween((int) (48 * hour) - 4, (int) (48 * hour));
    }

    /** In 64 h the orders are due after a third each, 21.33 h, and are ready 1.07, 2.14 and 3.2 h after that. */
    @Test
    void marksLateOrdersFromTheirDueDateOn() throws IOException {
        BufferedImage image = drawn(1, 64, Map.of());

        double hour = (image.getWidth() - LEFT - RIGHT) / (3 * ORDER_H);
        double lateH = (1 + 2 + 3) * (ORDER_H - 64 / 3.0);
        assertThat((double) found(image, BELOW_BAR, Palette.RED).size()).isCloseTo(lateH * hour, within(4.0));
        assertThat(found(drawn(1, 168, Map.of()), BELOW_BAR, Palette.RED)).isEmpty();
    }

    @Test
    void marksFrozenOrders() throws IOException {
        BufferedImage image = drawn(1, 168, Map.of("L1", List.of("SO-1")));

        double hour = (image.getWidth() - LEFT - RIGHT) / 168.0;
        assertThat((double) found(image, ABOVE_BAR, Palette.TEXT).size()).isCloseTo(ORDER_H * hour, within(2.0));
        assertThat(found(drawn(1, 168, Map.of()), ABOVE_BAR, Palette.TEXT)).isEmpty();
    }

    @ParameterizedTest
    @CsvSource({"1, 8", "8, 672", "30, 672", "40, 8736"})
    void fitsAnyPlant(int lines, long hours) throws IOException {
        BufferedImage image = drawn(lines, hours, Map.of());

        assertThat(image.getWidth()).isBetween(ChartLook.WIDTH, 2600);
        assertThat(image.getHeight()).isBetween(124 + lines * 34, 124 + lines * 72 + 150);
        assertThat(new Color(image.getRGB(1, 1))).isEqualTo(Color.WHITE);
    }
}
