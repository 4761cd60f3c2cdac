package spoolyard.core.policy;

import java.util.Collections;
import java.util.LinkedHashMap;
import java.util.Map;
import java.util.OptionalDouble;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeEstimate;

/** Purge by an estimate. It knows colours, not polymers: of one colour in two polymers it tells nothing. Immutable. */
final class EstimatedPurge implements UnmeasuredPurge {
    private final Map<String, Map<String, Double>> holdUpsByFromAndTo;

    EstimatedPurge(PurgeEstimate estimate) {
        Map<String, Map<String, Double>> pairs = new LinkedHashMap<>();
        for (PurgeEstimate.Pair pair : estimate.pairs()) {
            pairs.computeIfAbsent(pair.fromColour(), from -> new LinkedHashMap<>())
                    .put(pair.toColour(), pair.holdUps());
        }
        holdUpsByFromAndTo = Collections.unmodifiableMap(pairs);
    }

    @Override
    public OptionalDouble purgeKg(Line line, Product from, Product to) {
        Double holdUps = holdUpsByFromAndTo
                .getOrDefault(from.colour().code(), Collections.emptyMap())
                .get(to.colour().code());
        return holdUps == null ? OptionalDouble.empty() : OptionalDouble.of(line.holdUpKg() * holdUps);
    }
}
