package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command on one line with its own operator, of which the answer is known; a day a replication. */
final class BufferCommandTest {
    @TempDir
    private Path folder;

    /**
     * Swaps are lognormal, mean 30 s, cv 0.3; v = 1.676418 m/s. P(S > C/v) by the closed form: 70 m 10.30 %, 75 m 6.58 %,
     * 80 m 4.21 %, 85 m 2.71 %; so 80 m is the smallest of 40 ... 120 m with at most 5.3 %. Level 95 %, fixed seed.
     */
    @Test
    void findsTheSmallestCapacityThatTheClosedFormGives() throws IOException {
        Called called = called("--target=overflow <= 5.3 % of swaps", "--from=40 m", "--to=120 m", "--step=5 m");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("80 m is the smallest capacity that meets it.", "75 m misses it:");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 120);
        assertThat(Files.readString(folder.resolve("out/summary.json"))).contains("\"smallest_that_meets_m\" : 80");
        assertThat(Files.readString(folder.resolve("out/search.csv")))
                .contains("75,misses,")
                .contains("80,meets,");
        assertThat(Files.readAllLines(folder.resolve("out/curve.csv")).get(0))
                .startsWith("capacity_m,overflow_pct_of_swaps,overflow_pct_of_swaps_half_width,waste_kg_per_shift");
        assertThat(ImageIO.read(folder.resolve("out/losses-over-capacity.png").toFile())
                        .getWidth())
                .isEqualTo(1280);
    }

    @Test
    void showsOnlyTheCurveWithoutATarget() {
        Called called = called("--to=120 m", "--step=40 m", "--no-charts", "--replications=2");

        assertThat(called.code()).isZero();
        assertThat(called.out()).contains("Knee ").doesNotContain("Answer");
        assertThat(called.out()).containsPattern("60 now ");
    }

    /**
     * Swaps lognormal, mean 18 s, cv 0.3: P(S > C/v) is 2.5e-5 at 95 m and 1.2e-5 at 100 m, by the closed form; so 100 m
     * is the smallest of 80 ... 120 m with at most 0.0015 %, which a day of 432 swaps a replication never shows.
     */
    @Test
    void findsACapacityWhoseOverflowsAreTooRareToBeSeen() throws IOException {
        Called called = called(
                "--target=overflow <= 0.0015 % of swaps",
                "--set=/every_line/winder/stop={lognormal: {mean: 18 s, cv: 0.3}}",
                "--from=80 m",
                "--to=120 m",
                "--step=5 m",
                "--no-charts");

        assertThat(called.err()).isEmpty();
        assertThat(called.out())
                .contains("100 m is the smallest capacity that meets it.", "Overflows are expected, not counted")
                .containsPattern("(?m)^100 +11\\.7\\d .* 11\\.78 ");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(Files.readAllLines(folder.resolve("out/curve.csv")).get(0))
                .endsWith("overflows_seen,counted_swaps,swaps,speed_up");
    }

    /** A swap of 5 min outlasts 120 m, which last 71.6 s. */
    @Test
    void saysWhatLimitsATargetThatNoCapacityReaches() {
        Called called = called(
                "--target=overflow <= 1 %",
                "--to=120 m", "--step=40 m", "--set=/every_line/winder/stop=5 min", "--no-charts");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .contains(
                        "No capacity asked about meets it. At 120 m",
                        "swap too slow",
                        "the swap itself outlasts the room");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    /** Swaps of 24 s and spools of 300 g: the winder does not catch up, so that the level climbs in any accumulator. */
    @Test
    void saysThatTheWinderDoesNotCatchUp() {
        Called called = called(
                "oracle/spool-300g.yaml",
                "--target=overflow <= 1 %",
                "--to=120 m",
                "--step=40 m",
                "--set=/every_line/winder/stop=24 s",
                "--set=/every_line/winder/finish=0 s",
                "--set=/time/length=2 days",
                "--no-charts");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("level carried over", "the winder, at 160 m/min at most, does not catch up");
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--line=L3 | --line = L3. Must be a line of this plant: L2.",
                "--line=L2 --target=overflow<1% | --target = overflow<1%. Must have one of the forms",
                "--line=L2 --target=cost<=5_per_shift | Must have one of the forms",
                "--line=L2 --from=80m --to=60m | --to = 60m. Must be at least --from, 80.0 m.",
                "--line=L2 --step=0m | --step = 0m. Must be above 0 m.",
                "--line=L2 --to=60kg | --to = 60kg. Must be a length with its unit, from 0 m to 5000 m.",
                "--line=L2 --from=20km | --from = 20km. Must be a length with its unit, from 0 m to 5000 m.",
                "--line=L2 --confidence=100 | --confidence = 100.0. Must be at least 50 and below 100.",
                "--line=L2 --most=5 | --most = 5. Must be a whole number from 10 to 100000."
            })
    void refusesWhatMakesNoSense(String options, String message) throws URISyntaxException {
        List<String> arguments =
                new ArrayList<>(List.of("buffer", corner("accumulator"), "--out=" + folder.resolve("out")));
        arguments.addAll(List.of(options.split(" ")));

        Called called = Called.with(arguments.toArray(String[]::new));

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains(message).contains("Mend: ");
        assertThat(called.out()).isEmpty();
    }

    @Test
    void tellsEveryFaultOfACallAtOnce() {
        Called called = called("--to=60", "--target=overflow < 5 %", "--most=3", "--set=/lines/L2/strands=0");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .contains("--most = 3. Must be a whole number from 10 to 100000.")
                .contains("--target = overflow < 5 %. Must have one of the forms")
                .contains("--to = 60. Must be a length with its unit, from 0 m to 5000 m.")
                .contains("--set: /lines/L2/strands = 0. Must be a whole number >= 1")
                .endsWith("4 faults. Nothing was run or written.\n");
        assertThat(called.out()).isEmpty();
    }

    @Test
    void asksForPricesBeforeItPromisesMoney() {
        Called called = called("--target=cost <= 5 per shift");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains("the scenario has no costs");
    }

    private Called called(String... options) {
        boolean isScenario = !options[0].startsWith("--");
        List<String> arguments = new ArrayList<>();
        arguments.add("buffer");
        arguments.add(corner(isScenario ? options[0] : "accumulator"));
        arguments.addAll(List.of(options).subList(isScenario ? 1 : 0, options.length));
        arguments.addAll(List.of("--line=L2", "--out=" + folder.resolve("out")));
        if (!isScenario) {
            arguments.add("--set=/time/length=1 day");
        }
        return Called.with(arguments.toArray(String[]::new));
    }

    private static String corner(String name) {
        try {
            return Path.of(BufferCommandTest.class
                            .getResource("/corners/" + name)
                            .toURI())
                    .toString();
        } catch (URISyntaxException failure) {
            throw new IllegalArgumentException(name, failure);
        }
    }
}
