package spoolyard.core.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;

/**
 * Purge of every changeover: the measured entry if there is one, else the shade-class formula or the estimate. Immutable.
 *
 * <p>Of several measured entries the most specific wins: line and polymer named, then line, then polymer, then neither.
 */
public final class PurgeTable {
    private static final String ANY = "*";

    private final Map<String, Double> measuredKg;
    private final UnmeasuredPurge unmeasured;

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
        unmeasured = UnmeasuredPurge.of(rules.unmeasured());
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
     * @return kg; 0 for the same polymer and colour; empty if neither an entry nor the rule tells of the pair
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
        return unmeasured.purgeKg(line, from, to);
    }
}
