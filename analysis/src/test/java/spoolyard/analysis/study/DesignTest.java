package spoolyard.analysis.study;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.VariationText;
import spoolyard.scenarios.fault.ScenarioException;

final class DesignTest {
    /**
     * Source, from memory: polynomials 1, x + 1, x^2 + x + 1, x^3 + x + 1 and first direction numbers 1 | 1 | 1, 1 | 1, 3, 7
     * of P. Bratley and B. L. Fox, Algorithm 659, ACM Transactions on Mathematical Software 14 (1988) 88-100; the points by
     * hand from their recurrence, v = 0.5, 0.25, 0.875, 0.6875 in the third and 0.5, 0.75, 0.875, 0.3125 in the fourth
     * dimension, in the order of I. A. Antonov and V. M. Saleev 1979. The first three columns are as the GNU Scientific
     * Library prints them (memory).
     */
    @Test
    void beginsTheSobolSequenceAsPublished() {
        assertThat(Design.sobol(10, 4)).isDeepEqualTo(new double[][] {
            {0, 0, 0, 0},
            {0.5, 0.5, 0.5, 0.5},
            {0.75, 0.25, 0.75, 0.25},
            {0.25, 0.75, 0.25, 0.75},
            {0.375, 0.375, 0.625, 0.125},
            {0.875, 0.875, 0.125, 0.625},
            {0.625, 0.125, 0.375, 0.375},
            {0.125, 0.625, 0.875, 0.875},
            {0.1875, 0.3125, 0.3125, 0.6875},
            {0.6875, 0.8125, 0.8125, 0.1875}
        });
    }

    /** A digital net in base 2: of 2^m points each 2^m-th part of each axis has one. Source: Sobol 1967, by construction. */
    @Test
    void spreadsSobolPointsEvenlyInFourDimensions() {
        double[][] points = Design.sobol(64, 4);

        for (int axis = 0; axis < 4; axis++) {
            int number = axis;
            assertThat(Arrays.stream(points)
                            .mapToInt(point -> (int) (64 * point[number]))
                            .distinct()
                            .count())
                    .isEqualTo(64);
        }
    }

    /** The defining property. Source: McKay, Beckman and Conover, Technometrics 21 (1979). */
    @Test
    void putsOnePointOfALatinHypercubeIntoEachPartOfEachAxis() {
        double[][] points = Design.latinHypercube(37, 4, 5);

        for (int axis = 0; axis < 4; axis++) {
            int number = axis;
            assertThat(Arrays.stream(points)
                            .mapToInt(point -> (int) Math.floor(37 * point[number]))
                            .sorted())
                    .containsExactlyElementsOf(IntStream.range(0, 37).boxed().toList());
        }
        assertThat(points[0]).isNotEqualTo(Design.latinHypercube(37, 4, 6)[0]);
    }

    @Test
    void crossesAllLevelsInAGrid() throws ScenarioException {
        var factors = VariationText.read(List.of("/a=1 m..2 m:3", "/b=x,two={y: 1, z: [2, 3]}"), 4);

        assertThat(Design.GRID.points(factors, 0, 1).stream()
                        .map(point -> point.stream().map(Level::label).toList()))
                .containsExactly(
                        List.of("1 m", "x"),
                        List.of("1 m", "two"),
                        List.of("1.5 m", "x"),
                        List.of("1.5 m", "two"),
                        List.of("2 m", "x"),
                        List.of("2 m", "two"));
        assertThat(factors.get(1)
                        .setting(Design.GRID.points(factors, 0, 1).get(1).get(1)))
                .isEqualTo("/b={y: 1, z: [2, 3]}");
    }

    @Test
    void takesWholeNumbersOnlyFromARangeOfCounts() throws ScenarioException {
        var factors = VariationText.read(List.of("/a=3..5"), 4);

        assertThat(Design.SOBOL.points(factors, 8, 1).stream()
                        .map(point -> point.get(0).value()))
                .containsOnly("3", "4", "5");
    }
}
