package spoolyard.scenarios.check;

/** What the purge of a pair rests on. */
public enum PurgeBasis {
    /** Measured by the plant. */
    MEASURED,
    /** Estimated, within what was measured. */
    ESTIMATED,
    /** Estimated, outside of what was measured. */
    EXTRAPOLATED,
    /** By the shade-class formula. */
    FORMULA
}
