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
import org.junit.jupiter.api.AfterEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;

/** Ctrl-C as a terminal sends it, to a program of its own. A shell shows an end by INT as 128 + 2 (POSIX sh, 2.8.2). */
@DisabledOnOs(OS.WINDOWS)
final class InterruptedSequenceTest {
    private static final int BY_INT = 130;
    private static final List<String> WHOLE = List.of(
            "all-lines.html",
            "L1.html",
            "L2.html",
            "L3.html",
            "L4.html",
            "L5.html",
            "L6.html",
            "L7.html",
            "L8.html",
            "plan.csv",
            "plan.png",
            "plan.yaml");

    @TempDir
    private Path root;

    private Process process;
    private BufferedReader out;

    private void start(String... options) throws IOException {
        ProcessBuilder builder = new ProcessBuilder(
                Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                "-cp",
                System.getProperty("java.class.path"),
                "-Dspoolyard.terminals=err",
                Spoolyard.class.getName(),
                "sequence",
                Path.of("..", "scenarios", "orrenvale").toString(),
                "--replications=10000",
                "--out=" + root.resolve("plan"));
        builder.command().addAll(List.of(options));
        process = builder.redirectErrorStream(true).start();
        out = new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
    }

    @AfterEach
    void end() throws IOException {
        process.destroyForcibly();
        out.close();
    }

    private void hear(String word) throws IOException {
        StringBuilder heard = new StringBuilder();
        for (int each = out.read(); each >= 0; each = out.read()) {
            heard.append((char) each);
            if (heard.indexOf(word, heard.length() - word.length()) >= 0) {
                return;
            }
        }
        throw new AssertionError(word + " was never told: " + heard.substring(0, Math.min(2000, heard.length())));
    }

    private void interrupt() throws IOException, InterruptedException {
        new ProcessBuilder("kill", "-INT", Long.toString(process.pid())).start().waitFor();
    }

    private int ended() throws InterruptedException {
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return process.exitValue();
    }

    private List<String> files() throws IOException {
        try (Stream<Path> all = Files.walk(root.resolve("plan"))) {
            return all.filter(Files::isRegularFile)
                    .map(file -> file.getFileName().toString())
                    .sorted(String.CASE_INSENSITIVE_ORDER)
                    .toList();
        }
    }

    @Test
    void theFirstEndsTheSearchAndOneInTheSimulationTheProgramWithThePlanWhole()
            throws IOException, InterruptedException {
        start("--seconds=3600", "--learn=0");
        hear("searching");

        interrupt();
        hear("Plan in ");
        hear("replications");
        interrupt();

        assertThat(ended()).isEqualTo(BY_INT);
        assertThat(files()).isEqualTo(WHOLE);
        assertThat(Files.readString(root.resolve("plan").resolve("floor").resolve("L1.html")))
                .endsWith("</html>\n");
    }

    @Test
    void aSecondBeforeThePlanIsWrittenEndsTheProgramWithThePlanWhole() throws IOException, InterruptedException {
        start("--seconds=3600", "--learn=0");
        hear("searching");

        interrupt();
        hear("Judged by");
        interrupt();

        assertThat(ended()).isEqualTo(BY_INT);
        assertThat(files()).isEqualTo(WHOLE);
    }
}
