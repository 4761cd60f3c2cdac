package spoolyard.analysis.report;

import java.io.BufferedReader;
import java.io.BufferedWriter;
import java.io.Closeable;
import java.io.IOException;
import java.io.UncheckedIOException;
import java.nio.charset.MalformedInputException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.UUID;
import spoolyard.core.record.EventLog;

/**
 * Writes what happens in a run to a CSV file, one event a row. The file comes to its place when the run is complete; a
 * file there that is no event log is refused. Changed by the thread that runs the replication.
 */
public final class EventLogFile implements EventLog, Closeable {
    private static final String HEADER = "time_local,elapsed_s,station,event,detail";

    private final Path target;
    private final Path partial;
    private final PlantClock clock;
    private final BufferedWriter out;

    private EventLogFile(Path target, Path partial, PlantClock clock) throws IOException {
        this.target = target;
        this.partial = partial;
        this.clock = clock;
        this.out = Files.newBufferedWriter(partial);
        out.write(HEADER + "\n");
    }

    /**
     * Begins a log.
     *
     * @param file where it shall go
     * @param clock shows the times
     * @return the log
     * @throws ResultsRefusedException if something else is there, or the folder is not
     * @throws IOException if it cannot be written
     */
    public static EventLogFile begin(Path file, PlantClock clock) throws ResultsRefusedException, IOException {
        Path target = file.toAbsolutePath().normalize();
        check(target, file.toString());
        Path partial = target.resolveSibling("." + target.getFileName() + ".partial-" + UUID.randomUUID());
        partial.toFile().deleteOnExit();
        return new EventLogFile(target, partial, clock);
    }

    @Override
    public void tell(long tick, String station, String what, String detail) {
        try {
            CsvTable.FORMAT.printRecord(out, clock.millisecond(tick), Figures.seconds(tick), station, what, detail);
        } catch (IOException failure) {
            throw new UncheckedIOException(failure);
        }
    }

    /**
     * Puts the complete log in its place.
     *
     * @throws IOException if it cannot be written
     */
    public void complete() throws IOException {
        out.close();
        Files.move(partial, target, StandardCopyOption.ATOMIC_MOVE);
    }

    /**
     * Ends the log; one that is not complete is thrown away.
     *
     * @throws IOException if the file cannot be deleted
     */
    @Override
    public void close() throws IOException {
        try (out) {
            Files.deleteIfExists(partial);
        }
    }

    private static void check(Path target, String given) throws ResultsRefusedException, IOException {
        String mend = "give another file with --log";
        if (target.getParent() == null || !Files.isDirectory(target.getParent())) {
            throw new ResultsRefusedException(given, "The folder for the event log is not there.", mend);
        }
        if (!Files.isWritable(target.getParent())) {
            throw new ResultsRefusedException(given, "No file can be made in that folder.", mend);
        }
        if (Files.exists(target) && !isEventLog(target)) {
            throw new ResultsRefusedException(
                    given, "Is there and is no event log. Only an event log is replaced.", mend);
        }
    }

    private static boolean isEventLog(Path file) throws IOException {
        if (!Files.isRegularFile(file)) {
            return false;
        }
        try (BufferedReader in = Files.newBufferedReader(file)) {
            char[] beginning = new char[HEADER.length()];
            int read = in.read(beginning);
            return read <= 0 || new String(beginning, 0, read).equals(HEADER);
        } catch (MalformedInputException notText) {
            return false;
        }
    }
}
