package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;

/** Writes a file so that it is there whole or not at all. */
final class WholeFile {
    private WholeFile() {}

    /**
     * Writes it beside its place first and moves it there; folders are made, a file that is there is replaced.
     *
     * @param file where
     * @param bytes what
     * @throws IOException if it cannot be written
     */
    static void write(Path file, byte[] bytes) throws IOException {
        Path whole = file.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        Path partial = Files.createTempFile(whole.getParent(), ".", ".partial");
        try {
            Files.write(partial, bytes);
            Files.move(partial, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
