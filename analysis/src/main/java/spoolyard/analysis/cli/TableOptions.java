package spoolyard.analysis.cli;

import java.io.IOException;
import java.io.PrintStream;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.function.Supplier;
import picocli.CommandLine.Option;

/** Files that a command writes beside its table on the screen. */
final class TableOptions {
    @Option(names = "--csv", paramLabel = "FILE", description = "Write the whole table into a CSV file.")
    private Path csv;

    @Option(names = "--picture", paramLabel = "FILE", description = "Draw the table as a picture into a PNG file.")
    private Path picture;

    /**
     * Looks whether they can be written.
     *
     * @param faults take up what is wrong
     * @throws IOException never
     */
    void check(OptionFaults faults) throws IOException {
        faults.check(() -> OutputFile.check("--csv", csv, ".csv"));
        if (picture != null) {
            faults.check(() -> PictureFile.check(picture));
        }
    }

    /**
     * Writes those that are asked for.
     *
     * @param table CSV
     * @param png draws the picture
     * @param err hears of a picture that cannot be drawn
     * @return what was written, for people
     * @throws IOException if a file cannot be written
     * @throws InputException if the picture cannot go where it shall
     */
    List<String> write(String table, Supplier<byte[]> png, PrintStream err) throws IOException, InputException {
        List<String> written = new ArrayList<>();
        if (csv != null) {
            OutputFile.write(csv, table);
            written.add("Table in " + csv);
        }
        if (picture != null && PictureFile.write(picture, png, err)) {
            written.add("Picture in " + picture);
        }
        return written;
    }
}
