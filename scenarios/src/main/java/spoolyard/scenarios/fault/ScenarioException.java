package spoolyard.scenarios.fault;

import java.util.Collection;
import java.util.Comparator;
import java.util.List;
import java.util.stream.Collectors;

/** A scenario that cannot be run. Carries every fault found, by file and line. Immutable. */
public final class ScenarioException extends Exception {
    private static final long serialVersionUID = 1L;

    private final transient List<Fault> faults;

    /**
     * A scenario with faults.
     *
     * @param faults at least one
     */
    public ScenarioException(List<Fault> faults) {
        this.faults = faults.stream()
                .sorted(Comparator.comparing(Fault::file).thenComparingInt(Fault::line))
                .toList();
    }

    /**
     * Throws if anything is wrong.
     *
     * @param faults those of one scenario, or of several that were read in turn; may be empty
     * @throws ScenarioException with all of them, if there are any
     */
    public static void throwIfAny(Collection<Fault> faults) throws ScenarioException {
        if (!faults.isEmpty()) {
            throw new ScenarioException(List.copyOf(faults));
        }
    }

    /**
     * All faults, by file and line.
     *
     * @return at least one
     */
    public List<Fault> faults() {
        return faults;
    }

    /**
     * All faults as they are shown to people.
     *
     * @return two lines a fault, without a final line break
     */
    @Override
    public String getMessage() {
        return faults.stream().map(Fault::text).collect(Collectors.joining("\n"));
    }
}
