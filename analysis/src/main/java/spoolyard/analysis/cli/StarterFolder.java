package spoolyard.analysis.cli;

import java.io.IOException;
import java.io.InputStream;
import java.nio.file.FileAlreadyExistsException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Objects;
import java.util.stream.Stream;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.scenarios.ScenarioReader;

/** The starter scenario that is shipped with the program. */
final class StarterFolder {
    /** Its files. */
    static final List<String> FILES = List.of("plant.yaml", "orders.csv", "colours.csv");

    private StarterFolder() {}

    /**
     * Writes it.
     *
     * @param folder where to; made if it is not there
     * @throws ResultsRefusedException if something is there
     * @throws IOException if a file cannot be written
     */
    static void write(Path folder) throws ResultsRefusedException, IOException {
        if (Files.exists(folder) && !isEmptyFolder(folder)) {
            throw refused(folder, "Is there already. Must not be there yet, or be an empty folder.");
        }
        try {
            Files.createDirectories(folder);
        } catch (FileAlreadyExistsException wayIsBarred) {
            throw refused(folder, "Lies beyond a file. Must lie in a folder.");
        }
        for (String name : FILES) {
            try (InputStream in = ScenarioReader.class.getResourceAsStream("starter/" + name)) {
                Files.copy(Objects.requireNonNull(in, name), folder.resolve(name));
            }
        }
    }

    private static ResultsRefusedException refused(Path folder, String rule) {
        return new ResultsRefusedException(folder.toString(), rule, "give another folder");
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> children = Files.list(folder)) {
            return children.findAny().isEmpty();
        }
    }
}
