package spoolyard.scenarios.format;

import java.io.IOException;
import java.io.InputStream;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.read.SourceFiles;

/** Writes a small commented scenario that runs, with the schema beside it for editors. */
public final class StarterScenario {
    private static final List<String> TABLES = List.of("orders.csv", "colours.csv");

    private StarterScenario() {}

    /**
     * Writes the scenario.
     *
     * @param folder a folder that is empty or not there yet; folders above it are made
     * @return the files written
     * @throws ScenarioException if the folder holds anything, or cannot be written to
     */
    public static List<Path> write(Path folder) throws ScenarioException {
        try {
            if (Files.exists(folder) && !isEmptyFolder(folder)) {
                throw refusal(folder, "Must be a new or empty folder; this one exists and is not empty.");
            }
            Files.createDirectories(folder);
            return writeInto(folder);
        } catch (IOException e) {
            throw refusal(
                    folder,
                    "Must be a folder that can be written to (" + e.getClass().getSimpleName() + ").");
        }
    }

    private static boolean isEmptyFolder(Path folder) throws IOException {
        if (!Files.isDirectory(folder)) {
            return false;
        }
        try (Stream<Path> inside = Files.list(folder)) {
            return inside.findAny().isEmpty();
        }
    }

    private static List<Path> writeInto(Path folder) throws IOException {
        Path plant = folder.resolve(BaseChain.PLANT_FILE);
        String editorLine = "# yaml-language-server: $schema=" + ScenarioSchema.FILE + "\n";
        Files.writeString(plant, editorLine + new String(resource(BaseChain.PLANT_FILE), StandardCharsets.UTF_8));
        for (String table : TABLES) {
            Files.write(folder.resolve(table), resource(table));
        }
        Path schema = folder.resolve(ScenarioSchema.FILE);
        try (InputStream in = ScenarioSchema.open()) {
            Files.copy(in, schema);
        }
        return Stream.concat(Stream.of(plant), Stream.concat(TABLES.stream().map(folder::resolve), Stream.of(schema)))
                .toList();
    }

    private static byte[] resource(String name) throws IOException {
        try (InputStream in = StarterScenario.class.getResourceAsStream("/spoolyard/scenarios/starter/" + name)) {
            if (in == null) {
                throw new IllegalStateException(name + " = (missing). Must be on the class path.");
            }
            return in.readAllBytes();
        }
    }

    private static ScenarioException refusal(Path folder, String allowed) {
        String shown = SourceFiles.shown(folder);
        Fault fault = new Fault(
                FaultKind.NOT_WRITABLE,
                new Origin(shown, 0, "folder"),
                shown,
                allowed,
                "name another folder; nothing was changed");
        return new ScenarioException(List.of(fault));
    }
}
