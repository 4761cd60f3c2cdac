package spoolyard.analysis.sequence;

/** Hears of each better plan. Called from the threads of the search. */
@FunctionalInterface
interface SearchWatch {
    /** Hears nothing. */
    SearchWatch UNHEARD = cost -> {};

    /** A plan that costs less than all before it in this chain. */
    void found(double cost);
}
