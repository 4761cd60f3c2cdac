package spoolyard.core.process;

/** What a stoppage strikes. */
interface Struck {
    /** The clock of a cause has run out. */
    void struckBy(StoppageClock cause);
}
