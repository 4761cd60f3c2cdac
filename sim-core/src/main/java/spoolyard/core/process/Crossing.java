package spoolyard.core.process;

/** The level of a strand that is reached next. */
enum Crossing {
    /** None. */
    NONE,
    /** The spool is full. */
    SPOOL_FULL,
    /** The accumulator is at home. */
    HOME,
    /** The accumulator is so full that the line slows. */
    SLOW_LEVEL,
    /** The accumulator is full. */
    CAPACITY
}
