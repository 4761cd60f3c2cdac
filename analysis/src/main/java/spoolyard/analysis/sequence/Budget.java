package spoolyard.analysis.sequence;

/**
 * How long a search may go on: until its iterations or its seconds are used up, or somebody stops it. One for each chain.
 * The stop comes from any thread; the rest is for one.
 */
final class Budget {
    private static final long LOOK_EVERY = 256;
    private static final double USUALLY_A_SECOND = 1e6;

    private final SearchLimit limit;
    private final Stop stop;
    private final double share;
    private long startNanos;
    private long done;
    private double progress;

    Budget(SearchLimit limit, double share, Stop stop) {
        this.limit = limit;
        this.share = share;
        this.stop = stop;
        this.startNanos = System.nanoTime();
    }

    /** Counts one iteration. */
    boolean goesOn() {
        if (done++ % LOOK_EVERY == 0) {
            look();
        }
        return progress < 1;
    }

    /** Counts some iterations at once. */
    boolean goesOn(long tries) {
        done += tries;
        look();
        return progress < 1;
    }

    private void look() {
        double byCount = done / (share * limit.iterations());
        double byTime = (System.nanoTime() - startNanos) * 1e-9 / (share * limit.seconds());
        progress = stop.isAsked() ? 1 : Math.max(byCount, byTime);
    }

    /** Share of the budget that is used up, 0 to 1. */
    double progress() {
        return Math.min(1, progress);
    }

    /** About how many iterations it allows in all; by time, at a usual speed of the search. */
    double iterations() {
        return share * Math.min(limit.iterations(), limit.seconds() * USUALLY_A_SECOND);
    }
}
