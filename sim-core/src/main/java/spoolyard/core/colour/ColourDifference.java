package spoolyard.core.colour;

/**
 * The CIEDE2000 colour difference, all parametric factors 1. About 1 is what a trained eye just sees on chips side by
 * side.
 *
 * <p>Source: ISO/CIE 11664-6; G. Sharma, W. Wu, E. N. Dalal, The CIEDE2000 color-difference formula: implementation notes,
 * supplementary test data, and mathematical observations, Color Research and Application 30 (2005) 21-30, whose equation
 * numbers stand in the code.
 */
public final class ColourDifference {
    private static final double POW_25_7 = 6103515625.0;

    private final double deltaL;
    private final double deltaC;
    private final double deltaH;
    private final double meanL;
    private final double meanC;
    private final double meanHueDeg;

    private ColourDifference(CieLab one, CieLab other) {
        double stretch = stretch((Math.hypot(one.a(), one.b()) + Math.hypot(other.a(), other.b())) / 2);
        double c1 = Math.hypot(stretch * one.a(), one.b());
        double c2 = Math.hypot(stretch * other.a(), other.b());
        double h1 = hueDeg(stretch * one.a(), one.b());
        double h2 = hueDeg(stretch * other.a(), other.b());
        boolean isGrey = c1 * c2 == 0;
        deltaL = other.lightness() - one.lightness();
        deltaC = c2 - c1;
        deltaH = isGrey ? 0 : 2 * Math.sqrt(c1 * c2) * sin(shortWay(h2 - h1) / 2); // (10), (11)
        meanL = (one.lightness() + other.lightness()) / 2;
        meanC = (c1 + c2) / 2;
        meanHueDeg = isGrey ? h1 + h2 : meanHue(h1, h2);
    }

    /**
     * The difference of two colours under the same light.
     *
     * @param one a colour
     * @param other another
     * @return Delta E 00, {@code >= 0}; the order does not matter
     */
    public static double ciede2000(CieLab one, CieLab other) {
        return new ColourDifference(one, other).total();
    }

    /** (16) to (22). */
    private double total() {
        double fromMiddle = (meanL - 50) * (meanL - 50);
        double l = deltaL / (1 + 0.015 * fromMiddle / Math.sqrt(20 + fromMiddle));
        double c = deltaC / (1 + 0.045 * meanC);
        double h = deltaH / (1 + 0.015 * meanC * hueWeight());
        double turn = (meanHueDeg - 275) / 25;
        double rotation = -sin(60 * Math.exp(-turn * turn)) * 2 * saturation(meanC);
        return Math.sqrt(l * l + c * c + h * h + rotation * c * h);
    }

    /** (15). */
    private double hueWeight() {
        return 1
                - 0.17 * cos(meanHueDeg - 30)
                + 0.24 * cos(2 * meanHueDeg)
                + 0.32 * cos(3 * meanHueDeg + 6)
                - 0.20 * cos(4 * meanHueDeg - 63);
    }

    /** (4), (5). */
    private static double stretch(double meanChroma) {
        return 1 + 0.5 * (1 - saturation(meanChroma));
    }

    private static double saturation(double chroma) {
        double pow7 = Math.pow(chroma, 7);
        return Math.sqrt(pow7 / (pow7 + POW_25_7));
    }

    /** (7). */
    private static double hueDeg(double a, double b) {
        if (a == 0 && b == 0) {
            return 0;
        }
        double degrees = Math.toDegrees(Math.atan2(b, a));
        return degrees < 0 ? degrees + 360 : degrees;
    }

    private static double shortWay(double turnDeg) {
        return turnDeg > 180 ? turnDeg - 360 : turnDeg < -180 ? turnDeg + 360 : turnDeg;
    }

    /** (14). */
    private static double meanHue(double h1, double h2) {
        double sum = h1 + h2;
        if (Math.abs(h1 - h2) <= 180) {
            return sum / 2;
        }
        return sum < 360 ? (sum + 360) / 2 : (sum - 360) / 2;
    }

    private static double sin(double degrees) {
        return Math.sin(Math.toRadians(degrees));
    }

    private static double cos(double degrees) {
        return Math.cos(Math.toRadians(degrees));
    }
}
