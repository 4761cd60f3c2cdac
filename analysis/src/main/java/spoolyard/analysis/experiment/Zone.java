package spoolyard.analysis.experiment;

/**
 * What a procedure that selects the best promises: if the best is ahead of every other by at least {@code indifference}, it
 * is selected with probability {@code >= confidence}. Immutable.
 *
 * @param confidence probability of a correct selection, above 1/systems and below 1
 * @param indifference least difference that matters, in the unit of the observations, {@code > 0}
 * @param firstStage observations of each system before anything is decided, {@code >= 2}; 10 or more are advised
 */
public record Zone(double confidence, double indifference, int firstStage) {
    /** Checks the ranges. */
    public Zone {
        boolean isSound = confidence > 0 && confidence < 1 && indifference > 0 && firstStage >= 2;
        if (!isSound || Double.isInfinite(indifference)) {
            throw new IllegalArgumentException("confidence = " + confidence + ", indifference = " + indifference
                    + ", firstStage = " + firstStage + ". Must be in (0, 1), > 0 and finite, and >= 2.");
        }
    }
}
