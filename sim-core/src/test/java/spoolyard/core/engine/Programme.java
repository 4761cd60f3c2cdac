package spoolyard.core.engine;

import java.util.List;

/**
 * A made-up simulation for comparing agendas: what is done before the run, and what each event does when it happens.
 *
 * @param before steps before the run
 * @param during steps taken one by one, {@code stepsPerEvent} at each event, until they are used up
 * @param stepsPerEvent steps an event takes
 */
record Programme(List<Step> before, List<Step> during, int stepsPerEvent) {
    static final int EVENTS = 200;

    /** Kinds of step. */
    enum Kind {
        SCHEDULE_IF_FREE,
        MOVE,
        CANCEL
    }

    /**
     * One step.
     *
     * @param kind what
     * @param event which event, {@code 0 .. EVENTS - 1}; event i has phase i modulo the number of phases
     * @param delay ticks from now, ignored when cancelling
     */
    record Step(Kind kind, int event, long delay) {}

    static Phase phaseOf(int event) {
        return Phase.values()[event % Phase.values().length];
    }
}
