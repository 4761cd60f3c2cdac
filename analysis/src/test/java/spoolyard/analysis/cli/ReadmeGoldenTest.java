package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.nio.file.StandardCopyOption;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/**
 * Holds the sample in the README to what the command beside it prints. Renewed with {@code mvn verify
 * -Dspoolyard.update=true}, in a commit that says why.
 */
final class ReadmeGoldenTest {
    private static final Path README = Path.of("..", "README.md");
    private static final Path PICTURES = Path.of("..", "docs", "pictures");
    private static final String MARK = "<!-- sample: ./spoolyard run scenarios/orrenvale -->\n```\n";
    private static final List<String> SHOWN_PICTURES = List.of("spools-per-shift.png", "time-by-state.png");

    @TempDir
    private Path root;

    @Test
    void showsWhatTheFirstCommandPrints() throws IOException {
        // The same numbers are promised for one kind of processor and Java (docs/decisions): the sample is from this
        // one.
        assumeTrue("amd64".equals(System.getProperty("os.arch")), "sample was made on amd64");
        Path results = root.resolve("results");

        Called called =
                Called.with("run", Path.of("..", "scenarios", "orrenvale").toString(), "--out=" + results);

        String printed = called.out().replace(results.toString(), "results/orrenvale");
        if (Boolean.getBoolean("spoolyard.update")) {
            update(printed, results);
        }
        assertThat(Files.readString(README)).contains(MARK + printed + "```\n");
    }

    @Test
    void hasThePicturesItShows() throws IOException {
        String readme = Files.readString(README);

        try (Stream<Path> pictures = Files.list(PICTURES)) {
            assertThat(pictures.map(path -> path.getFileName().toString())).containsAll(SHOWN_PICTURES);
        }
        assertThat(SHOWN_PICTURES).allMatch(name -> readme.contains("(docs/pictures/" + name + ")"));
    }

    private static void update(String printed, Path results) throws IOException {
        String readme = Files.readString(README);
        int begin = readme.indexOf(MARK) + MARK.length();
        int end = readme.indexOf("```", begin);
        Files.writeString(README, readme.substring(0, begin) + printed + readme.substring(end));
        Files.createDirectories(PICTURES);
        for (String name : SHOWN_PICTURES) {
            Files.copy(results.resolve(name), PICTURES.resolve(name), StandardCopyOption.REPLACE_EXISTING);
        }
    }
}
