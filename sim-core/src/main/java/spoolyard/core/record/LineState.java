package spoolyard.core.record;

/** What a line is doing; at every instant exactly one. */
public enum LineState {
    /** Makes product at normal speed. */
    RUNNING("running", true),
    /** Makes product at reduced speed because an accumulator is nearly full. */
    SLOWED("slowed", true),
    /** Runs to waste to wash out the old colour or polymer. */
    PURGING("purging", true),
    /** Runs to waste while the first article's colour is judged. */
    APPROVAL("colour approval", true),
    /** A person works on a step of a changeover. */
    SET_UP("set-up", true),
    /** Heats, soaks, threads up or stabilises. */
    STARTING("starting", true),
    /** Shuts down in good order. */
    SHUTTING_DOWN("shutting down", true),
    /** An unplanned stoppage is being put right. */
    DOWN("down", true),
    /** A planned stop: maintenance, screen change. */
    PLANNED_STOP("planned stop", true),
    /** Stands because nobody is there to do the next step or to put right a stoppage. */
    WAITING_FOR_CREW("waiting for crew", false),
    /** Stands because an accumulator is full and nobody has swapped the spool. */
    OVERFLOW_STOP("overflow stop", false),
    /** Stands because its next material is not dry yet, or its hopper has run empty. */
    WAITING_FOR_MATERIAL("waiting for material", false),
    /** Stands because the store has no resin for its order. */
    NO_RESIN("no resin", false),
    /** Stands because the store has no colour concentrate for its order. */
    NO_CONCENTRATE("no concentrate", false),
    /** Stands because the store has no empty spools for its order. */
    NO_EMPTY_SPOOL("no empty spool", false),
    /** Hot, with no order it may make. */
    NO_ORDER("no order", false),
    /** Outside its working period. */
    NOT_SCHEDULED("not scheduled", false);

    private final String label;
    private final boolean active;

    LineState(String label, boolean active) {
        this.label = label;
        this.active = active;
    }

    /**
     * Name for people and files.
     *
     * @return lower-case words
     */
    public String label() {
        return label;
    }

    /**
     * Whether the line holds up the flow by its own doing in this state (an active period in the sense of Roser,
     * Nakano and Tanaka 2001: working, being repaired, being set up), rather than waiting for something else.
     *
     * @return true if active
     */
    public boolean isActive() {
        return active;
    }
}
