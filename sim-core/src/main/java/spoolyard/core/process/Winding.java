package spoolyard.core.process;

/** How a winder takes up its strand. */
enum Winding {
    STANDING,
    FOLLOWING,
    CATCHING_UP
}
