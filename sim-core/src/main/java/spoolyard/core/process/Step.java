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
 * @param heat what it does to the heaters
 */
record Step(
        String name,
        LineState state,
        long ticks,
        Waste waste,
        CrewNeed crew,
        TaskKind kind,
        boolean isChangeover,
        Heat heat) {
    /** What a step does to the heaters. */
    enum Heat {
        /** Leaves them as they are. */
        KEPT,
        /** Takes the line from cold to its set points. */
        FROM_COLD,
        /** Takes the line from its set points to others. */
        MOVED
    }

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

    Step(String name, LineState state, long ticks, Waste waste, CrewNeed crew, TaskKind kind, boolean isChangeover) {
        this(name, state, ticks, waste, crew, kind, isChangeover, Heat.KEPT);
    }

    /** A step that runs by itself. */
    static Step alone(String name, LineState state, long ticks, Waste waste) {
        return new Step(name, state, ticks, waste, CrewNeed.NOBODY, TaskKind.SET_UP, false);
    }

    /** From cold to set point. */
    static Step heatUp(long ticks) {
        return heating("heat up", LineState.STARTING, ticks, Heat.FROM_COLD);
    }

    /** From one set point to another. */
    static Step temperatureMove(long ticks) {
        return heating("temperature", LineState.SET_UP, ticks, Heat.MOVED);
    }

    private static Step heating(String name, LineState state, long ticks, Heat heat) {
        return new Step(name, state, ticks, Waste.NONE, CrewNeed.NOBODY, TaskKind.SET_UP, false, heat);
    }

    boolean isHeatUp() {
        return heat == Heat.FROM_COLD;
    }

    boolean isTemperatureMove() {
        return heat == Heat.MOVED;
    }

    /** Whether what runs through is purge compound. */
    boolean isCompound() {
        return state == LineState.PURGING && waste.cause() == ScrapCause.POLYMER_PURGE;
    }

    /** The same step as part of a changeover. */
    Step inChangeover() {
        return new Step(name, state, ticks, waste, crew, kind, true, heat);
    }
}
