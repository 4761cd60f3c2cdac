package spoolyard.core.record;

/** Why material that passed the die, or a spool that was wound, did not become a good spool. */
public enum ScrapCause {
    /** Heating up, threading and stabilising after a cold start, with the first melt volumes. */
    START_UP("start-up"),
    /** Emptying the screw at shut-down. */
    SHUT_DOWN("shut-down"),
    /** Washing out the old colour. */
    COLOUR_PURGE("colour purge"),
    /** Washing out the old polymer, purge compound included. */
    POLYMER_PURGE("polymer purge"),
    /** Run to waste while the colour was judged, and purge after a refusal. */
    APPROVAL("colour approval"),
    /** Run to waste during a stoppage, and threading and stabilising after it. */
    STOPPAGE("stoppage"),
    /** Part spool and accumulator contents when the strand was cut by a stoppage, a planned stop or a shut-down. */
    SHORT_SPOOL("short spool"),
    /** Accumulator contents and part spools at the end of an order. */
    ORDER_TAIL("order tail"),
    /** Accumulator full during a spool swap. */
    OVERFLOW("overflow"),
    /** Out of tolerance while slowed for a full accumulator. */
    SLOWED("slowed"),
    /** Full spool rejected at the winder. */
    WINDING_DEFECT("winding defect"),
    /** Run to waste while out of tolerance. */
    OUT_OF_TOLERANCE("out of tolerance"),
    /** Part spool and accumulator contents when the gauge cut the strand. */
    GAUGE_CUT("gauge cut"),
    /** Full spool with filament out of tolerance on it, flagged and then rejected. */
    FLAGGED_SPOOL("flagged spool"),
    /** Spool of a lot that the lab refused, ground or sorted out. */
    REFUSED_BY_LAB("refused by lab"),
    /** Spool that stood unsealed too long. */
    EXPOSURE("exposure"),
    /** Spools held for their colour and refused, with what was on the strands at the refusal. */
    REFUSED_COLOUR("refused colour");

    private final String label;

    ScrapCause(String label) {
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
