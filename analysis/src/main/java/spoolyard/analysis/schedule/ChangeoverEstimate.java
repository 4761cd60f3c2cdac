package spoolyard.analysis.schedule;

/**
 * What a changeover is expected to take. Immutable. Waiting for people is not in it.
 *
 * @param purgeKg run to waste: colour purge, purge again after a refusal, approval, stabilising, kg
 * @param compoundKg purge compound, kg
 * @param lineS time of the line, seconds
 * @param crewS attended time, seconds
 * @param money by the weights
 */
public record ChangeoverEstimate(double purgeKg, double compoundKg, double lineS, double crewS, double money) {
    /** Nothing changes. */
    public static final ChangeoverEstimate NONE = new ChangeoverEstimate(0, 0, 0, 0, 0);

    /**
     * Both.
     *
     * @param other another
     * @return the sums
     */
    public ChangeoverEstimate plus(ChangeoverEstimate other) {
        return new ChangeoverEstimate(
                purgeKg + other.purgeKg,
                compoundKg + other.compoundKg,
                lineS + other.lineS,
                crewS + other.crewS,
                money + other.money);
    }
}
