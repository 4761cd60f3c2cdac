package spoolyard.core.plant;

/** Kinds of work that call for a person. The order here is the order of service where a role names none. */
public enum TaskKind {
    /** Full spool off, empty spool on. */
    SPOOL_SWAP,
    /** Put right a stoppage. */
    STOPPAGE,
    /** Thread a strand. */
    THREAD_UP,
    /** Step of a changeover. */
    SET_UP,
    /** Judge the first article's colour. */
    APPROVAL,
    /** Clean a dryer, weigh, blend and load material. */
    MATERIAL,
    /** Shut a line down. */
    SHUT_DOWN,
    /** Seal spools. */
    SEALING,
    /** Pack spools. */
    PACKING,
    /** Test a lot. */
    LAB_TEST,
    /** Sort, re-spool or dry spools again. */
    REWORK
}
