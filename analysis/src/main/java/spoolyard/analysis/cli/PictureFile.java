package spoolyard.analysis.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.function.Supplier;

/** A picture that is asked for as a file of its own. */
final class PictureFile {
    private PictureFile() {}

    /**
     * Checks a name before any work is done.
     *
     * @param file where the picture is to be
     * @throws InputException if the name is no PNG's, or there is a folder of that name
     */
    static void check(Path file) throws InputException {
        OutputFile.check("--picture", file, ".png");
    }

    /**
     * Draws and writes it, beside its place first and then moved there; folders are made, a picture that is there is
     * replaced.
     *
     * @param file where; its name ends in {@code .png}
     * @param png draws it
     * @param err where to say that this Java cannot draw
     * @return whether it is there now
     * @throws InputException if the name is no PNG's, or there is a folder of that name
     * @throws IOException if it cannot be written
     */
    static boolean write(Path file, Supplier<byte[]> png, PrintStream err) throws InputException, IOException {
        check(file);
        byte[] bytes = Drawing.bytes(png, err);
        if (bytes.length == 0) {
            return false;
        }
        OutputFile.write(file, bytes);
        return true;
    }
}
