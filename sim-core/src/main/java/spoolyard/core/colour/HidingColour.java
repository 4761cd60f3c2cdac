package spoolyard.core.colour;

import java.util.Optional;

/**
 * A colour as its pigments make it: K/S in 36 bands of a layer thick enough to hide what is behind it. Derived from L*a*b*
 * through {@link SmoothReflectance}, so of all pigments that give the colour it stands for the ones with the smoothest
 * curve; two pigments of one colour and different spectra are one here. Immutable.
 */
public final class HidingColour {
    private final Viewing viewing;
    private final Saunderson surface;
    private final double[] kOverS;
    private final CieLab lab;

    private HidingColour(Viewing viewing, Saunderson surface, double[] kOverS) {
        this.viewing = viewing;
        this.surface = surface;
        this.kOverS = kOverS;
        this.lab = seen(kOverS);
    }

    /**
     * The colour that looks so.
     *
     * @param lab how it looks
     * @param viewing under which light, to which eye
     * @param surface what the surface throws back
     * @return the colour; empty if no surface looks so, or if it throws back less than {@code surface} alone
     */
    public static Optional<HidingColour> of(CieLab lab, Viewing viewing, Saunderson surface) {
        Optional<double[]> reflectance = SmoothReflectance.of(lab, viewing);
        if (reflectance.isEmpty()) {
            return Optional.empty();
        }
        double[] kOverS = reflectance.get();
        for (int i = 0; i < kOverS.length; i++) {
            double internal = surface.internal(kOverS[i]);
            if (!(internal > 0)) {
                return Optional.empty();
            }
            kOverS[i] = KubelkaMunk.kOverS(internal);
        }
        return Optional.of(new HidingColour(viewing, surface, kOverS));
    }

    /**
     * How it looks.
     *
     * @return L*a*b* under its light
     */
    public CieLab lab() {
        return lab;
    }

    /**
     * How much more it absorbs than it scatters.
     *
     * @return geometric mean of K/S over the bands, {@code > 0}
     */
    public double meanKOverS() {
        double sum = 0;
        for (double each : kOverS) {
            sum += Math.log(each);
        }
        return Math.exp(sum / kOverS.length);
    }

    /**
     * How it looks with another in it.
     *
     * @param other the other, under the same light
     * @param ratio scattering of the other over the scattering of this one in the mixture, {@code >= 0}
     * @return L*a*b* under its light
     */
    public CieLab mixedWith(HidingColour other, double ratio) {
        double[] mixed = new double[kOverS.length];
        for (int i = 0; i < mixed.length; i++) {
            mixed[i] = KubelkaMunk.mixed(kOverS[i], other.kOverS[i], ratio);
        }
        return seen(mixed);
    }

    private CieLab seen(double[] mixture) {
        double[] reflectance = new double[mixture.length];
        for (int i = 0; i < mixture.length; i++) {
            reflectance[i] = surface.measured(KubelkaMunk.reflectance(mixture[i]));
        }
        return viewing.lab(reflectance);
    }
}
