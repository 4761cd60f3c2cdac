package spoolyard.core.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeFormula;

/**
 * Purge of every changeover: the measured entry if there is one, else the shade-class formula. Immutable.
 *
 * <p>Of several measured entries the most specific wins: line and polymer named, then line, then polymer, then neither.
 */
public final class PurgeTable {
    private static final String ANY = "*";

    private final Map<String, Double> measuredKg;
    private final PurgeFormula formula;

    /**
     * Takes the rules of a plant.
     *
     * @param rules the rules
     */
    public PurgeTable(ChangeoverRules rules) {
        Map<String, Double> entries = new LinkedHashMap<>();
        for (ChangeoverRules.MeasuredPurge entry : rules.measured()) {
            entries.put(key(entry.line(), entry.polymer(), entry.fromColour(), entry.toColour()), entry.purgeKg());
        }
        measuredKg = Collections.unmodifiableMap(entries);
        formula = rules.formula();
    }

    private static String key(String line, String polymer, String from, String to) {
        return line + '|' + polymer + '|' + from + '|' + to;
    }

    /**
     * Mass run to waste for the colour, compound for a polymer change not counted. Where the polymer changes, entries and
     * factors are those of the new polymer.
     *
     * @param line the line
     * @param from product before
     * @param to product after
     * @return kg; 0 for the same polymer and colour; empty if there is neither an entry nor a formula for the pair
     */
    public OptionalDouble purgeKg(Line line, Product from, Product to) {
        String fromColour = from.colour().code();
        String toColour = to.colour().code();
        if (fromColour.equals(toColour)
                && from.polymer().code().equals(to.polymer().code())) {
            return OptionalDouble.of(0);
        }
        String[] lines = {line.name(), line.name(), ANY, ANY};
        String[] polymers = {to.polymer().code(), ANY, to.polymer().code(), ANY};
        for (int i = 0; i < lines.length; i++) {
            Double kg = measuredKg.get(key(lines[i], polymers[i], fromColour, toColour));
            if (kg != null) {
                return OptionalDouble.of(kg);
            }
        }
        return byFormula(line, from, to);
    }

    private OptionalDouble byFormula(Line line, Product from, Product to) {
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
