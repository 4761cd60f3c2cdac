package spoolyard.core.process;

/** How the winder of a strand moves. */
enum Winding {
    /** It stands. */
    STANDING,
    /** It follows the line, with the accumulator at home. */
    FOLLOWING,
    /** It winds at its highest speed until the accumulator is home. */
    CATCHING_UP
}
