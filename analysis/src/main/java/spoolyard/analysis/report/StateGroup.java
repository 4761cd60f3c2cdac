package spoolyard.analysis.report;

import java.awt.Color;
import java.util.List;
import spoolyard.core.record.LineState;

/** States of a line that mean much the same to a reader, in the order in which pictures stack them. */
enum StateGroup {
    /** Makes product. */
    RUNNING("running", Palette.PETROL, LineState.RUNNING),
    /** Makes product at reduced speed. */
    SLOWED("slowed", Palette.SKY, LineState.SLOWED),
    /** Between two products. */
    CHANGEOVER("changeover", Palette.MUSTARD, LineState.SET_UP, LineState.PURGING, LineState.APPROVAL),
    /** Comes up or goes down. */
    START_AND_STOP("start and stop", Palette.STRAW, LineState.STARTING, LineState.SHUTTING_DOWN),
    /** Is being put right. */
    DOWN("down", Palette.RED, LineState.DOWN),
    /** Stands by plan. */
    PLANNED_STOP("planned stop", Palette.INDIGO, LineState.PLANNED_STOP),
    /** Waits for a person. */
    NO_CREW("no crew", Palette.CORAL, LineState.WAITING_FOR_CREW, LineState.OVERFLOW_STOP),
    /** Waits for dry material, or for what the store has run out of. */
    NO_MATERIAL(
            "no material",
            Palette.VIOLET,
            LineState.WAITING_FOR_MATERIAL,
            LineState.NO_RESIN,
            LineState.NO_CONCENTRATE,
            LineState.NO_EMPTY_SPOOL),
    /** Has nothing to make. */
    NO_ORDER("no order", Palette.STONE, LineState.NO_ORDER),
    /** Is not meant to run. */
    NOT_SCHEDULED("not scheduled", Palette.MIST, LineState.NOT_SCHEDULED);

    /** What takes planned busy time away from making product. */
    static final List<StateGroup> LOSSES = List.of(CHANGEOVER, START_AND_STOP, DOWN, NO_CREW, NO_MATERIAL, NO_ORDER);

    private final String label;
    private final Color colour;
    private final List<LineState> states;

    StateGroup(String label, Color colour, LineState... states) {
        this.label = label;
        this.colour = colour;
        this.states = List.of(states);
    }

    String label() {
        return label;
    }

    Color colour() {
        return colour;
    }

    List<LineState> states() {
        return states;
    }
}
