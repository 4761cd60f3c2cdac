package spoolyard.analysis.report;

import java.util.List;

/**
 * Where results come from: with the same scenario, seed and version anybody gets the same. Immutable.
 *
 * @param version version of the program
 * @param scenario name of the scenario as it was given
 * @param scenarioHash hash of all that the scenario says
 * @param settings values set on the command line, as {@code pointer=value}
 * @param masterSeed seed of the experiment
 */
public record Provenance(String version, String scenario, String scenarioHash, List<String> settings, long masterSeed) {
    /** Copies the list. */
    public Provenance {
        settings = List.copyOf(settings);
    }
}
