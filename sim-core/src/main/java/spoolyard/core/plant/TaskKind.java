package spoolyard.core.plant;

/** Kinds of work that call for a person. The order here is the order of service where a role names none. */
public enum TaskKind {
    /** Full spool off, empty spool on. */
    SPOOL_SWAP("spool swap"),
    /** Put right a stoppage. */
    STOPPAGE("stoppage"),
    /** Thread a strand. */
    THREAD_UP("thread-up"),
    /** Step of a changeover. */
    SET_UP("set-up"),
    /** Judge the first article's colour. */
    APPROVAL("approval"),
    /** Clean a dryer, weigh, blend and load material. */
    MATERIAL("material"),
    /** Shut a line down. */
    SHUT_DOWN("shut-down"),
    /** Seal spools. */
    SEALING("sealing"),
    /** Pack spools. */
    PACKING("packing"),
    /** Test a lot. */
    LAB_TEST("lab test"),
    /** Sort, re-spool or dry spools again. */
    REWORK("rework");

    private final String label;

    TaskKind(String label) {
        this.label = label;
    }

    /**
     * Name for people and files.
     *
     * @return lower-case words
     */
    public String label() {
        return label;
    }
}
