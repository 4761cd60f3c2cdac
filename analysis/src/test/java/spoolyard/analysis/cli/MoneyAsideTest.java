package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.SortedMap;
import java.util.TreeMap;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Energy, costs and pay value a run and change nothing in it: only their own tables and columns differ. */
final class MoneyAsideTest {
    private static final String ORRENVALE =
            Path.of("..", "scenarios", "orrenvale").toString();
    private static final List<String> OWN = List.of("costs.csv", "lost_contribution.csv", "energy.csv");

    @TempDir
    private Path parent;

    private SortedMap<String, String> tables(String name, String... settings) throws IOException {
        Path out = parent.resolve(name);
        List<String> arguments = new ArrayList<>(
                List.of("run", ORRENVALE, "--replications=2", "--set=/time/length=8 days", "--out=" + out));
        Stream.of(settings).map(setting -> "--set=" + setting).forEach(arguments::add);
        Called called = Called.with(arguments.toArray(String[]::new));
        assertThat(called.code()).as(called.err()).isZero();
        SortedMap<String, String> tables = new TreeMap<>();
        try (Stream<Path> files = Files.list(out)) {
            for (Path file : files.filter(f -> f.toString().endsWith(".csv")).toList()) {
                tables.put(file.getFileName().toString(), Files.readString(file));
            }
        }
        return tables;
    }

    @Test
    void leavesAllOtherTablesAsTheyAreWithoutEnergy() throws IOException {
        SortedMap<String, String> with = tables("with");
        SortedMap<String, String> without = tables("without", "/energy=null");

        assertThat(with).containsKey("energy.csv");
        assertThat(without).doesNotContainKey("energy.csv");
        assertThat(without.get("costs.csv")).isNotEqualTo(with.get("costs.csv"));
        assertThat(others(without)).isEqualTo(others(with));
    }

    @Test
    void leavesAllOtherTablesAsTheyAreWithoutCosts() throws IOException {
        SortedMap<String, String> with = tables("with");
        SortedMap<String, String> without = tables("without", "/costs=null");

        assertThat(without).doesNotContainKeys("costs.csv", "lost_contribution.csv");
        assertThat(without.get("energy.csv")).isEqualTo(with.get("energy.csv"));
        assertThat(others(without)).isEqualTo(others(with));
        assertThat(without.get("regrind.csv")).isNotEqualTo(with.get("regrind.csv"));
    }

    /** Pay changes the wages, and with them the total; the paid hours stay. */
    @Test
    void paysMoreAndChangesNothingElse() throws IOException {
        SortedMap<String, String> usual = tables("usual");
        SortedMap<String, String> paid = tables("paid", "/shifts/pattern/N/pay=200 %");

        assertThat(paid.get("costs.csv")).isNotEqualTo(usual.get("costs.csv"));
        paid.remove("costs.csv");
        usual.remove("costs.csv");
        assertThat(paid).isEqualTo(usual);
    }

    @Test
    void wouldSeeADifference() throws IOException {
        assertThat(others(tables("planted", "/shifts/pattern/N/pace=1.1"))).isNotEqualTo(others(tables("usual")));
    }

    /** The tables that tell neither energy nor money; of the regrind, whose last columns are money, the kilograms. */
    private static SortedMap<String, String> others(SortedMap<String, String> tables) {
        SortedMap<String, String> others = new TreeMap<>(tables);
        OWN.forEach(others::remove);
        others.replace("regrind.csv", kilograms(others.get("regrind.csv")));
        return others;
    }

    private static String kilograms(String regrind) {
        return regrind.lines()
                .map(row -> row.split(",resin_saved")[0].split(","))
                .map(cells -> String.join(",", List.of(cells).subList(0, Math.min(cells.length, 13))))
                .toList()
                .toString();
    }
}
