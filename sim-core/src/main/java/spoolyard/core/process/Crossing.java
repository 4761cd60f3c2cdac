package spoolyard.core.process;

/** At what a strand's level or spool changes its slope next. */
enum Crossing {
    NONE,
    SPOOL_FULL,
    HOME,
    SLOW_LEVEL,
    CAPACITY
}
