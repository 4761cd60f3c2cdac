package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class FrontierCommandTest {
    private static final String ORRENVALE =
            Path.of("..", "scenarios", "orrenvale").toString();

    @TempDir
    private Path folder;

    private static Called frontier(String... options) {
        String[] all = new String[options.length + 3];
        all[0] = "frontier";
        all[1] = ORRENVALE;
        all[2] = "--iterations=200000";
        System.arraycopy(options, 0, all, 3, options.length);
        return Called.with(all);
    }

    @Test
    void everyFurtherPointIsMorePromptForMorePurge() throws IOException {
        Called called = frontier("--points=4", "--out", folder.toString());

        assertThat(called.err()).isEmpty();
        assertThat(called.out().replaceAll("\\s+", " "))
                .contains("late spool-days costs", "kg per spool-day.", "today's order");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100 || line.startsWith("Frontier in "));
        List<double[]> rows = Files.readAllLines(folder.resolve("frontier.csv")).stream()
                .skip(1)
                .map(line -> line.split(","))
                .map(cells -> new double[] {Double.parseDouble(cells[1]), Double.parseDouble(cells[2])})
                .toList();
        assertThat(rows).hasSizeGreaterThan(3);
        for (int i = 1; i < rows.size(); i++) {
            assertThat(rows.get(i)[0]).isGreaterThan(rows.get(i - 1)[0]);
            assertThat(rows.get(i)[1]).isLessThan(rows.get(i - 1)[1]);
        }
        assertThat(folder.resolve("frontier.json")).content().contains("\"proved\" : false");
        assertThat(folder.resolve("frontier.png")).isNotEmptyFile();
    }

    @Test
    void everyPointIsAScenarioThatRuns() {
        frontier("--points=2", "--out", folder.toString());

        for (String point : List.of("A", "B")) {
            Called check = Called.with(
                    "check", folder.resolve(point).resolve("plan.yaml").toString());
            assertThat(check.code()).as(check.err()).isZero();
        }
    }

    @Test
    void givesTheSameForTheSameSeedAndSimulatesWhatItShows() {
        Called called = frontier("--points=2", "--replications=2");

        assertThat(called.out()).contains("Simulated, 2 replications on the same random numbers");
        assertThat(frontier("--points=2", "--replications=2").out()).isEqualTo(called.out());
    }

    @Test
    void namesWhatIsWrongWithAnOption() {
        assertThat(frontier("--points=1").err()).startsWith("--points = 1. Must be a whole number from 2 to 26.");
        assertThat(frontier("--reserve=-1").err()).startsWith("--reserve = -1.0. Must be from 0.0 to ");
        assertThat(frontier("--out=pom.xml").err()).startsWith("--out = pom.xml. Must be a folder.");
    }
}
