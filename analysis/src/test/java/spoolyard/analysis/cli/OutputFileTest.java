package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assumptions.assumeThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class OutputFileTest {
    @TempDir
    private Path folder;

    @Test
    void replacesAFileAndLeavesNothingElseBehind() throws IOException {
        Path file = folder.resolve("new").resolve("a.csv");

        OutputFile.write(file, "old");
        OutputFile.write(file, "new");

        assertThat(file).hasContent("new");
        try (Stream<Path> all = Files.list(file.getParent())) {
            assertThat(all).containsExactly(file);
        }
    }

    @Test
    void mayBeReadByWhomeverTheSystemLetsReadNewFiles() throws IOException {
        assumeThat(Files.getFileStore(folder).supportsFileAttributeView("posix"))
                .isTrue();
        Path file = folder.resolve("a.csv");

        OutputFile.write(file, "text");

        assertThat(Files.getPosixFilePermissions(file))
                .isEqualTo(Files.getPosixFilePermissions(Files.createFile(folder.resolve("usual.csv"))));
    }
}
