package spoolyard.core.washout;

/**
 * How the old melt leaves when new melt follows at a constant rate. Time is told in <em>turnovers</em>: what has come out
 * since the change over what the line holds, so that one law serves every size and rate. Each law has a mean residence of
 * one turnover. Immutable.
 *
 * <p>The share of old melt in what comes out is 1 minus the cumulative residence-time distribution. Source: O. Levenspiel,
 * Chemical Reaction Engineering, 3rd ed. 1999, ch. 11.
 */
public sealed interface Washout permits PlugAndTank, TanksInSeries, SingleScrew, LaminarPipe {
    /**
     * What is still old.
     *
     * @param turnovers since the change, {@code >= 0}
     * @return share of old melt in what comes out, in [0, 1]; never rises
     */
    double oldShare(double turnovers);

    /**
     * When little enough is old; the inverse.
     *
     * @param oldShare share of old melt that is allowed, in (0, 1]
     * @return turnovers since the change; 0 for a share of 1
     */
    double turnovers(double oldShare);
}
