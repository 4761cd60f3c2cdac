package spoolyard.analysis.sequence;

/** Hears how far a search has come. Called on the thread that asked for the search. */
@FunctionalInterface
public interface SearchProgress {
    /** Hears nothing. */
    SearchProgress UNHEARD = (cost, bound, share) -> {};

    /**
     * A report, several times a second.
     *
     * @param cost of the best plan so far
     * @param bound no plan costs less; 0 as long as none is known
     * @param share of the limit that is used up, 0 to 1
     */
    void reached(double cost, double bound, double share);
}
