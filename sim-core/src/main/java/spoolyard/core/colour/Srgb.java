package spoolyard.core.colour;

/**
 * A colour for the screen. Immutable.
 *
 * <p>Source: IEC 61966-2-1; the adaptation from another white to D65 after Bradford, as in the ICC profile specification.
 *
 * @param red 0 to 255
 * @param green 0 to 255
 * @param blue 0 to 255
 */
public record Srgb(int red, int green, int blue) {
    /** White of the screen, D65 and 2 degrees. */
    public static final Tristimulus WHITE = new Tristimulus(0.95047, 1, 1.08883);

    private static final double[][] TO_XYZ = {
        {0.4124564, 0.3575761, 0.1804375}, {0.2126729, 0.7151522, 0.0721750}, {0.0193339, 0.1191920, 0.9503041}
    };
    private static final double[][] FROM_XYZ = {
        {3.2404542, -1.5371385, -0.4985314}, {-0.9692660, 1.8760108, 0.0415560}, {0.0556434, -0.2040259, 1.0572252}
    };
    private static final double[][] TO_CONES = {
        {0.8951, 0.2664, -0.1614}, {-0.7502, 1.7135, 0.0367}, {0.0389, -0.0685, 1.0296}
    };
    private static final double[][] FROM_CONES = {
        {0.9869929, -0.1470543, 0.1599627}, {0.4323053, 0.5183603, 0.0492912}, {-0.0085287, 0.0400428, 0.9684867}
    };

    /**
     * The nearest that a screen can show, channel by channel.
     *
     * @param lab a colour
     * @param viewing the light of {@code lab}
     * @return the same to an eye that is used to the screen's white
     */
    public static Srgb of(CieLab lab, Viewing viewing) {
        Tristimulus white = viewing.white();
        double[] cones = times(TO_CONES, vector(lab.xyz(white)));
        double[] from = times(TO_CONES, vector(white));
        double[] to = times(TO_CONES, vector(WHITE));
        for (int i = 0; i < cones.length; i++) {
            cones[i] *= to[i] / from[i];
        }
        double[] linear = times(FROM_XYZ, times(FROM_CONES, cones));
        return new Srgb(channel(linear[0]), channel(linear[1]), channel(linear[2]));
    }

    /**
     * Its tristimulus values.
     *
     * @return X, Y, Z with {@code y = 1} for white
     */
    public Tristimulus xyz() {
        double[] xyz = times(TO_XYZ, new double[] {linear(red), linear(green), linear(blue)});
        return new Tristimulus(xyz[0], xyz[1], xyz[2]);
    }

    private static double linear(int channel) {
        double c = channel / 255.0;
        return c <= 0.04045 ? c / 12.92 : Math.pow((c + 0.055) / 1.055, 2.4);
    }

    private static int channel(double linear) {
        double shown = Math.max(0, Math.min(1, linear));
        double c = shown <= 0.0031308 ? 12.92 * shown : 1.055 * Math.pow(shown, 1 / 2.4) - 0.055;
        return (int) Math.round(255 * c);
    }

    private static double[] vector(Tristimulus xyz) {
        return new double[] {xyz.x(), xyz.y(), xyz.z()};
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = matrix[i][0] * vector[0] + matrix[i][1] * vector[1] + matrix[i][2] * vector[2];
        }
        return product;
    }
}
