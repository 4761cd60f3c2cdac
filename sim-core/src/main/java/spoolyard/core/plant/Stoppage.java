package spoolyard.core.plant;

import java.util.Optional;

/**
 * One cause that interrupts a station again and again: strand break, breakdown, minor stop, screen change. Immutable.
 *
 * @param name name used in files and reports
 * @param scope whole station or one strand
 * @param clock what brings the next one nearer
 * @param untilNext from the end of one to the beginning of the next: seconds for the time clocks, kg for the mass clock
 * @param durationS work to put it right once the crew is there, seconds
 * @param crew who puts it right
 * @param effect whether the station stops or runs to waste meanwhile; finishing stations always stop
 * @param restart what a line does before it makes product again; finishing stations ignore it
 * @param stabiliseS stabilising time after this cause where it differs from the line's own, seconds
 * @param beginsAtFullSpool true: waits for the next full spool (a planned stop); false: strikes at once
 * @param planned true: counts as planned down time in OEE
 */
public record Stoppage(
        String name,
        Scope scope,
        Clock clock,
        Law untilNext,
        Law durationS,
        CrewNeed crew,
        Effect effect,
        Restart restart,
        Optional<Law> stabiliseS,
        boolean beginsAtFullSpool,
        boolean planned) {
    /** What the cause interrupts. */
    public enum Scope {
        /** The whole line or one server of a finishing station. */
        STATION,
        /** One strand; the others go on. Each strand has its own clock. */
        STRAND
    }

    /** What brings the next one nearer. */
    public enum Clock {
        /** Time while the station makes product. */
        RUNNING_TIME,
        /** All time. */
        CALENDAR_TIME,
        /** Mass made, kg (lines: all that passes the die while making product; finishing
         * stations: spool mass, counted when a batch is done). */
        MASS
    }

    /** What the station does meanwhile. */
    public enum Effect {
        /** The screw stops. */
        STOPS,
        /** The extruder runs on and its output is scrap. */
        RUNS_TO_WASTE
    }

    /** What a line does before it makes product again. */
    public enum Restart {
        /** Goes on where it stood, with the spool in progress. */
        NONE,
        /** Stabilises; the spool in progress is cut short. */
        STABILISE,
        /** Threads up and stabilises; the spool in progress is cut short. */
        THREAD_UP,
        /** Heats up, soaks, threads up and stabilises; the spool in progress is cut short. */
        COLD_START
    }
}
