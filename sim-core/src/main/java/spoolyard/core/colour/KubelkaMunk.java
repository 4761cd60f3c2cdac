package spoolyard.core.colour;

/**
 * Colour in a layer thick enough to hide what is behind it.
 *
 * <p>Source: P. Kubelka, F. Munk, Ein Beitrag zur Optik der Farbanstriche, Z. tech. Phys. 12 (1931) 593-601; that K and S
 * of a mixture are the sums of its parts': D. R. Duncan, Proc. Phys. Soc. 52 (1940) 390.
 */
public final class KubelkaMunk {
    private KubelkaMunk() {}

    /**
     * Absorption over scattering.
     *
     * @param reflectance of a hiding layer, in (0, 1]
     * @return K/S, {@code >= 0}
     */
    public static double kOverS(double reflectance) {
        double lost = 1 - reflectance;
        return lost * lost / (2 * reflectance);
    }

    /**
     * The inverse.
     *
     * @param kOverS absorption over scattering, {@code >= 0}
     * @return reflectance of a hiding layer, in (0, 1]
     */
    public static double reflectance(double kOverS) {
        return 1 / (1 + kOverS + Math.sqrt(kOverS * (kOverS + 2)));
    }

    /**
     * Two colours whose scattering is in a known ratio.
     *
     * @param kOverS of the one
     * @param otherKOverS of the other
     * @param ratio scattering of the other over that of the one in the mixture, {@code >= 0}; infinity: the other alone
     * @return K/S of the mixture
     */
    public static double mixed(double kOverS, double otherKOverS, double ratio) {
        return ratio > 1
                ? (kOverS / ratio + otherKOverS) / (1 / ratio + 1)
                : (kOverS + ratio * otherKOverS) / (1 + ratio);
    }
}
