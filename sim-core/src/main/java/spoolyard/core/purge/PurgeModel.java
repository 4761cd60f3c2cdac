package spoolyard.core.purge;

import spoolyard.core.colour.Saunderson;
import spoolyard.core.colour.Viewing;
import spoolyard.core.washout.Washout;

/**
 * What an estimate of the purge supposes. Immutable.
 *
 * <p>A colour scatters in proportion to {@code power * M^(m - 1)} and absorbs in proportion to {@code power * M^m}: its power
 * is tint strength times concentrate, and the resin's own; M its mean K/S, m the mixing exponent. At {@code m = 1} colours of
 * equal power scatter alike, as single-constant theory supposes; at {@code m = 0} they absorb alike, as tint strength is
 * measured in the laboratory. Pigments lie between; the plant's changeovers tell where.
 *
 * @param looks light, eye, surface and tolerance
 * @param washout law by which the old melt leaves
 * @param volumeHoldUps melt that takes part in the washout over the line's hold-up, {@code > 0}
 * @param mixingExponent m, in [0, 2]
 * @param resinShare power of the resin itself, as a share of concentrate of strength 1, {@code > 0}
 */
public record PurgeModel(Looks looks, Washout washout, double volumeHoldUps, double mixingExponent, double resinShare) {
    /**
     * When two colours look the same. Immutable.
     *
     * @param viewing light and eye for which the plant's L*a*b* were measured
     * @param surface what the surface of the filament throws back
     * @param toleranceDeltaE CIEDE2000 at which the new colour is clean, {@code > 0}
     */
    public record Looks(Viewing viewing, Saunderson surface, double toleranceDeltaE) {}

    /**
     * The same with what a calibration finds.
     *
     * @param volume melt over hold-up
     * @param exponent mixing exponent
     * @return the model
     */
    public PurgeModel with(double volume, double exponent) {
        return new PurgeModel(looks, washout, volume, exponent, resinShare);
    }
}
