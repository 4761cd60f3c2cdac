package spoolyard.core.plant;

import java.util.List;

/**
 * Purge by shade class: {@code kg = M k (p + (1 - p) ln(1 / r))}, the washout of a plug-flow share {@code p} in series
 * with a stirred share {@code 1 - p}. Immutable.
 *
 * <p>Source: dead time + stirred tank, O. Levenspiel, Chemical Reaction Engineering, 3rd ed. 1999, ch. 11-12. The
 * residuals and dead-zone factors are the plant's own.
 *
 * @param plugShare plug-flow share p, in [0, 1)
 * @param classSteps residual and factor by step in shade class; empty means that there is no formula
 * @param farColourDeltaE two colours of one class further apart than this (Delta E*ab) divide the residual
 * @param farColourDivisor by this, {@code >= 1}
 * @param toColourFactors factor on k when changing to a colour, by colour code
 * @param fromColourFactors factor on k when changing from a colour, by colour code
 */
public record PurgeFormula(
        double plugShare,
        List<ClassStep> classSteps,
        double farColourDeltaE,
        double farColourDivisor,
        List<ColourFactor> toColourFactors,
        List<ColourFactor> fromColourFactors)
        implements PurgeRule {
    /** Copies the lists. */
    public PurgeFormula {
        classSteps = List.copyOf(classSteps);
        toColourFactors = List.copyOf(toColourFactors);
        fromColourFactors = List.copyOf(fromColourFactors);
    }

    /**
     * What a change between classes needs. The first entry that matches is used.
     *
     * @param minStep smallest class step (to less from; negative is to a lighter class)
     * @param maxStep largest class step
     * @param residual allowed share of the old colour r, in (0, 1)
     * @param deadZoneFactor factor k, {@code > 0}
     */
    public record ClassStep(int minStep, int maxStep, double residual, double deadZoneFactor) {}

    /**
     * A factor that goes with a colour.
     *
     * @param colour colour code
     * @param factor factor on k, {@code > 0}
     */
    public record ColourFactor(String colour, double factor) {}
}
