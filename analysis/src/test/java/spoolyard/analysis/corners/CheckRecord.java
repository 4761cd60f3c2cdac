package spoolyard.analysis.corners;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardOpenOption;

/**
 * Keeps what the corners gave since the last clean build in {@code target/corners.csv}, from which the tables of
 * {@code docs/checks.md} are made.
 */
final class CheckRecord {
    private static final Path FILE = Path.of("target", "corners.csv");

    private CheckRecord() {}

    static synchronized void note(String row) {
        try {
            if (Files.notExists(FILE)) {
                Files.writeString(FILE, "check,theory,simulated,half_width_99,replications\n");
            }
            Files.writeString(FILE, row + "\n", StandardOpenOption.APPEND);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }
}
