package spoolyard.core.plant;

/** What a line does when its working period ends. */
public enum EndOfPeriod {
    /** Stops in good order so that it is cold when the period ends; the next period begins with a cold start. */
    SHUT_DOWN,
    /** Screw off and heat on until the next period; beyond the polymer's limit the melt is purged before making again. */
    HOT_STANDBY,
    /** Goes on running with nobody there: the spools fill, the accumulators fill, the overflow policy decides. */
    RUN_ON
}
