package spoolyard.core.plant;

import java.util.Optional;

/**
 * What is done after the line for quality. Immutable.
 *
 * @param lab lots, tests and quarantine; empty means that spools go on untested
 * @param exposure how exposure to moist air is dealt with; empty means that it does not matter
 */
public record QualityRules(Optional<Lab> lab, Optional<Exposure> exposure) {
    /** No lab, no exposure clock. */
    public static final QualityRules NONE = new QualityRules(Optional.empty(), Optional.empty());
}
