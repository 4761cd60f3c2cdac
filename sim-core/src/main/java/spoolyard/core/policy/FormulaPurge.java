package spoolyard.core.policy;

import java.util.OptionalDouble;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeFormula;

/**
 * Purge by the shade-class formula.
 *
 * @param formula the formula
 */
record FormulaPurge(PurgeFormula formula) implements UnmeasuredPurge {
    @Override
    public OptionalDouble purgeKg(Line line, Product from, Product to) {
        int step = to.colour().shadeClass() - from.colour().shadeClass();
        for (PurgeFormula.ClassStep entry : formula.classSteps()) {
            if (step >= entry.minStep() && step <= entry.maxStep()) {
                return OptionalDouble.of(washoutKg(line.holdUpKg(), entry, from, to));
            }
        }
        return OptionalDouble.empty();
    }

    private double washoutKg(double holdUpKg, PurgeFormula.ClassStep entry, Product from, Product to) {
        double residual = entry.residual();
        boolean sameClass = from.colour().shadeClass() == to.colour().shadeClass();
        if (sameClass && from.colour().deltaE76(to.colour()) > formula.farColourDeltaE()) {
            residual /= formula.farColourDivisor();
        }
        double factor = entry.deadZoneFactor();
        for (PurgeFormula.ColourFactor colour : formula.toColourFactors()) {
            factor *= colour.colour().equals(to.colour().code()) ? colour.factor() : 1;
        }
        for (PurgeFormula.ColourFactor colour : formula.fromColourFactors()) {
            factor *= colour.colour().equals(from.colour().code()) ? colour.factor() : 1;
        }
        double plug = formula.plugShare();
        return holdUpKg * factor * (plug + (1 - plug) * Math.log(1 / residual));
    }
}
