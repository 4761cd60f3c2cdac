package spoolyard.core.process;

import spoolyard.core.record.OverflowCause;

/** The winder's spool positions of one strand and the work of changing spools. */
interface Spindle {
    /** Whether an empty spool is on and the winder may turn. */
    boolean isReady();

    /** The spool in progress is full; the winder stands. */
    void spoolFull(Spool spool);

    /** What holds the change that is under way. */
    OverflowCause holdUp();
}
