package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.quantity.Ticks;

final class EventLogFileTest {
    private final PlantClock clock = SampleReports.clock();

    @TempDir
    private Path root;

    @Test
    void writesEventsWithTheWallClockOfThePlant() throws IOException, ResultsRefusedException {
        Path file = root.resolve("events.csv");

        try (EventLogFile log = EventLogFile.begin(file, clock)) {
            log.tell(0, "L4/2", "full spool", "");
            log.tell(Ticks.PER_HOUR + 1500, "operator", "arrives", "L4, \"left\" strand");
            log.complete();
        }

        assertThat(file)
                .hasContent(
                        """
                        time_local,elapsed_s,station,event,detail
                        2027-03-01 06:00:00.000,0,L4/2,full spool,
                        2027-03-01 07:00:00.001,3600.0015,operator,arrives,"L4, ""left"" strand"
                        """);
        assertThat(names()).containsExactly("events.csv");
    }

    @Test
    void leavesNothingWhenNotComplete() throws IOException, ResultsRefusedException {
        Path file = Files.writeString(root.resolve("events.csv"), "");

        try (EventLogFile log = EventLogFile.begin(file, clock)) {
            log.tell(0, "L1", "full spool", "");
        }

        assertThat(file).isEmptyFile();
        assertThat(names()).containsExactly("events.csv");
    }

    @Test
    void replacesAnEarlierLog() throws IOException, ResultsRefusedException {
        Path file = root.resolve("events.csv");
        write(file, "first");

        write(file, "second");

        assertThat(Files.readString(file)).contains("second").doesNotContain("first");
    }

    @Test
    void refusesAFileThatIsNoEventLog() throws IOException {
        Path file = Files.writeString(root.resolve("plant.yaml"), "spoolyard: 1\n");

        assertThatThrownBy(() -> EventLogFile.begin(file, clock))
                .isInstanceOf(ResultsRefusedException.class)
                .hasMessage(file + ": Is there and is no event log. Only an event log is replaced."
                        + "\n  Mend: give another file with --log.");
        assertThat(file).hasContent("spoolyard: 1\n");
    }

    @Test
    void refusesAFileThatIsNoText() throws IOException {
        Path file = Files.write(root.resolve("picture.png"), new byte[] {(byte) 0x89, 'P', 'N', 'G', (byte) 0xff});

        assertThatThrownBy(() -> EventLogFile.begin(file, clock)).isInstanceOf(ResultsRefusedException.class);
    }

    @Test
    void refusesAFolderThatIsNotThereAndAFolderInPlaceOfAFile() {
        assertThatThrownBy(() -> EventLogFile.begin(root.resolve("no/events.csv"), clock))
                .hasMessageContaining("The folder for the event log is not there.");
        assertThatThrownBy(() -> EventLogFile.begin(root, clock)).hasMessageContaining("is no event log");
    }

    private void write(Path file, String event) throws IOException, ResultsRefusedException {
        try (EventLogFile log = EventLogFile.begin(file, clock)) {
            log.tell(0, "L1", event, "");
            log.complete();
        }
    }

    private List<String> names() throws IOException {
        try (Stream<Path> children = Files.list(root)) {
            return children.map(child -> child.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }
}
