package spoolyard.analysis.cli;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import picocli.CommandLine.Option;
import picocli.CommandLine.Parameters;
import spoolyard.analysis.report.Provenance;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** The scenario a command works on, and the values set over it. */
final class ScenarioArgument {
    @Parameters(paramLabel = "SCENARIO", description = "Folder with a plant.yaml, or a YAML file that varies one.")
    private Path path;

    @Option(
            names = "--set",
            paramLabel = "POINTER=VALUE",
            description = {
                "Set one value over those of the files, by JSON Pointer; may be given again.",
                "Example: --set /lines/L3/accumulator=\"80 m\""
            })
    private List<String> settings = new ArrayList<>();

    /**
     * Reads it.
     *
     * @return the scenario
     * @throws ScenarioException with all faults, if there are any
     */
    Scenario read() throws ScenarioException {
        return ScenarioReader.read(path, settings);
    }

    /**
     * Reads it with further values set over all others.
     *
     * @param more each as {@code pointer=value}
     * @return the scenario
     * @throws ScenarioException with all faults, if there are any
     */
    Scenario readWith(List<String> more) throws ScenarioException {
        List<String> all = new ArrayList<>(settings);
        all.addAll(more);
        return ScenarioReader.read(path, all);
    }

    /**
     * The values set over those of the files.
     *
     * @return each a pointer, an equals sign and YAML
     */
    List<String> settings() {
        return List.copyOf(settings);
    }

    /**
     * As it was given.
     *
     * @return folder or file
     */
    Path path() {
        return path;
    }

    /**
     * Its name, for a results folder.
     *
     * @return last part of the path without ending; that of the folder for a {@code plant.yaml}
     */
    String name() {
        return nameOf(path);
    }

    /**
     * What results of it follow from.
     *
     * @param read the scenario as it was read
     * @param seed master seed
     * @return version, name, content, values set and seed
     */
    Provenance provenance(Scenario read, long seed) {
        return provenance(path, read, seed);
    }

    /**
     * What results of a scenario follow from.
     *
     * @param path folder or file
     * @param read the scenario as it was read
     * @param seed master seed
     * @return version, name, content, values set and seed
     */
    static Provenance provenance(Path path, Scenario read, long seed) {
        return new Provenance(
                Version.number(),
                nameOf(path),
                read.info().contentHash(),
                read.info().sets(),
                seed);
    }

    /**
     * The name of a scenario.
     *
     * @param path folder or file
     * @return its name
     */
    static String nameOf(Path path) {
        Path whole = path.toAbsolutePath().normalize();
        Path last = whole.endsWith("plant.yaml") ? whole.getParent() : whole;
        Path name = last.getFileName();
        return name == null ? "scenario" : name.toString().replaceFirst("\\.ya?ml$", "");
    }
}
