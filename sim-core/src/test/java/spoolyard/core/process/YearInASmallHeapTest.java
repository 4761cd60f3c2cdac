package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Law;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/** Memory does not grow with the horizon: a year of eight lines runs in a virtual machine of its own with 256 MB. */
class YearInASmallHeapTest {
    @Test
    void aYearOfEightLinesNeedsNoMoreThanAQuarterOfAGigabyte() throws IOException, InterruptedException {
        Process year = new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-Xmx256m",
                        "-XX:+UseSerialGC",
                        "-cp",
                        System.getProperty("surefire.test.class.path", System.getProperty("java.class.path")),
                        Year.class.getName())
                .redirectErrorStream(true)
                .start();

        String said = new String(year.getInputStream().readAllBytes(), StandardCharsets.UTF_8);

        assertThat(year.waitFor(5, TimeUnit.MINUTES)).isTrue();
        assertThat(said).contains("spools");
        assertThat(Long.parseLong(said.strip().split(" ")[0])).isGreaterThan(1_000_000);
    }

    /** Runs the year. */
    static final class Year {
        private Year() {}

        public static void main(String[] arguments) {
            PlantSketch sketch = new PlantSketch();
            sketch.hours = 365 * 24;
            sketch.lineCount = 8;
            sketch.heads = List.of(3);
            sketch.stopTimeS = new Law.Lognormal(18, 0.25);
            for (int i = 0; i < 1200; i++) {
                sketch.order("SO-" + i, i % 2 == 0 ? PlantSketch.WHITE_PLA : PlantSketch.BLACK_PLA, 1000);
            }
            RunResult result = new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
            System.out.println(result.flow().made() + " spools");
        }
    }
}
