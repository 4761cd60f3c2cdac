package spoolyard.core.policy;

import java.util.OptionalDouble;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.PurgeEstimate;
import spoolyard.core.plant.PurgeFormula;
import spoolyard.core.plant.PurgeRule;

/** What a change purges that has no measured entry. */
sealed interface UnmeasuredPurge permits FormulaPurge, EstimatedPurge {
    /**
     * As a plant says it.
     *
     * @param rule the plant's rule
     * @return the same, ready to be asked
     */
    static UnmeasuredPurge of(PurgeRule rule) {
        return rule instanceof PurgeFormula formula
                ? new FormulaPurge(formula)
                : new EstimatedPurge((PurgeEstimate) rule);
    }

    /**
     * Mass run to waste.
     *
     * @param line the line
     * @param from product before
     * @param to product after, of another colour or polymer
     * @return kg; empty if the rule does not tell of the pair
     */
    OptionalDouble purgeKg(Line line, Product from, Product to);
}
