package spoolyard.scenarios;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.check.PlantReader;
import spoolyard.scenarios.check.ReadPlant;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.format.ScenarioTree;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceFiles;

/**
 * Reads scenarios from files. Stateless.
 *
 * <pre>{@code
 * Scenario scenario = ScenarioReader.read(Path.of("scenarios/orrenvale"), List.of("/lines/L3/accumulator=80 m"));
 * }</pre>
 */
public final class ScenarioReader {
    private ScenarioReader() {}

    /**
     * Reads a scenario with all the files it names.
     *
     * @param folderOrFile a folder with a {@code plant.yaml}, or a YAML file; faults name files relative to it as given
     * @param sets values that override those of the files, each a JSON Pointer, {@code =} and YAML
     * @return the scenario
     * @throws ScenarioException if anything is wrong, with every fault that could be found
     */
    public static Scenario read(Path folderOrFile, List<String> sets) throws ScenarioException {
        return read(folderOrFile, sets, Reading.begin());
    }

    static Scenario read(Path folderOrFile, List<String> sets, Reading reading) throws ScenarioException {
        SourceFiles files = new SourceFiles(reading.faults());
        Optional<Node.Mapping> tree = new ScenarioTree(files, reading.faults()).load(folderOrFile, sets);
        if (tree.isEmpty()) {
            throw new ScenarioException(reading.faults().all());
        }
        ReadPlant read = PlantReader.read(tree.get(), files, reading);
        reading.faults().throwIfAny();
        return new Scenario(
                read.plant(), info(read, files, sets), reading.faults().warnings(), read.purge());
    }

    private static ScenarioInfo info(ReadPlant read, SourceFiles files, List<String> sets) {
        return new ScenarioInfo(
                read.plant().name(),
                read.description(),
                read.clock().start(),
                read.clock().end(),
                read.shiftNames(),
                files.names(),
                sets,
                files.contentHash());
    }
}
