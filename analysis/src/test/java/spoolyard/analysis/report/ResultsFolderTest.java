package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import java.io.BufferedReader;
import java.io.IOException;
import java.io.InputStreamReader;
import java.nio.charset.StandardCharsets;
import java.nio.file.FileSystemException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.attribute.FileTime;
import java.time.Duration;
import java.time.Instant;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.concurrent.TimeUnit;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

final class ResultsFolderTest {
    @TempDir
    private Path root;

    @Test
    void putsAWholeFolderInPlaceAndMakesTheWayToIt() throws IOException, ResultsRefusedException {
        Path target = root.resolve("a/b/results");

        ResultsFolder.at(target).replaceWith(files("first"));

        assertThat(contents(target)).containsOnlyKeys("summary.json", "lines.csv");
        assertThat(names(target.getParent())).containsExactly("results");
    }

    @Test
    void replacesAnEarlierRunAndDropsFilesThatAreNoLongerWritten() throws IOException, ResultsRefusedException {
        Path target = root.resolve("results");
        ResultsFolder.at(target).replaceWith(files("first"));

        ResultsFolder.at(target)
                .replaceWith(folder -> Files.writeString(folder.resolve("summary.json"), summary("second")));

        assertThat(contents(target)).isEqualTo(Map.of("summary.json", summary("second")));
        assertThat(names(root)).containsExactly("results");
    }

    @Test
    void leavesTheEarlierRunAloneWhenWritingFails() throws IOException, ResultsRefusedException {
        Path target = root.resolve("results");
        ResultsFolder.at(target).replaceWith(files("first"));
        Map<String, String> before = contents(target);
        ResultsFolder folder = ResultsFolder.at(target);

        assertThatThrownBy(() -> folder.replaceWith(partial -> {
                    Files.writeString(partial.resolve("lines.csv"), "half");
                    throw new FileSystemException("lines.csv", null, "No space left on device");
                }))
                .isInstanceOf(FileSystemException.class);

        assertThat(contents(target)).isEqualTo(before);
        assertThat(names(root)).containsExactly("results");
    }

    @Test
    void leavesTheEarlierRunAloneWhenKilledHalfWay() throws IOException, ResultsRefusedException, InterruptedException {
        Path target = root.resolve("results");
        ResultsFolder.at(target).replaceWith(files("first"));
        Map<String, String> before = contents(target);
        Process process = writer(target);
        awaitHalfWritten(process);

        process.destroyForcibly().waitFor(60, TimeUnit.SECONDS);

        assertThat(contents(target)).isEqualTo(before);
        assertThat(names(root)).hasSize(2).anyMatch(name -> name.startsWith(".results.partial-"));
    }

    @Test
    void cleansUpWhenAskedToEndHalfWay() throws IOException, InterruptedException {
        Path target = root.resolve("results");
        Process process = writer(target);
        awaitHalfWritten(process);

        process.destroy();
        process.waitFor(60, TimeUnit.SECONDS);

        assertThat(names(root)).isEmpty();
    }

    @Test
    void sweepsAwayWhatAKilledRunLeftButNotWhatMayBeUnderWay() throws IOException, ResultsRefusedException {
        Path abandoned = Files.createDirectory(root.resolve(".results.partial-0123abcd"));
        Files.writeString(abandoned.resolve("lines.csv"), "half");
        Files.setLastModifiedTime(abandoned, FileTime.from(Instant.now().minus(Duration.ofHours(1))));
        Files.createDirectory(root.resolve(".results.partial-fresh"));
        Files.createDirectory(root.resolve(".other.partial-0123abcd"));

        ResultsFolder.at(root.resolve("results")).replaceWith(files("first"));

        assertThat(names(root)).containsExactly(".other.partial-0123abcd", ".results.partial-fresh", "results");
    }

    @Test
    void takesAnEmptyFolder() throws IOException, ResultsRefusedException {
        Path target = Files.createDirectory(root.resolve("results"));

        ResultsFolder.at(target).replaceWith(files("first"));

        assertThat(contents(target)).hasSize(2);
    }

