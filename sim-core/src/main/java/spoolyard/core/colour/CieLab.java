package spoolyard.core.colour;

/**
 * A colour in CIELAB. Immutable.
 *
 * <p>Source: CIE 15, Colorimetry; the constants as fractions, so that both branches meet: 216/24389 and 24389/27.
 *
 * @param lightness L*, 0 (black) to 100 (a perfect white)
 * @param a a*, red above zero, green below
 * @param b b*, yellow above zero, blue below
 */
public record CieLab(double lightness, double a, double b) {
    private static final double EPSILON = 216.0 / 24389;
    private static final double KAPPA = 24389.0 / 27;

    /**
     * From tristimulus values.
     *
     * @param xyz the colour
     * @param white the white under the same light, {@code y = 1}
     * @return the same in CIELAB
     */
    public static CieLab of(Tristimulus xyz, Tristimulus white) {
        double x = compressed(xyz.x() / white.x());
        double y = compressed(xyz.y() / white.y());
        double z = compressed(xyz.z() / white.z());
        return new CieLab(116 * y - 16, 500 * (x - y), 200 * (y - z));
    }

    /**
     * Back to tristimulus values.
     *
     * @param white the white under the light of this colour
     * @return the tristimulus values
     */
    public Tristimulus xyz(Tristimulus white) {
        double y = (lightness + 16) / 116;
        return new Tristimulus(
                white.x() * expanded(y + a / 500), white.y() * expanded(y), white.z() * expanded(y - b / 200));
    }

    private static double compressed(double t) {
        return t > EPSILON ? Math.cbrt(t) : (KAPPA * t + 16) / 116;
    }

    private static double expanded(double f) {
        double cube = f * f * f;
        return cube > EPSILON ? cube : (116 * f - 16) / KAPPA;
    }
}
