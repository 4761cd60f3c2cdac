package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

final class ScreenCommandTest {
    private static final String SMALL = "../scenarios/two-lines";

    @TempDir
    private Path folder;

    private Path factors(String text) throws Exception {
        return Files.writeString(folder.resolve("factors.yaml"), text);
    }

    /**
     * A line that makes more kilograms makes more spools; the price of energy changes no spool at all, so that its effect
     * is 0 in every replication. Four days, so that the orders last.
     */
    @Test
    void tellsWhatMattersFromWhatDoesNot() throws Exception {
        Path file = factors(
                """
                factors:
                  rate of L2: {pointer: /lines/L2/rate, low: 30 kg/h, high: 44 kg/h}
                  cartons to a pallet: {pointer: /cartons_per_pallet, low: 20, high: 40}
                """);
        Path csv = folder.resolve("effects.csv");

        Called called = Called.with(
                "screen",
                SMALL,
                "--factors",
                file.toString(),
                "--set",
                "/time/length=2 days",
                "--replications",
                "5",
                "--csv",
                csv.toString());

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .contains("5 replications each of 4 plants")
                .contains("Matters for good spools: rate of L2.")
                .contains("Design: 2 factors, 4 runs, full.");
        List<String> rows = Files.readAllLines(csv);
        assertThat(rows.get(1)).startsWith("rate of L2,/lines/L2/rate,30 kg/h,44 kg/h,");
        assertThat(Double.parseDouble(rows.get(1).split(",")[4])).isPositive();
        assertThat(rows.get(2)).startsWith("cartons to a pallet,/cartons_per_pallet,20,40,0,0,0,0");
    }

    /** As above by elementary effects; what is no number has its two ends only. */
    @Test
    void walksThroughTheRanges() throws Exception {
        Path file = factors(
                """
                factors:
                  rate of L2: {pointer: /lines/L2/rate, low: 30 kg/h, high: 44 kg/h}
                  cartons to a pallet: {pointer: /cartons_per_pallet, low: 20, high: 40}
                  rule: {pointer: /orders/rule, low: due date first, high: lightest next}
                """);
        Path csv = folder.resolve("effects.csv");

        Called called = Called.with(
                "screen",
                SMALL,
                "--factors=" + file,
                "--design=morris",
                "--trajectories=4",
                "--set=/time/length=2 days",
                "--replications=3",
                "--csv=" + csv);

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isEqualTo(ExitCode.OK);
        assertThat(called.out())
                .contains("3 replications each of 16 plants", "4 trajectories")
                .contains("Matters for good spools: rate of L2");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
        List<String> rows = Files.readAllLines(csv);
        assertThat(rows.get(0)).startsWith("factor,pointer,low,high,measure,mean,size,size_low,size_high,spread,");
        assertThat(rows).contains("cartons to a pallet,/cartons_per_pallet,20,40,good_spools_per_week,0,0,0,0,0,0,0,0");
    }

    @Test
    void refusesADesignThatItDoesNotKnow() throws Exception {
        Path file = factors("factors: {one: {pointer: /lines/L1/rate, low: 1 kg/h, high: 2 kg/h}}\n");

        Called called = Called.with("screen", SMALL, "--factors=" + file, "--design=latin");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("--design", "two-level", "MORRIS");
        assertThat(Called.with("screen", SMALL, "--factors=" + file, "--trajectories=3")
                        .err())
                .startsWith("--trajectories = 3. Must be a whole number from 4 to 1000.");
    }

    @Test
    void tellsAllFaultsOfTheFactorsAtOnce() throws Exception {
        Path file = factors(
                """
                factors:
                  speed: {pointer: /lines/L1/sped, low: 1 m, high: 2 m}
                  rate: {pointer: /lines/L2/rate, low: 30 kg/h, high: 9999 kg/h}
                  soak: {pointer: /lines/L2/soak, low: 20 kg, high: 30 min}
                """);

        Called called = Called.with("screen", SMALL, "--factors", file.toString());

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.out()).isEmpty();
        assertThat(called.err())
                .contains("factors.yaml:2: /factors/speed/low = 1 m. At /lines/L1/sped: The key is unknown.")
                .contains(
                        "factors.yaml:3: /factors/rate/high = 9999 kg/h. At /lines/L2/rate: Must be > 0 kg/h and <= 2000")
                .contains("factors.yaml:4: /factors/soak/low = 20 kg. At /lines/L2/soak: ");
    }

    @Test
    void tellsAllFaultsOfTheFileAtOnce() throws Exception {
        Path file = factors(
                """
                factors:
                  one: {pointer: lines/L1/rate, low: 1 kg/h, high: 2 kg/h}
                  two: {pointer: /lines/L2/rate, low: 3 kg/h, high: 3 kg/h}
                  three: {pointer: /lines/L2/rate, lo: 3 kg/h, high: 4 kg/h}
                """);

        Called called = Called.with("screen", SMALL, "--factors", file.toString());

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .contains("/factors/one/pointer = lines/L1/rate. Must be the JSON Pointer of a value.")
                .contains("/factors/two/high = 3 kg/h. Must differ from low.")
                .contains("/factors/three/lo = 3 kg/h. The key is unknown. Known here: pointer, low, high.")
                .doesNotContain("/factors/three/low = (not given)")
                .contains("/factors/three/pointer = /lines/L2/rate. Must not be the pointer of another factor.");
    }

    @Test
    void wantsTwoToFifteenFactors() throws Exception {
        Path file = factors("factors: {one: {pointer: /lines/L1/rate, low: 1 kg/h, high: 2 kg/h}}\n");

        Called called = Called.with("screen", SMALL, "--factors", file.toString());

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("Must have 2 to 15 factors; these are 1.");
        assertThat(Called.with("screen", SMALL, "--factors", "none.yaml").err()).contains("none.yaml");
        assertThat(Called.with("screen", SMALL).err()).contains("--factors");
    }
}
