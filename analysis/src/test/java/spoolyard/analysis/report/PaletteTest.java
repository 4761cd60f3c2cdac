package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.awt.Color;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

final class PaletteTest {
    /** Just noticeable is about 2; 20 tells patches apart at a glance (threshold chosen here). */
    private static final double APART = 20;

    @ParameterizedTest
    @EnumSource(Sight.class)
    void keepsAnyTwoColoursApartForAnySight(Sight sight) {
        for (Color one : Palette.ALL) {
            for (Color other : Palette.ALL) {
                if (one != other) {
                    assertThat(sight.difference(one, other))
                            .as(sight + ": " + one + " and " + other)
                            .isGreaterThanOrEqualTo(APART);
                }
            }
        }
    }

    /**
     * How colours are seen. Source of the matrices (linear RGB, severity 1): G. M. Machado, M. M. Oliveira and L. A. F.
     * Fernandes, "A physiologically-based model for simulation of color vision deficiency", IEEE TVCG 15(6), 2009.
     */
    private enum Sight {
        NORMAL(1, 0, 0, 0, 1, 0, 0, 0, 1),
        PROTANOPIA(0.152286, 1.052583, -0.204868, 0.114503, 0.786281, 0.099216, -0.003882, -0.048116, 1.051998),
        DEUTERANOPIA(0.367322, 0.860646, -0.227968, 0.280085, 0.672501, 0.047413, -0.011820, 0.042940, 0.968881),
        TRITANOPIA(1.255528, -0.076749, -0.178779, -0.078411, 0.930809, 0.147602, 0.004733, 0.691367, 0.303900);

        private final double[] matrix;

        Sight(double... matrix) {
            this.matrix = matrix;
        }

        double difference(Color one, Color other) {
            double[] a = lab(seen(one));
            double[] b = lab(seen(other));
            return Math.sqrt(Stream.of(0, 1, 2)
                    .mapToDouble(i -> (a[i] - b[i]) * (a[i] - b[i]))
                    .sum());
        }

        private double[] seen(Color colour) {
            double[] linear = {linear(colour.getRed()), linear(colour.getGreen()), linear(colour.getBlue())};
            double[] seen = times(matrix, linear);
            for (int i = 0; i < 3; i++) {
                seen[i] = Math.min(1, Math.max(0, seen[i]));
            }
            return seen;
        }
    }

    /** Source: IEC 61966-2-1. */
    private static double linear(int level) {
        double share = level / 255.0;
        return share <= 0.04045 ? share / 12.92 : Math.pow((share + 0.055) / 1.055, 2.4);
    }

    /** Source: IEC 61966-2-1 primaries, CIE 15 for L*a*b*, white D65. */
    private static double[] lab(double[] rgb) {
        double[] xyz = times(
                new double[] {
                    0.4124564, 0.3575761, 0.1804375, 0.2126729, 0.7151522, 0.0721750, 0.0193339, 0.1191920, 0.9503041
                },
                rgb);
        double x = root(xyz[0] / 0.95047);
        double y = root(xyz[1]);
        double z = root(xyz[2] / 1.08883);
        return new double[] {116 * y - 16, 500 * (x - y), 200 * (y - z)};
    }

    private static double root(double t) {
        return t > 216.0 / 24389 ? Math.cbrt(t) : (24389.0 / 27 * t + 16) / 116;
    }

    private static double[] times(double[] matrix, double[] vector) {
        double[] product = new double[3];
        for (int i = 0; i < 9; i++) {
            product[i / 3] += matrix[i] * vector[i % 3];
        }
        return product;
    }
}
