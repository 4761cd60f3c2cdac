package spoolyard.core.plant;

import java.util.List;

/**
 * What a line does between two orders. Immutable.
 *
 * @param measured purge from the plant's own changeovers; an entry always wins
 * @param unmeasured rule for pairs with no entry; a formula with no {@code classSteps} if the plant has none
 * @param colourSteps steps of a colour change before the purge, in order
 * @param polymerSteps steps of a polymer change before the purge, in order
 * @param diameterSteps steps of a diameter change, in order
 * @param temperatureMoveS time to move the melt temperature by one kelvin, seconds, {@code >= 0}
 * @param compoundHoldUps purge compound at a polymer change, melt volumes, {@code >= 0}
 * @param rethreadAfterPolymer true: thread up and stabilise after a polymer or diameter change
 * @param approval first-article colour approval
 */
public record ChangeoverRules(
        List<MeasuredPurge> measured,
        PurgeRule unmeasured,
        List<SetUpStep> colourSteps,
        List<SetUpStep> polymerSteps,
        List<SetUpStep> diameterSteps,
        double temperatureMoveS,
        double compoundHoldUps,
        boolean rethreadAfterPolymer,
        Approval approval) {
    /** Copies the lists. */
    public ChangeoverRules {
        measured = List.copyOf(measured);
        colourSteps = List.copyOf(colourSteps);
        polymerSteps = List.copyOf(polymerSteps);
        diameterSteps = List.copyOf(diameterSteps);
    }

    /**
     * A measured purge.
     *
     * @param line line name, or {@code *} for all lines
     * @param polymer polymer code, or {@code *} for all polymers
     * @param fromColour colour code before
     * @param toColour colour code after
     * @param purgeKg mass run to waste until clean, kg, {@code >= 0}
     */
    public record MeasuredPurge(String line, String polymer, String fromColour, String toColour, double purgeKg) {}

    /**
     * A step with the line stopped.
     *
     * @param name what is done
     * @param durationS time once the crew is there, seconds
     * @param crew who does it
     */
    public record SetUpStep(String name, Law durationS, CrewNeed crew) {}

    /**
     * First-article colour approval, with the line running to waste.
     *
     * @param durationS time of the judgement, seconds; {@link Law#ZERO} with nobody needed means no approval
     * @param crew who judges
     * @param refusalProbability chance of a refusal, in [0, 1)
     * @param extraPurgeShare purge after a refusal as a share of the changeover's purge, {@code >= 0}; the colour is
     *     judged again after it
     */
    public record Approval(Law durationS, CrewNeed crew, double refusalProbability, double extraPurgeShare) {
        /** No approval. */
        public static final Approval NONE = new Approval(Law.ZERO, CrewNeed.NOBODY, 0, 0);
    }
}
