package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class GaugeCommandTest {
    private static final String ORRENVALE =
            Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path folder;

    @Test
    void comparesTolerancesOnOneLine() {
        Called called = Called.with("gauge", ORRENVALE, "--line=L5", "--tolerance=±22 µm");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("L5, PLA 1.75 mm: 2 strands of 22.0 kg/h at 122.9 m/min, 1 kg in 164 s");
        // 16 m at 122.9 m/min; sqrt(0.006^2 + 0.008^2) = 0.01
        assertThat(called.out()).contains("0.0100 mm without correction; dead time 8 s, gain 0.5");
        assertThat(rows(called)).hasSize(7);
        assertThat(rows(called).get(2)).startsWith("    >     0.022 ");
        assertThat(rows(called).get(4)).startsWith("  now     0.030 ");
        assertThat(called.out()).endsWith("docs/model.md, Gauge\n");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 104);
    }

    @Test
    void aTighterToleranceCostsMore() {
        List<Double> lost = rows(Called.with("gauge", ORRENVALE, "--line=L2")).stream()
                .filter(row -> !row.contains("<"))
                .map(row -> Double.parseDouble(row.replaceAll(".* (\\S+) +\\S+$", "$1")))
                .toList();

        assertThat(lost).hasSizeGreaterThan(6).isSubsetOf(lost.stream().sorted().toList());
        assertThat(lost.subList(0, 4)).isSortedAccordingTo((a, b) -> Double.compare(b, a));
    }

    private static List<String> rows(Called called) {
        return called.out()
                .lines()
                .filter(line -> line.matches("( {5}|  now|    >) +0\\.0.*"))
                .toList();
    }

    @Test
    void showsAllLinesInShort() {
        Called called = Called.with("gauge", ORRENVALE);

        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("L1 PETG 1.75 mm    scrap", "L5 PLA 1.75 mm     B-grade", "L8 ");
        assertThat(called.out().lines().filter(line -> line.matches("L\\d .*\\[.*\\].*")))
                .hasSize(8);
    }

    @Test
    void drawsAPicture() throws IOException {
        Path file = folder.resolve("new/cost.png");

        Called called = Called.with("gauge", ORRENVALE, "--line=L4", "--picture=" + file);

        assertThat(called.code()).isZero();
        assertThat(called.out()).endsWith("Picture in " + file + "\n");
        assertThat(ImageIO.read(file.toFile()).getWidth()).isEqualTo(1280);
        assertThat(Files.list(file.getParent())).containsExactly(file);
    }

    @Test
    void sayWhatIsWrongWithTheCall() {
        assertFault("--tolerance = 0.02. Must be a deviation", "gauge", ORRENVALE, "--tolerance=0.02");
        assertFault("--line = L9. Must be a line of this plant: L1, L2,", "gauge", ORRENVALE, "--line=L9");
        assertFault("--picture = x.jpg. Must be a file name that ends in .png", "gauge", ORRENVALE, "--picture=x.jpg");
        assertFault("Must have orders and a gauge with a diameter part.", "gauge", "../scenarios/two-lines");
    }

    private static void assertFault(String text, String... call) {
        Called called = Called.with(call);

        assertThat(called.code()).isEqualTo(2);
        assertThat(called.err()).contains(text, "Mend: ");
        assertThat(called.out()).isEmpty();
    }
}
