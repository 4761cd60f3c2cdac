package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.catchThrowableOfType;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Pattern;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.ScenarioException;

/** A scenario folder that is sound until a test spoils it. */
public final class ScenarioFolder {
    /** The scenario of the test resources that uses every key. */
    public static final Path EVERYTHING = Path.of("src/test/resources/everything");

    private final Path folder;

    private ScenarioFolder(Path folder) {
        this.folder = folder;
    }

    /** A copy of the scenario that uses every key. */
    public static ScenarioFolder everything(Path parent) {
        return copy(EVERYTHING, parent);
    }

    static ScenarioFolder copy(Path source, Path parent) {
        try {
            Path folder = Files.createDirectories(parent.resolve(source.getFileName()));
            for (String name : List.of("plant.yaml", "orders.csv", "colours.csv", "changeovers.csv")) {
                if (Files.exists(source.resolve(name))) {
                    Files.copy(source.resolve(name), folder.resolve(name));
                }
            }
            return new ScenarioFolder(folder);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    Path path() {
        return folder;
    }

    /** Replaces a text that must stand exactly once in the file. */
    public ScenarioFolder replace(String file, String old, String replacement) {
        String text = text(file);
        assertThat(text.split(Pattern.quote(old), -1))
                .as("times that <%s> stands in %s", old, file)
                .hasSize(2);
        return write(file, text.replace(old, replacement));
    }

    ScenarioFolder append(String file, String more) {
        return write(file, text(file) + more);
    }

    ScenarioFolder write(String file, String text) {
        return write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    ScenarioFolder write(String file, byte[] bytes) {
        try {
            Files.createDirectories(folder.resolve(file).getParent());
            Files.write(folder.resolve(file), bytes);
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    ScenarioFolder delete(String file) {
        try {
            Files.delete(folder.resolve(file));
            return this;
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    String text(String file) {
        try {
            return Files.readString(folder.resolve(file));
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /** File name as messages show it. */
    String shown(String file) {
        return folder.resolve(file).toString();
    }

    /** Place of the line on which a text begins that stands once, as messages show it. */
    public String at(String file, String text) {
        String before = text(file).split(Pattern.quote(text), -1)[0];
        return shown(file) + ":" + (1 + before.chars().filter(c -> c == '\n').count());
    }

    /** Reads the scenario, which must be sound. */
    public Scenario read(String... sets) {
        return readOf(folder, sets);
    }

    static Scenario readOf(Path folderOrFile, String... sets) {
        try {
            return ScenarioReader.read(folderOrFile, List.of(sets));
        } catch (ScenarioException e) {
            throw new AssertionError("not sound:\n" + e.getMessage(), e);
        }
    }

    /** Reads the scenario, which must have faults. */
    public List<Fault> faults(String... sets) {
        return faultsOf(folder, sets);
    }

    static List<Fault> faultsOf(Path folderOrFile, String... sets) {
        ScenarioException thrown =
                catchThrowableOfType(ScenarioException.class, () -> ScenarioReader.read(folderOrFile, List.of(sets)));
        assertThat(thrown).as("faults of " + folderOrFile).isNotNull();
        return thrown.faults();
    }

    /** Reads the scenario, which must have exactly one fault. */
    public Fault onlyFault(String... sets) {
        List<Fault> faults = faults(sets);
        assertThat(faults).as("faults").hasSize(1);
        return faults.get(0);
    }
}
