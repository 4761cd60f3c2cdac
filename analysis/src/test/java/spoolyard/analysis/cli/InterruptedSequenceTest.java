package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

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
import org.junit.jupiter.api.Timeout;
import org.junit.jupiter.api.condition.DisabledOnOs;
import org.junit.jupiter.api.condition.OS;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/**
 * Ctrl-C as a terminal sends it, and TERM as a shut-down does, to a program of its own. A shell shows an end by INT as 128 + 2 and
 * by TERM as 128 + 15 (POSIX sh, 2.8.2).
 */
@DisabledOnOs(OS.WINDOWS)
@Timeout(value = 5, unit = TimeUnit.MINUTES, threadMode = Timeout.ThreadMode.SEPARATE_THREAD)
final class InterruptedSequenceTest {
    private static final int BY_INT = 130;
    private static final int BY_TERM = 143;
    private static final Path ORRENVALE = Path.of("..", "scenarios", "orrenvale");
    private static final String LEARNING = "learning, ";
    private static final String BOUND = "raising the bound";
    private static final String TRIAL = "replications";
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
                ORRENVALE.toString(),
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
        assumeTrue(isInterruptHeard(), "This program was started to ignore Ctrl-C, and so are those that it starts.");
        send("-INT");
    }

    /** A shell starts what it runs in the background so that INT, signal 2, is ignored: POSIX sh, 2.11. */
    private static boolean isInterruptHeard() throws IOException {
        Path status = Path.of("/proc/self/status");
        if (!Files.exists(status)) {
            return true;
        }
        return Files.readAllLines(status).stream()
                .filter(line -> line.startsWith("SigIgn:"))
                .mapToLong(line -> Long.parseUnsignedLong(
                        line.substring(line.indexOf(':') + 1).strip(), 16))
                .noneMatch(ignored -> (ignored >> 1 & 1) == 1);
    }

    private void send(String signal) throws IOException, InterruptedException {
        new ProcessBuilder("kill", signal, Long.toString(process.pid())).start().waitFor();
    }

    private void hearThatThePlanIsWritten() throws IOException {
        hear("Plan in ");
        hear(root.resolve("plan").toString());
    }

    private void endsWithThePlanWhole(int code) throws IOException, InterruptedException {
        assertThat(ended()).isEqualTo(code);
        assertThat(files()).isEqualTo(WHOLE);
        for (Path page : pages()) {
            assertThat(Files.readString(page)).endsWith("</html>\n");
        }
        assertThat(Files.readAllLines(root.resolve("plan").resolve("plan.csv")))
                .hasSameSizeAs(Files.readAllLines(ORRENVALE.resolve("orders.csv")));
    }

    private List<Path> pages() throws IOException {
        try (Stream<Path> all = Files.list(root.resolve("plan").resolve("floor"))) {
            return all.toList();
        }
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
    void theFirstEndsTheSearchAndOneInTheSimulationTheProgram() throws IOException, InterruptedException {
        start("--seconds=3600", "--learn=0");
        hear("searching");

        interrupt();
        hearThatThePlanIsWritten();
        hear(TRIAL);
        interrupt();

        endsWithThePlanWhole(BY_INT);
    }

    @Test
    void aSecondBeforeThePlanIsWrittenEndsTheProgram() throws IOException, InterruptedException {
        start("--seconds=3600", "--learn=0");
        hear("searching");

        interrupt();
        hear("Judged by");
        interrupt();

        endsWithThePlanWhole(BY_INT);
    }

    @Test
    void theFirstWhileLearningGoesOnWithWhatWasLearned() throws IOException, InterruptedException {
        start("--seconds=3600");
        hear(LEARNING);

        interrupt();
        hear("The search was ended early");
        hear(TRIAL);
        interrupt();

        endsWithThePlanWhole(BY_INT);
    }

    @Test
    void theFirstDuringTheBoundGoesOnWithThePlan() throws IOException, InterruptedException {
        start("--iterations=1000", "--learn=0");
        hear(BOUND);

        interrupt();
        hearThatThePlanIsWritten();
        hear(TRIAL);
        interrupt();

        endsWithThePlanWhole(BY_INT);
    }

    @Test
    void theFirstInTheSimulationEndsTheProgram() throws IOException, InterruptedException {
        start("--iterations=1000", "--learn=0");
        hearThatThePlanIsWritten();
        hear(TRIAL);

        interrupt();

        endsWithThePlanWhole(BY_INT);
    }

    @ParameterizedTest
    @ValueSource(strings = {LEARNING, "searching", BOUND})
    void aShutDownBeforeThePlanIsWrittenEndsTheProgramThen(String part) throws IOException, InterruptedException {
        start(
                part.equals(BOUND) ? "--iterations=1000" : "--seconds=3600",
                part.equals(LEARNING) ? "--learn=2" : "--learn=0");
        hear(part);

        send("-TERM");
        hearThatThePlanIsWritten();

        endsWithThePlanWhole(BY_TERM);
    }

    @Test
    void aShutDownInTheSimulationEndsTheProgram() throws IOException, InterruptedException {
        start("--iterations=1000", "--learn=0");
        hearThatThePlanIsWritten();
        hear(TRIAL);

        send("-TERM");

        endsWithThePlanWhole(BY_TERM);
    }
}
