package spoolyard.core.process;

import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.TaskKind;
import spoolyard.core.record.LineState;
import spoolyard.core.record.ScrapCause;

/**
 * One step that a line goes through while it makes no product. Immutable.
 *
 * @param name what is done
 * @param state what the line is doing meanwhile
 * @param ticks how long, once the crew is there
 * @param waste what runs to waste meanwhile
 * @param crew who does it, {@link CrewNeed#NOBODY} if it runs by itself
 * @param kind kind of work
 * @param isChangeover whether it counts as part of the changeover
 */
record Step(String name, LineState state, long ticks, Waste waste, CrewNeed crew, TaskKind kind, boolean isChangeover) {
    /** Name of the step from cold to set point. */
    static final String HEAT_UP = "heat up";

    /**
     * What runs to waste.
     *
     * @param kgPerS rate of the whole line, kg/s; 0 if the screw stands
     * @param cause scrap cause
     * @param alsoWhileWaiting true: runs while the line waits for the crew as well
     */
    record Waste(double kgPerS, ScrapCause cause, boolean alsoWhileWaiting) {
        /** The screw stands. */
        static final Waste NONE = new Waste(0, ScrapCause.START_UP, false);
    }

    /** A step that runs by itself. */
    static Step alone(String name, LineState state, long ticks, Waste waste) {
        return new Step(name, state, ticks, waste, CrewNeed.NOBODY, TaskKind.SET_UP, false);
    }

    /** Whether it takes the line from cold to its set point. */
    boolean isHeatUp() {
        return state == LineState.STARTING && name.equals(HEAT_UP);
    }

    /** Whether what runs through is purge compound. */
    boolean isCompound() {
        return state == LineState.PURGING && waste.cause() == ScrapCause.POLYMER_PURGE;
    }

    /** The same step as part of a changeover. */
    Step inChangeover() {
        return new Step(name, state, ticks, waste, crew, kind, true);
    }
}
