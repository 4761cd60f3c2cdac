package spoolyard.scenarios.fault;

import java.util.ArrayList;
import java.util.EnumSet;
import java.util.HashSet;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects faults and warnings while one scenario is read, so that all are told at once. Equal ones are kept once, and a value
 * that cannot be read, or is not there, has one fault: what else is wrong at its place follows from that. Not thread-safe;
 * changed by everyone who reads.
 */
public final class Faults {
    /** Faults kept at most; a file full of faults has more than anybody reads. */
    public static final int MOST_KEPT = 1000;

    private static final Set<FaultKind> UNREADABLE = EnumSet.of(
            FaultKind.MISSING_VALUE,
            FaultKind.UNKNOWN_KEY,
            FaultKind.WRONG_SHAPE,
            FaultKind.NOT_A_VALUE,
            FaultKind.WRONG_UNIT,
            FaultKind.OUT_OF_RANGE);

    private final Set<Fault> faults = new LinkedHashSet<>();
    private final Set<Origin> unreadable = new HashSet<>();
    private final Set<String> topics = new HashSet<>();
    private final Set<Warning> warnings = new LinkedHashSet<>();
    private int told;

    /**
     * Adds a fault; beyond {@value #MOST_KEPT} it is dropped.
     *
     * @param fault the fault
     */
    public void add(Fault fault) {
        told++;
        Origin place = place(fault);
        if (unreadable.contains(place) || faults.size() >= MOST_KEPT) {
            return;
        }
        faults.add(fault);
        if (UNREADABLE.contains(fault.kind())) {
            unreadable.add(place);
        }
    }

    /**
     * Adds a fault unless there was one on the same topic before.
     *
     * @param topic what it is about
     * @param fault the fault
     */
    public void addOnce(String topic, Fault fault) {
        if (topics.add(topic)) {
            add(fault);
        } else {
            told++;
        }
    }

    /**
     * Takes a fault back that another explains better, which is to be added next.
     *
     * @param fault a fault that was added
     */
    public void takeBack(Fault fault) {
        faults.remove(fault);
        unreadable.remove(place(fault));
    }

    /** A key has one value, and what is not there stands on no line; a table has a column many times. */
    private static Origin place(Fault fault) {
        Origin origin = fault.origin();
        return origin.field().startsWith("/") ? origin.onLine(0) : origin;
    }

    /**
     * Adds a warning.
     *
     * @param warning the warning
     */
    public void add(Warning warning) {
        warnings.add(warning);
    }

    /**
     * How many faults were told so far, each time that one was; tells whether a part was read without any.
     *
     * @return count, not less than that of {@link #all()}
     */
    public int count() {
        return told;
    }

    /**
     * Whether there is no fault so far.
     *
     * @return true if none
     */
    public boolean isEmpty() {
        return faults.isEmpty();
    }

    /**
     * Faults so far.
     *
     * @return in the order in which they were found
     */
    public List<Fault> all() {
        return new ArrayList<>(faults);
    }

    /**
     * Warnings so far.
     *
     * @return in the order in which they were found
     */
    public List<Warning> warnings() {
        return new ArrayList<>(warnings);
    }

    /**
     * Ends the reading if anything is wrong.
     *
     * @throws ScenarioException with all faults, if there is any
     */
    public void throwIfAny() throws ScenarioException {
        ScenarioException.throwIfAny(faults);
    }
}
