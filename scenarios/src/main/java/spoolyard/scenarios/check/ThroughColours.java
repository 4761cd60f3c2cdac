package spoolyard.scenarios.check;

import java.util.HashMap;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.ChangeoverRules.ThroughColour;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;

/**
 * Family rules: changes that run through a third colour.
 *
 * @param products colours that they may name
 */
record ThroughColours(Products products) {
    /** The rules of the part {@code changeover}. */
    List<ThroughColour> read(MappingReader changeover) {
        Kind<Map<String, ThroughColour>> kind =
                new NamedKind<>(name -> new MappingKind<>("through_colour", this::rule));
        Map<String, ThroughColour> rules = changeover.optional("through", kind, new LinkedHashMap<>());
        requireOneRuleAPair(changeover, rules);
        return List.copyOf(rules.values());
    }

    private ThroughColour rule(MappingReader r) {
        Kind<List<String>> colours = ListKind.some(products.colourCode());
        List<String> from = r.required("from", colours);
        List<String> to = r.required("to", colours);
        String colour = r.required("colour", products.colourCode());
        r.raw("colour")
                .filter(node -> node.shown().equals(colour) && (from.contains(colour) || to.contains(colour)))
                .ifPresent(node -> r.reading()
                        .fault(
                                FaultKind.CONTRADICTION,
                                node,
                                "Must be neither in from nor in to.",
                                "give another colour, or take it out of the list"));
        return new ThroughColour(from, to, products.colour(colour));
    }

    private static void requireOneRuleAPair(MappingReader changeover, Map<String, ThroughColour> rules) {
        Map<List<String>, String> seen = new HashMap<>();
        rules.forEach((name, rule) -> {
            for (String from : rule.from()) {
                for (String to : rule.to()) {
                    String other = seen.putIfAbsent(List.of(from, to), name);
                    if (other != null) {
                        twice(changeover, from + " to " + to + ": " + other + ", " + name);
                    }
                }
            }
        });
    }

    private static void twice(MappingReader changeover, String where) {
        changeover.raw("through").ifPresent(node -> changeover
                .reading()
                .fault(
                        FaultKind.DUPLICATE_NAME,
                        node,
                        "Must have each pair of colours once (" + where + ").",
                        "take the colour out of one of the lists"));
    }
}
