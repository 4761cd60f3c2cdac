package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.awt.Graphics2D;
import java.awt.geom.Point2D;
import java.awt.image.BufferedImage;
import java.util.List;
import org.junit.jupiter.api.Test;

/**
 * A single peak of 10 amid zeros, points 100 px apart. By hand, linear between points: the contour of v is a square on its
 * corner, its corners 10 (10 - v) px from the peak, so 40 sqrt(2) (10 - v) px long.
 */
class ContourLayerTest {
    private static final int SPACING = 100;
    private static final int SIZE = 3 * SPACING;
    private static final int PEAK = SPACING + SPACING / 2;
    private static final double[][] GRID = {{0, 0, 0}, {0, 10, 0}, {0, 0, 0}};

    /** Of 5: corners 50 px away; a quarter along each side is (37.5, 12.5) px from the peak, clear of a value at mid-side. */
    @Test
    void drawsAContourWithItsValue() {
        BufferedImage picture = drawn(5);

        for (int right : new int[] {-37, 37}) {
            for (int down : new int[] {-13, 13}) {
                assertThat(isDarkNear(picture, PEAK + right, PEAK + down))
                        .as("%d right, %d down", right, down)
                        .isTrue();
            }
        }
        assertThat(isDarkNear(picture, PEAK, PEAK)).isFalse();
    }

    /** Of 9.5: 28 px long, less than twice the width of three characters of 12 points in bold. */
    @Test
    void leavesOutAStubThatItsValueWouldHide() {
        BufferedImage picture = drawn(9.5);

        for (int x = 0; x < SIZE; x++) {
            for (int y = 0; y < SIZE; y++) {
                assertThat(picture.getRGB(x, y)).isEqualTo(Color.WHITE.getRGB());
            }
        }
    }

    private static BufferedImage drawn(double level) {
        BufferedImage picture = new BufferedImage(SIZE, SIZE, BufferedImage.TYPE_INT_RGB);
        Graphics2D pen = picture.createGraphics();
        pen.setColor(Color.WHITE);
        pen.fillRect(0, 0, SIZE, SIZE);
        new ContourLayer(
                        pen,
                        spot -> new Point2D.Double(
                                SPACING / 2.0 + SPACING * spot.across(), SPACING / 2.0 + SPACING * spot.up()))
                .draw(GRID, List.of(level));
        pen.dispose();
        return picture;
    }

    private static boolean isDarkNear(BufferedImage picture, int x, int y) {
        for (int right = -2; right <= 2; right++) {
            for (int down = -2; down <= 2; down++) {
                if (new Color(picture.getRGB(x + right, y + down)).getRed() < 128) {
                    return true;
                }
            }
        }
        return false;
    }
}