    @Test
    void refusesAFolderThatIsNotOurs() throws IOException {
        Path target = Files.createDirectory(root.resolve("thesis"));
        Files.writeString(target.resolve("chapter1.txt"), "years of work");

        assertThatThrownBy(() -> ResultsFolder.at(target))
                .isInstanceOf(ResultsRefusedException.class)
                .hasMessage(
                        target + ": Holds what no run wrote: chapter1.txt. Only an earlier run's results are replaced."
                                + "\n  Mend: give another folder with --out, or move that one away.");
    }

    @Test
    void refusesResultsOfOursInWhichSomebodyKeepsMore() throws IOException, ResultsRefusedException {
        Path target = root.resolve("results");
        ResultsFolder.at(target).replaceWith(files("first"));
        Files.writeString(target.resolve("my notes.txt"), "think!");

        assertThatThrownBy(() -> ResultsFolder.at(target)).hasMessageContaining("no run wrote: my notes.txt.");
    }

    @ParameterizedTest
    @ValueSource(strings = {"{\"format\": \"other\", \"files\": [\"lines.csv\"]}", "not json", "[]"})
    void refusesAFolderWhoseSummaryIsNotOurs(String summary) throws IOException {
        Path target = Files.createDirectory(root.resolve("results"));
        Files.writeString(target.resolve("summary.json"), summary);
        Files.writeString(target.resolve("lines.csv"), "");

        assertThatThrownBy(() -> ResultsFolder.at(target))
                .hasMessageContaining("Holds what no run wrote: lines.csv, summary.json.");
    }

    @Test
    void refusesAFileAndAPathThroughAFile() throws IOException {
        Path file = Files.writeString(root.resolve("plant.yaml"), "");

        assertThatThrownBy(() -> ResultsFolder.at(file)).hasMessageContaining("Is a file. Must be a folder");
        assertThatThrownBy(() -> ResultsFolder.at(file.resolve("results")))
                .hasMessageContaining("No folder can be made in " + file);
    }

    @Test
    void refusesWhatHasComeToThePlaceMeanwhile() throws IOException, ResultsRefusedException {
        Path target = root.resolve("results");
        ResultsFolder folder = ResultsFolder.at(target);
        Files.createDirectory(target);
        Files.writeString(target.resolve("mine.txt"), "");

        assertThatThrownBy(() -> folder.replaceWith(files("first"))).isInstanceOf(ResultsRefusedException.class);
        assertThat(names(target)).containsExactly("mine.txt");
    }

    private static ResultsFolder.Filling files(String mark) {
        return folder -> {
            Files.writeString(folder.resolve("lines.csv"), mark);
            Files.writeString(folder.resolve("summary.json"), summary(mark));
        };
    }

    private static String summary(String mark) {
        return "{\"format\": \"spoolyard-results/1\", \"mark\": \"" + mark + "\", \"files\": [\"lines.csv\"]}";
    }

    private static Process writer(Path target) throws IOException {
        return new ProcessBuilder(
                        Path.of(System.getProperty("java.home"), "bin", "java").toString(),
                        "-cp",
                        System.getProperty("java.class.path"),
                        FillsHalfAFolder.class.getName(),
                        target.toString())
                .redirectErrorStream(true)
                .start();
    }

    private static void awaitHalfWritten(Process process) throws IOException {
        BufferedReader out =
                new BufferedReader(new InputStreamReader(process.getInputStream(), StandardCharsets.UTF_8));
        assertThat(out.readLine()).isEqualTo("half written");
    }

    private static Map<String, String> contents(Path folder) throws IOException {
        Map<String, String> contents = new TreeMap<>();
        for (String name : names(folder)) {
            contents.put(name, Files.readString(folder.resolve(name)));
        }
        return contents;
    }

    private static List<String> names(Path folder) throws IOException {
        try (Stream<Path> children = Files.list(folder)) {
            return children.map(child -> child.getFileName().toString())
                    .sorted()
                    .toList();
        }
    }
}
