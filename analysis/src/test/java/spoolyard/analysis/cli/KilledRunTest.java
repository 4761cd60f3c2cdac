package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class KilledRunTest {
    private static final String SCENARIO =
            Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path root;

    @Test
    void leavesEarlierResultsAsTheyWereAndNoHalfOnes() throws IOException, InterruptedException {
        Path results = root.resolve("results");
        Called.with("run", SCENARIO, "--set=/time/length=1 day", "--replications=1", "--out=" + results);
        String before = Files.readString(results.resolve("summary.json"));
        Process process = endlessRun(results);
        try (BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8))) {
            assertThat(out.lines().anyMatch(line -> line.startsWith("Orrenvale")))
                    .isTrue();
        } finally {
            process.destroyForcibly();
        }

        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        assertThat(Files.readString(results.resolve("summary.json"))).isEqualTo(before);
        assertThat(names()).containsExactly("results");
    }

    private static Process endlessRun(Path results) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        Spoolyard.class.getName(),
                        "run",
                        SCENARIO,
                        "--replications=1000000",
                        "--out=" + results)
                .redirectErrorStream(true)
                .start();
    }

    private List<String> names() throws IOException {
        try (Stream<Path> children = Files.list(root)) {
            return children.map(child -> child.getFileName().toString()).toList();
        }
    }
}
