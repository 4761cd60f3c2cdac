package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class NewCommandTest {
    @TempDir
    private Path root;

    @Test
    void writesAScenarioThatRuns() {
        Path folder = root.resolve("a/my plant");

        Called made = Called.with("new", folder.toString());
        Called run = Called.with("run", folder.toString(), "--replications=2", "--out=" + root.resolve("results"));

        assertThat(made.code()).isZero();
        assertThat(made.out()).contains("spoolyard check \"" + folder + "\"", "spoolyard run \"" + folder + "\"");
        assertThat(run.code()).isZero();
        assertThat(run.err()).isEmpty();
        assertThat(run.out()).contains("Good spools");
    }

    @Test
    void takesAnEmptyFolder() throws IOException {
        Path folder = Files.createDirectory(root.resolve("mine"));

        assertThat(Called.with("new", folder.toString()).code()).isZero();
        assertThat(folder.resolve("plant.yaml")).isRegularFile();
    }

    @Test
    void refusesAFolderThatIsInUseAndLeavesItAlone() throws IOException {
        Path folder = Files.createDirectory(root.resolve("mine"));
        Path file = Files.writeString(folder.resolve("plant.yaml"), "mine");

        Called called = Called.with("new", folder.toString());

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err())
                .contains("Must be a new or empty folder; this one exists and is not empty.", "  Mend: ");
        assertThat(file).hasContent("mine");
    }

    @Test
    void refusesAFileAndAPathThroughAFile() throws IOException {
        Path file = Files.writeString(root.resolve("note.txt"), "mine");

        assertThat(Called.with("new", file.toString()).code()).isEqualTo(2);
        assertThat(Called.with("new", file.resolve("plant").toString()).code()).isEqualTo(2);
        assertThat(file).hasContent("mine");
    }
}
