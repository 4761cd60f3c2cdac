package spoolyard.analysis.cli;

import java.io.IOException;
import java.util.LinkedHashSet;
import java.util.Optional;
import java.util.Set;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.ScenarioException;

/** Gathers what is wrong with the options of a call and its scenario, so that one report has it all. */
final class OptionFaults {
    private final Set<String> told = new LinkedHashSet<>();

    /**
     * Looks at one thing.
     *
     * @param check throws if it is wrong
     * @throws IOException if a file cannot be read
     */
    void check(Check check) throws IOException {
        read(() -> {
            check.run();
            return true;
        });
    }

    /**
     * Reads one thing.
     *
     * @param <T> what
     * @param reading throws if it is wrong
     * @return empty if it is wrong
     * @throws IOException if a file cannot be read
     */
    <T> Optional<T> read(Reading<T> reading) throws IOException {
        try {
            return Optional.of(reading.run());
        } catch (ScenarioException wrong) {
            wrong.faults().stream().map(Fault::text).forEach(told::add);
        } catch (InputException | ResultsRefusedException wrong) {
            told.add(wrong.getMessage());
        }
        return Optional.empty();
    }

    /**
     * Ends the gathering.
     *
     * @throws InputException with every fault, each once
     */
    void throwIfAny() throws InputException {
        if (!told.isEmpty()) {
            throw new InputException(told);
        }
    }

    /** Looks at something. */
    @FunctionalInterface
    interface Check {
        void run() throws InputException, ScenarioException, ResultsRefusedException, IOException;
    }

    /**
     * Reads something.
     *
     * @param <T> what
     */
    @FunctionalInterface
    interface Reading<T> {
        T run() throws InputException, ScenarioException, ResultsRefusedException, IOException;
    }
}
