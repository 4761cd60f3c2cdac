package spoolyard.core.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;

/**
 * Purge of every changeover: the measured entry if there is one, else that of its two halves if a rule sends it through a third
 * colour, else the shade-class formula or the estimate. Immutable.
 *
 * <p>Of several measured entries the most specific wins: line and polymer named, then line, then polymer, then neither.
 */
public final class PurgeTable {
    private static final String ANY = "*";

    private final Map<String, Double> measuredKg;
    private final UnmeasuredPurge unmeasured;
    private final List<ChangeoverRules.ThroughColour> through;

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
        through = rules.through();
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
        OptionalDouble entry = entryKg(line, to, fromColour, toColour);
        if (entry.isPresent()) {
            return entry;
        }
        Optional<Colour> between = through.stream()
                .filter(rule -> rule.isFor(fromColour, toColour))
                .map(ChangeoverRules.ThroughColour::colour)
                .findFirst();
        return between.isPresent()
                ? sum(line, from, new Product(to.polymer(), between.get(), to.diameterMm(), to.spoolKg()), to)
                : unmeasured.purgeKg(line, from, to);
    }

    /** Of both halves: a rule is never applied to a half. */
    private OptionalDouble sum(Line line, Product from, Product between, Product to) {
        OptionalDouble first = straightKg(line, from, between);
        OptionalDouble second = straightKg(line, between, to);
        return first.isPresent() && second.isPresent()
                ? OptionalDouble.of(first.getAsDouble() + second.getAsDouble())
                : OptionalDouble.empty();
    }

    private OptionalDouble straightKg(Line line, Product from, Product to) {
        OptionalDouble entry =
                entryKg(line, to, from.colour().code(), to.colour().code());
        return entry.isPresent() ? entry : unmeasured.purgeKg(line, from, to);
    }

    private OptionalDouble entryKg(Line line, Product to, String fromColour, String toColour) {
        String[] lines = {line.name(), line.name(), ANY, ANY};
        String[] polymers = {to.polymer().code(), ANY, to.polymer().code(), ANY};
        for (int i = 0; i < lines.length; i++) {
            Double kg = measuredKg.get(key(lines[i], polymers[i], fromColour, toColour));
            if (kg != null) {
                return OptionalDouble.of(kg);
            }
        }
        return OptionalDouble.empty();
    }
}
