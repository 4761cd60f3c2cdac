package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Instant;
import java.util.List;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** The launcher, in a copy of the project's layout in which Maven and Java only tell how they were called. */
final class LauncherTest {
    private static final Path LAUNCHER = Path.of("..", "spoolyard");

    @TempDir
    private Path root;

    private Path home;

    @BeforeEach
    void layOut() throws IOException {
        assumeTrue(Files.isExecutable(Path.of("/bin/bash")), "needs bash");
        home = Files.createDirectories(root.resolve("my plant/spoolyard project"));
        Files.copy(LAUNCHER, home.resolve("spoolyard"));
        program(home.resolve("spoolyard"));
        Files.createDirectories(home.resolve("sim-core/src/main"));
        Files.createDirectories(home.resolve("analysis/src/main"));
        Files.writeString(home.resolve("pom.xml"), "");
        Files.writeString(source(), "");
        Path bin = Files.createDirectories(root.resolve("bin"));
        script(
                bin.resolve("mvn"),
                "mkdir -p analysis/target && touch analysis/target/spoolyard.jar && echo \"mvn $*\" >&2");
        script(bin.resolve("java"), "echo \"java $*\"");
    }

    @Test
    void buildsWhenNothingIsBuiltAndSaysSoInOneLine() throws IOException, InterruptedException {
        Run run = launch(home.resolve("spoolyard"), "run", "scenarios/two lines");

        assertThat(run.err)
                .containsExactly(
                        "Building Spoolyard (only when its sources have changed; the first time fetches libraries) ...",
                        "mvn -q -B -DskipTests package");
        assertThat(run.out).hasSize(1);
        assertThat(run.out.get(0)).startsWith("java ").endsWith("spoolyard.jar run scenarios/two lines");
        assertThat(run.code).isZero();
    }

    @Test
    void startsAtOnceWhenNothingHasChanged() throws IOException, InterruptedException {
        launch(home.resolve("spoolyard"), "--version");

        Run run = launch(home.resolve("spoolyard"), "--version");

        assertThat(run.err).isEmpty();
        assertThat(run.out.get(0)).endsWith("analysis/target/spoolyard.jar --version");
    }

    @Test
    void buildsAgainWhenASourceIsNewer() throws IOException, InterruptedException {
        launch(home.resolve("spoolyard"), "--version");
        Files.setLastModifiedTime(source(), FileTime.from(Instant.now().plusSeconds(5)));

        Run run = launch(home.resolve("spoolyard"), "--version");

        assertThat(run.err).contains("mvn -q -B -DskipTests package");
    }

    @Test
    void worksThroughALinkFromAnotherFolder() throws IOException, InterruptedException {
        Path link = Files.createSymbolicLink(root.resolve("bin/sy"), home.resolve("spoolyard"));

        Run run = launch(link, "check", ".");

        assertThat(run.out.get(0)).contains("spoolyard project/analysis/target/spoolyard.jar check .");
    }

    @Test
    void startsNothingWhenTheBuildFails() throws IOException, InterruptedException {
        script(root.resolve("bin/mvn"), "echo broken >&2; exit 1");

        Run run = launch(home.resolve("spoolyard"), "--version");

        assertThat(run.out).isEmpty();
        assertThat(run.err).endsWith("broken", "The build failed; its messages stand above.");
        assertThat(run.code).isEqualTo(1);
    }

    @Test
    void passesOnTheExitCode() throws IOException, InterruptedException {
        script(root.resolve("bin/java"), "exit 2");

        assertThat(launch(home.resolve("spoolyard"), "rnu").code).isEqualTo(2);
    }

    @Test
    void refusesAJavaThatIsKnownToBeTooOld() throws IOException, InterruptedException {
        Files.writeString(root.resolve("release"), "JAVA_VERSION=\"11.0.2\"\n");

        Run run = launch(home.resolve("spoolyard"), "--version");

        assertThat(run.err.get(0)).contains("is Java 11. Spoolyard needs 17 or newer");
        assertThat(run.code).isEqualTo(2);
    }

    private Path source() {
        return home.resolve("sim-core/src/main/Clock.java");
    }

    private Run launch(Path program, String... arguments) throws IOException, InterruptedException {
        List<String> command = Stream.concat(Stream.of(program.toString()), Stream.of(arguments))
                .toList();
        Path out = root.resolve("out");
        Path err = root.resolve("err");
        ProcessBuilder builder = new ProcessBuilder(command)
                .directory(root.toFile())
                .redirectOutput(out.toFile())
                .redirectError(err.toFile());
        builder.environment().put("PATH", root.resolve("bin") + ":/usr/bin:/bin");
        builder.environment().remove("JAVA_HOME");
        Process process = builder.start();
        assertThat(process.waitFor(60, TimeUnit.SECONDS)).isTrue();
        return new Run(process.exitValue(), Files.readAllLines(out), Files.readAllLines(err));
    }

    private static void script(Path file, String body) throws IOException {
        Files.writeString(file, "#!/bin/bash\n" + body + "\n", StandardCharsets.UTF_8);
        program(file);
    }

    private static void program(Path file) {
        assertThat(file.toFile().setExecutable(true)).isTrue();
    }

    private record Run(int code, List<String> out, List<String> err) {}
}
