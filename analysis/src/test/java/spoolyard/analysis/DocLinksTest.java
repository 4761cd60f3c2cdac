package spoolyard.analysis;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.MethodSource;

/** Every link from one page of the project to another leads somewhere. */
final class DocLinksTest {
    private static final Path ROOT = Path.of("..").toAbsolutePath().normalize();
    private static final Pattern LINK = Pattern.compile("]\\((?!https?:|#)([^)#]+)");

    static List<Path> pages() throws IOException {
        try (Stream<Path> top = Files.list(ROOT);
                Stream<Path> docs = Files.walk(ROOT.resolve("docs"))) {
            return Stream.concat(top, docs)
                    .filter(path -> path.toString().endsWith(".md"))
                    .map(ROOT::relativize)
                    .toList();
        }
    }

    @ParameterizedTest
    @MethodSource("pages")
    void leadsSomewhere(Path page) throws IOException {
        Path whole = ROOT.resolve(page);
        Matcher links = LINK.matcher(Files.readString(whole));

        assertThat(links.results().map(link -> whole.resolveSibling(link.group(1))))
                .allSatisfy(target -> assertThat(target).exists());
    }
}
