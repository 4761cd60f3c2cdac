package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Set;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.report.Contours.Contour;
import spoolyard.analysis.report.Contours.Spot;

/**
 * Contours against lines worked by hand and against circles.
 *
 * <p>Source of the bound: the error of linear interpolation is at most h^2 / 8 times the greatest second derivative
 * (Burden and Faires, Numerical Analysis, 9th ed., section 3.1, theorem 3.3, with two nodes; from memory, and
 * worked here for x^2: the chord from a to a + h is above it by h^2 / 4 at most).
 */
class ContoursTest {
    private static final double MISSING = Double.NaN;

    @Test
    void goesRoundAPeakWhereItIsWorkedByHand() {
        double[][] peak = {{0, 0, 0}, {0, 4, 0}, {0, 0, 0}};

        List<Contour> contours = Contours.of(peak, 1);

        // A quarter of the way from 0 to 4 is the value 1: at 0.25 and 1.75 on the lines through the peak.
        assertThat(contours).hasSize(1);
        List<Spot> spots = contours.get(0).spots();
        assertThat(spots).hasSize(5).first().isEqualTo(spots.get(4));
        assertThat(spots).containsOnly(new Spot(0.25, 1), new Spot(1, 1.75), new Spot(1.75, 1), new Spot(1, 0.25));
        IntStream.range(0, 4).forEach(i -> assertThat(distance(spots.get(i), spots.get(i + 1)))
                .isCloseTo(0.75 * Math.sqrt(2), within(1e-12)));
    }

    @Test
    void crossesASlopeFromEdgeToEdge() {
        double[][] slope = {{0, 1, 2}, {0, 1, 2}, {1, 2, 3}};

        List<Contour> contours = Contours.of(slope, 1.5);

        // Rows 0 and 1 have 1.5 half way from column 1 to 2, row 2 half way from column 0 to 1; column 1 from row 1 to
        // 2.
        assertThat(contours).hasSize(1);
        assertThat(contours.get(0).spots())
                .containsExactlyInAnyOrder(new Spot(1.5, 0), new Spot(1.5, 1), new Spot(1, 1.5), new Spot(0.5, 2));
        assertThat(List.of(
                        contours.get(0).spots().get(0), contours.get(0).spots().get(3)))
                .containsExactlyInAnyOrder(new Spot(1.5, 0), new Spot(0.5, 2));
    }

    @Test
    void joinsAtASaddleWhatTheMiddleJoins() {
        double[][] saddle = {{0, 2}, {2, 0}};

        // The mean of the corners is 1: above 0.5, so the high ground joins and each low corner is cut off alone.
        assertThat(cuts(saddle, 0.5))
                .containsExactlyInAnyOrder(
                        Set.of(new Spot(0.25, 0), new Spot(0, 0.25)), Set.of(new Spot(0.75, 1), new Spot(1, 0.75)));
        assertThat(cuts(saddle, 1.5))
                .containsExactlyInAnyOrder(
                        Set.of(new Spot(0.75, 0), new Spot(1, 0.25)), Set.of(new Spot(0.25, 1), new Spot(0, 0.75)));
    }

    @Test
    void drawsNothingThroughAHoleNorBeyondTheValues() {
        double[][] hole = {{0, 1, 2}, {0, MISSING, 2}};

        assertThat(Contours.of(hole, 1.5)).isEmpty();
        assertThat(Contours.of(new double[][] {{0, 1}, {0, 1}}, 1.5)).isEmpty();
    }

    @Test
    void liesOnCirclesWithinTheErrorOfStraightInterpolation() {
        double[][] squares = new double[21][21];
        for (int row = 0; row <= 20; row++) {
            for (int column = 0; column <= 20; column++) {
                squares[row][column] = squared(row - 10) + squared(column - 10);
            }
        }
        // f = x^2 + y^2 has the second derivative 2 along any line; h is 1 along an edge, sqrt(2) at most within a
        // square.
        double onEdges = 1.0 / 8 * 2;

        for (double radius : new double[] {2.5, 5.3, 8.1, 9.7}) {
            List<Contour> contours = Contours.of(squares, radius * radius);

            assertThat(contours).hasSize(1);
            List<Spot> spots = contours.get(0).spots();
            assertThat(spots).first().isEqualTo(spots.get(spots.size() - 1));
            // Interpolating a convex function errs upwards, so the line lies inside.
            assertThat(spots).allSatisfy(spot -> assertThat(
                            squared(spot.across() - 10) + squared(spot.up() - 10) - radius * radius)
                    .isBetween(-onEdges - 1e-9, 1e-9));
            assertThat(Math.abs(turning(spots))).isCloseTo(2 * Math.PI, within(1e-9));
        }
    }

    @Test
    void takesRoundValuesInsideTheRangeAndNoCloserThanAsked() {
        // Worked by hand: a fifth of 8.3 is 1.66, the next of 1, 2, 5, 10 is 2.
        assertThat(Contours.roundValues(1.1, 9.4, 0)).containsExactly(2.0, 4.0, 6.0, 8.0);
        assertThat(Contours.roundValues(1.1, 9.4, 3)).containsExactly(5.0);
        assertThat(Contours.roundValues(0.12, 0.38, 0)).containsExactly(0.2, 0.3);
        assertThat(Contours.roundValues(880, 921, 0)).containsExactly(890.0, 900.0, 910.0, 920.0);
        assertThat(Contours.roundValues(-1, 1, 0)).containsExactly(-0.5, 0.0, 0.5);
        assertThat(Contours.roundValues(2, 2, 0)).isEmpty();
        assertThat(Contours.roundValues(MISSING, MISSING, 0)).isEmpty();
        assertThat(Contours.roundValues(6.46, 6.56, 0.06)).containsExactly(6.5);
        assertThat(Contours.roundValues(7.99, 8.39, 0.89)).isEmpty();
    }

    private static List<Set<Spot>> cuts(double[][] values, double at) {
        return Contours.of(values, at).stream()
                .map(contour -> Set.copyOf(contour.spots()))
                .toList();
    }

    /** How far a line turns about the middle of the grid, radians. */
    private static double turning(List<Spot> spots) {
        return IntStream.range(1, spots.size())
                .mapToDouble(i -> Math.IEEEremainder(angle(spots.get(i)) - angle(spots.get(i - 1)), 2 * Math.PI))
                .sum();
    }

    private static double angle(Spot spot) {
        return Math.atan2(spot.up() - 10, spot.across() - 10);
    }

    private static double distance(Spot one, Spot other) {
        return Math.hypot(one.across() - other.across(), one.up() - other.up());
    }

    private static double squared(double value) {
        return value * value;
    }
}
