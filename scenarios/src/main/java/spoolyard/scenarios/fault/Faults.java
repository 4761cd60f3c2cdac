package spoolyard.scenarios.fault;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;

/**
 * Collects faults and warnings while a scenario is read, so that all are told at once. Equal ones are kept once. Not
 * thread-safe; changed by everyone who reads.
 */
public final class Faults {
    /** Faults kept at most; a file full of faults has more than anybody reads. */
    public static final int MOST_KEPT = 1000;

    private final Set<Fault> faults = new LinkedHashSet<>();
    private final Set<Warning> warnings = new LinkedHashSet<>();

    /**
     * Adds a fault; beyond {@value #MOST_KEPT} it is dropped.
     *
     * @param fault the fault
     */
    public void add(Fault fault) {
        if (faults.size() < MOST_KEPT) {
            faults.add(fault);
        }
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
     * Number of faults so far; tells whether a part was read without a new one.
     *
     * @return count
     */
    public int count() {
        return faults.size();
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
        if (!faults.isEmpty()) {
            throw new ScenarioException(all());
        }
    }
}
