package spoolyard.analysis.theory;

/**
 * Erlang's two formulas for a group of equal servers with Poisson arrivals.
 *
 * <p>Source: A. K. Erlang 1917; recursion B(c) = a B(c-1) / (c + a B(c-1)), B(0) = 1, and C = B / (1 - rho (1 - B)) as in
 * Gross, Shortle, Thompson &amp; Harris, Fundamentals of Queueing Theory, 4th ed. 2008, sections 2.3 and 2.4.
 */
public final class Erlang {
    private Erlang() {}

    /**
     * Erlang B: chance that an arrival finds all servers busy where nobody can wait. Cost O(servers).
     *
     * @param servers number of servers, {@code >= 1}
     * @param offeredLoad arrival rate times mean service time, erlang, {@code > 0}
     * @return probability in (0, 1)
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double blockingProbability(int servers, double offeredLoad) {
        Ranges.atLeastOne("servers", servers);
        Ranges.positive("offeredLoad", offeredLoad);
        double blocking = 1;
        for (int c = 1; c <= servers; c++) {
            blocking = offeredLoad * blocking / (c + offeredLoad * blocking);
        }
        return blocking;
    }

    /**
     * Erlang C: chance that an arrival has to wait where all who find no server free wait. Cost O(servers).
     *
     * @param servers number of servers, {@code >= 1}
     * @param offeredLoad arrival rate times mean service time, erlang, in (0, servers)
     * @return probability in (0, 1)
     * @throws IllegalArgumentException if an argument is out of range
     */
    public static double waitingProbability(int servers, double offeredLoad) {
        double blocking = blockingProbability(servers, offeredLoad);
        double utilisation = offeredLoad / servers;
        Ranges.stable(utilisation);
        return blocking / (1 - utilisation * (1 - blocking));
    }
}
