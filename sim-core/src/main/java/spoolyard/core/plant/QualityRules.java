package spoolyard.core.plant;

import java.util.Optional;

/**
 * What is done after the line for quality. Immutable.
 *
 * @param lab lots, tests and quarantine; empty means that spools go on untested
 * @param exposure how exposure to moist air is dealt with; empty means that it does not matter
 * @param acceptedShortfall part of an order that may be missing after spools were lost behind the line before it is made
 *     up, in [0, 1]; 0 means that every lost spool is made again, 1 that none is
 */
public record QualityRules(Optional<Lab> lab, Optional<Exposure> exposure, double acceptedShortfall) {
    /** No lab, no exposure clock. */
    public static final QualityRules NONE = new QualityRules(Optional.empty(), Optional.empty(), 0);
}
