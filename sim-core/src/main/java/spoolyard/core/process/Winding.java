package spoolyard.core.process;

/** What the winder of a strand does. */
enum Winding {
    /** No empty spool is on, or nothing comes. */
    STANDING,
    /** At the speed of what comes, with the accumulator home. */
    FOLLOWING,
    /** At its highest speed, until the accumulator is home. */
    CATCHING_UP
}
