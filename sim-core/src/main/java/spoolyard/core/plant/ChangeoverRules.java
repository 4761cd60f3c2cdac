package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

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
 * @param through changes that run through a third colour; no pair in two of them
 * @param endOfWeek purge before a long stop; empty: none
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
        Approval approval,
        List<ThroughColour> through,
        Optional<EndOfWeek> endOfWeek) {
    /** Copies the lists. */
    public ChangeoverRules {
        measured = List.copyOf(measured);
        colourSteps = List.copyOf(colourSteps);
        polymerSteps = List.copyOf(polymerSteps);
        diameterSteps = List.copyOf(diameterSteps);
        through = List.copyOf(through);
    }

    /**
     * Rules by which every change goes straight from colour to colour, with no purge at the end of the week.
     *
     * @param measured as above
     * @param unmeasured as above
     * @param colourSteps as above
     * @param polymerSteps as above
     * @param diameterSteps as above
     * @param temperatureMoveS as above
     * @param compoundHoldUps as above
     * @param rethreadAfterPolymer as above
     * @param approval as above
     */
    public ChangeoverRules(
            List<MeasuredPurge> measured,
            PurgeRule unmeasured,
            List<SetUpStep> colourSteps,
            List<SetUpStep> polymerSteps,
            List<SetUpStep> diameterSteps,
            double temperatureMoveS,
            double compoundHoldUps,
            boolean rethreadAfterPolymer,
            Approval approval) {
        this(
                measured,
                unmeasured,
                colourSteps,
                polymerSteps,
                diameterSteps,
                temperatureMoveS,
                compoundHoldUps,
                rethreadAfterPolymer,
                approval,
                List.of(),
                Optional.empty());
    }

    /**
     * The same rules with a purge at the end of the week.
     *
     * @param purge the purge
     * @return a copy
     */
    public ChangeoverRules with(EndOfWeek purge) {
        return new ChangeoverRules(
                measured,
                unmeasured,
                colourSteps,
                polymerSteps,
                diameterSteps,
                temperatureMoveS,
                compoundHoldUps,
                rethreadAfterPolymer,
                approval,
                through,
                Optional.of(purge));
    }

    /**
     * A family rule: a change from one of some colours to one of others is run through a third, such as black or natural:
     * purged to that one first, and from there.
     *
     * @param from codes of the colours before
     * @param to codes of the colours after
     * @param colour what is run between; in neither list
     */
    public record ThroughColour(List<String> from, List<String> to, Colour colour) {
        /** Copies the lists. */
        public ThroughColour {
            from = List.copyOf(from);
            to = List.copyOf(to);
        }

        /**
         * Whether the rule is for a change.
         *
         * @param fromColour code of the colour before
         * @param toColour code of the colour after
         * @return true if it has both
         */
        public boolean isFor(String fromColour, String toColour) {
            return !fromColour.equals(toColour) && from.contains(fromColour) && to.contains(toColour);
        }
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
     * First-article colour approval.
     *
     * @param durationS time of the judgement, seconds; {@link Law#ZERO} with nobody needed means no approval
     * @param crew who judges
     * @param refusalProbability chance of a refusal, in [0, 1)
     * @param extraPurgeShare purge after a refusal as a share of the changeover's purge, {@code >= 0}; the colour is
     *     judged again after it
     * @param meanwhile what the line does until the colour is judged
     */
    public record Approval(
            Law durationS, CrewNeed crew, double refusalProbability, double extraPurgeShare, Meanwhile meanwhile) {
        /** No approval. */
        public static final Approval NONE = new Approval(Law.ZERO, CrewNeed.NOBODY, 0, 0, Meanwhile.RUN_TO_WASTE);

        /** What a line does until the colour is judged. */
        public enum Meanwhile {
            /** Runs to waste. */
            RUN_TO_WASTE,
            /** Makes spools, which are held until then: a refusal scraps them. */
            HOLD
        }

        /**
         * Whether there is an approval at all.
         *
         * @return false if it takes no time and nobody
         */
        public boolean isAsked() {
            return !crew.isNobody() || durationS.mean() > 0;
        }
    }
}
