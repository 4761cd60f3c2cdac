package spoolyard.analysis.cli;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.Locale;

/** A file that is asked for by name. */
final class OutputFile {
    private OutputFile() {}

    /**
     * Checks a name before any work is done.
     *
     * @param option that named it
     * @param file where it is to be; null if it was not asked for
     * @param ending what the name must end in
     * @throws InputException if the name ends otherwise, or there is a folder of that name
     */
    static void check(String option, Path file, String ending) throws InputException {
        if (file != null && (!file.toString().toLowerCase(Locale.ROOT).endsWith(ending) || Files.isDirectory(file))) {
            throw new InputException(
                    option + " = " + file, "Must be a file name that ends in " + ending + ".", "write such a name");
        }
    }

    /**
     * Writes text, beside its place first and then moved there; folders are made, a file that is there is replaced.
     *
     * @param file where
     * @param text what
     * @throws IOException if it cannot be written
     */
    static void write(Path file, String text) throws IOException {
        write(file, text.getBytes(StandardCharsets.UTF_8));
    }

    /**
     * Writes bytes, as above.
     *
     * @param file where
     * @param bytes what
     * @throws IOException if it cannot be written
     */
    static void write(Path file, byte[] bytes) throws IOException {
        Path whole = file.toAbsolutePath();
        Files.createDirectories(whole.getParent());
        // Not a temporary file: that would be for its owner's eyes only.
        long process = ProcessHandle.current().pid();
        Path partial = whole.resolveSibling("." + whole.getFileName() + "." + process + ".partial");
        try {
            Files.write(partial, bytes);
            Files.move(partial, whole, StandardCopyOption.REPLACE_EXISTING);
        } finally {
            Files.deleteIfExists(partial);
        }
    }
}
