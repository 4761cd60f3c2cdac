package spoolyard.analysis.cli;

import java.io.Closeable;
import java.io.IOException;
import java.nio.file.Path;
import java.util.Optional;
import spoolyard.analysis.report.EventLogFile;
import spoolyard.analysis.report.PlantClock;
import spoolyard.analysis.report.ResultsRefusedException;
import spoolyard.core.record.EventLog;

/**
 * The event log of a run, if one was asked for.
 *
 * @param file the log, or empty
 */
record RunLog(Optional<EventLogFile> file) implements Closeable {
    /**
     * Begins a log.
     *
     * @param path where it shall go; {@code null} as the command line leaves an option that is not given
     * @param clock shows the times
     * @return the log
     * @throws ResultsRefusedException if it may not go there
     * @throws IOException if it cannot be written
     */
    static RunLog begin(Path path, PlantClock clock) throws ResultsRefusedException, IOException {
        return new RunLog(path == null ? Optional.empty() : Optional.of(EventLogFile.begin(path, clock)));
    }

    /**
     * Where the first replication tells its events.
     *
     * @return the file, or nowhere
     */
    EventLog log() {
        return file.isPresent() ? file.get() : EventLog.SILENT;
    }

    /**
     * Puts the log in its place.
     *
     * @throws IOException if it cannot be written
     */
    void complete() throws IOException {
        if (file.isPresent()) {
            file.get().complete();
        }
    }

    @Override
    public void close() throws IOException {
        if (file.isPresent()) {
            file.get().close();
        }
    }
}
