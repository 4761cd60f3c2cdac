package spoolyard.core.colour;

/**
 * Light and eye for which a colour was measured: the illuminant and the observer that belong to L*a*b*. Tristimulus values
 * are sums over 36 bands of 10 nm from 380 to 730 nm.
 *
 * <p>Source: CIE 15; daylight of a correlated colour temperature as there, section on illuminants D, the multipliers
 * rounded to three decimals as the standard does.
 */
public enum Viewing {
    /** Average daylight, field of 10 degrees: usual for plastics. */
    D65_10(6500, CieTables.X_10, CieTables.Y_10, CieTables.Z_10),
    /** Average daylight, field of 2 degrees. */
    D65_2(6500, CieTables.X_2, CieTables.Y_2, CieTables.Z_2),
    /** Horizon daylight, field of 10 degrees. */
    D50_10(5000, CieTables.X_10, CieTables.Y_10, CieTables.Z_10),
    /** Horizon daylight, field of 2 degrees: usual for print. */
    D50_2(5000, CieTables.X_2, CieTables.Y_2, CieTables.Z_2);

    private static final double NEW_OVER_OLD_RADIATION_CONSTANT = 1.4388 / 1.438;

    private final double[] x;
    private final double[] y;
    private final double[] z;
    private final Tristimulus white;

    Viewing(double nominalK, double[] xBar, double[] yBar, double[] zBar) {
        double[] light = daylight(nominalK * NEW_OVER_OLD_RADIATION_CONSTANT);
        double scale = 1 / sum(light, yBar);
        x = weights(light, xBar, scale);
        y = weights(light, yBar, scale);
        z = weights(light, zBar, scale);
        white = new Tristimulus(sum(light, xBar) * scale, 1, sum(light, zBar) * scale);
    }

    /**
     * The perfect white.
     *
     * @return its tristimulus values, {@code y = 1}
     */
    public Tristimulus white() {
        return white;
    }

    /**
     * The colour of a surface.
     *
     * @param reflectance of each band; <b>Shape</b>: {@code double[36]}
     * @return its colour
     */
    CieLab lab(double[] reflectance) {
        return CieLab.of(new Tristimulus(sum(x, reflectance), sum(y, reflectance), sum(z, reflectance)), white);
    }

    /** Weight of each band in X, Y and Z. <b>Shape</b>: {@code double[3][36]}. */
    double[][] weights() {
        return new double[][] {x.clone(), y.clone(), z.clone()};
    }

    private static double[] daylight(double kelvin) {
        double k = 1000 / kelvin;
        double xD = -4.6070 * k * k * k + 2.9678 * k * k + 0.09911 * k + 0.244063;
        double yD = -3 * xD * xD + 2.870 * xD - 0.275;
        double divisor = 0.0241 + 0.2562 * xD - 0.7341 * yD;
        double first = thousandths((-1.3515 - 1.7703 * xD + 5.9114 * yD) / divisor);
        double second = thousandths((0.0300 - 31.4424 * xD + 30.0717 * yD) / divisor);
        double[] light = new double[CieTables.BANDS];
        for (int i = 0; i < light.length; i++) {
            light[i] = CieTables.DAYLIGHT_0[i] + first * CieTables.DAYLIGHT_1[i] + second * CieTables.DAYLIGHT_2[i];
        }
        return light;
    }

    private static double thousandths(double value) {
        return Math.rint(value * 1000) / 1000;
    }

    private static double[] weights(double[] light, double[] eye, double scale) {
        double[] weights = new double[light.length];
        for (int i = 0; i < light.length; i++) {
            weights[i] = light[i] * eye[i] * scale;
        }
        return weights;
    }

    private static double sum(double[] one, double[] other) {
        double sum = 0;
        for (int i = 0; i < one.length; i++) {
            sum += one[i] * other[i];
        }
        return sum;
    }
}
