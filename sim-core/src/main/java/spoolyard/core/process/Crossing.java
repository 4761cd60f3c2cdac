package spoolyard.core.process;

/** What a strand comes to next. */
enum Crossing {
    /** Nothing of itself. */
    NONE,
    /** The spool is full. */
    SPOOL_FULL,
    /** The accumulator is home. */
    HOME,
    /** The accumulator is at the level at which the line slows down. */
    SLOW_LEVEL,
    /** The accumulator is full. */
    CAPACITY
}
