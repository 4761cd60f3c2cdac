package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.io.IOException;
import java.net.URISyntaxException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** The command on one line with its own operator; what it must find is known by arithmetic or from a closed form. */
final class InvestCommandTest {
    private static final String COSTS = "--set=/costs={currency: EUR, polymer_per_kg: {PLA: 2.3}, concentrate_per_kg:"
            + " {usual: 8}, compound_per_kg: 7.5, credit_per_kg: {clean: 0.25, mixed: 0.1}, pack_out_per_spool: 1,"
            + " labour_per_hour: {operator: 28}, contribution_per_kg: {PLA: 6}}";

    /** 18 kg/h of PLA, 1.24 g/cm3, at 1.75 mm. */
    private static final double M_PER_S = 18 / 3600.0 / (1240 * Math.PI / 4 * 0.00175 * 0.00175);

    @TempDir
    private Path folder;

    /**
     * Swaps lognormal, mean 30 s, cv 0.3. P(S > C/v) by the closed form: 70 m 10.30 %, 75 m 6.58 %, 80 m 4.21 %, 85 m 2.71
     * %; so of these 80 m is the cheapest with at most 5.3 %. 20 m at 100, (A/P, 10 %, 10) = 0.1627454: 325.49 a year.
     * Level 95 %, fixed seed.
     */
    @Test
    void findsTheCapacityThatTheClosedFormGives() throws IOException {
        Called called = called(
                """
                interest: 10 %
                choices:
                  room:
                    now: 60 m
                    options:
                      70 m: {set: {/lines/L2/accumulator: 70 m}, buy_per_metre: 100, life_years: 10}
                      75 m: {set: {/lines/L2/accumulator: 75 m}, buy_per_metre: 100, life_years: 10}
                      80 m: {set: {/lines/L2/accumulator: 80 m}, buy_per_metre: 100, life_years: 10}
                      85 m: {set: {/lines/L2/accumulator: 85 m}, buy_per_metre: 100, life_years: 10}
                """,
                "--set=/time/length=1 day", "--target=overflow <= 5.3 % of swaps", "--line=L2");

        assertThat(called.err()).isEmpty();
        assertThat(called.code()).isZero();
        assertThat(oneLine(called.out()))
                .contains(
                        "The cheapest mix that meets overflow <= 5.3 % of swaps on L2 is room 80 m: it costs EUR 325 a"
                                + " year, full accumulators lose EUR");
        assertThat(called.out().lines()).allMatch(line -> line.length() <= 100);
        assertThat(Files.readString(folder.resolve("out/summary.json")))
                .contains("\"name\" : \"room 80 m\"", "\"price_per_year\" : 325.4908");
        assertThat(ImageIO.read(folder.resolve("out/net-worth.png").toFile()).getWidth())
                .isEqualTo(1280);
    }

    /**
     * The closed form again, far out: ln S is normal with sigma^2 = ln 1.09 and mean ln 30 - sigma^2 / 2. 140 m last 83.51 s,
     * P = 139 of a million; 160 m last 95.44 s, 21.7 of a million; asked for are 50. Nobody could count them in ten days.
     */
    @Test
    void expectsOverflowsThatAreTooRareToBeCounted() {
        Called called = called(
                """
                choices:
                  room:
                    options:
                      140 m: {set: {/lines/L2/accumulator: 140 m}, per_year: 10}
                      160 m: {set: {/lines/L2/accumulator: 160 m}, per_year: 20}
                """,
                "--set=/time/length=1 day",
                "--target=overflow <= 0.005 % of swaps",
                "--no-charts");

        assertThat(called.err()).isEmpty();
        assertThat(oneLine(called.out()))
                .contains(
                        "The cheapest mix that meets overflow <= 0.005 % of swaps is room 160 m:",
                        "in 1 million", "Overflows are expected rather than counted (--rare).")
                .containsPattern("140 m 10 13[89]\\.\\d\\d")
                .containsPattern("160 m 20 21\\.[67]\\d");
    }

    /**
     * Swaps take just 30 s, which is 50.3 m: 55 m hold it and 40 and 45 m do not; swaps of 20 s are 33.5 m, which 40 m hold.
     * 15 m at 10 are 150 a year; a quick swap is cheaper at 149 and dearer at 151.
     */
    @ParameterizedTest
    @CsvSource({"149, hands quick", "151, room 55 m"})
    void findsTheCheapestOfTheProductByArithmetic(int perYear, String cheapest) {
        Called called = called(
                """
                choices:
                  room:
                    options:
                      45 m: {set: {/lines/L2/accumulator: 45 m}, buy_per_metre: 10, life_years: 1}
                      55 m: {set: {/lines/L2/accumulator: 55 m}, buy_per_metre: 10, life_years: 1}
                  hands:
                    options:
                      quick: {set: {/lines/L2/winder/stop: 20 s}, per_year: %d}
                """
                        .formatted(perYear),
                "--set=/lines/L2/accumulator=40 m",
                "--set=/every_line/winder/stop=30 s",
                "--set=/time/length=4 h",
                "--replications=2",
                "--no-charts",
                "--target=overflow <= 10 % of swaps");

        assertThat(called.err()).isEmpty();
        assertThat(oneLine(called.out()))
                .contains("is " + cheapest + ": it costs EUR")
                .satisfies(text -> assertThat(text).contains("6 mixes of 2 choices"));
    }

    /**
     * Two spools of 335.284 m in 500 s, full at 200 s and at 404.2 s. A swap of just 40 s fills 60 m after 35.79 s, so that
     * 4.21 s at 5 g/s go to the bin each time; 80 m hold it. A kilogram wasted costs 2.3 - 0.25 of resin and 6 of
     * contribution. A year has 365.25 x 24 x 3600 / 500 such runs. 20 m at 50 are 1000, over 5 years without interest 200.
     */
    @Test
    void isWorthWhatTheHandCountsOnTwoSpools() throws IOException {
        Called called = called(
                """
                choices:
                  room: {options: {80 m: {set: {/lines/L2/accumulator: 80 m}, buy_per_metre: 50, life_years: 5}}}
                """,
                "--set=/every_line/winder/stop=40 s",
                "--set=/time/length=500 s",
                "--replications=2",
                "--no-charts");

        double kg = 2 * (40 - 60 / M_PER_S) * 0.005;
        double gain = kg * (2.3 - 0.25 + 6) * 365.25 * 24 * 3600 / 500;
        assertThat(called.err()).isEmpty();
        assertThat(number("pay-back.csv", 1, "gain_per_year")).isCloseTo(gain, within(0.01));
        assertThat(number("pay-back.csv", 1, "gain_per_year_half_width")).isCloseTo(0, within(1e-6));
        assertThat(number("pay-back.csv", 1, "net_per_year")).isCloseTo(gain - 200, within(0.01));
        assertThat(number("pay-back.csv", 1, "gain_of_one_per_year")).isCloseTo(gain / 20, within(0.001));
        assertThat(number("pay-back.csv", 1, "price_of_one_per_year")).isEqualTo(10);
        assertThat(number("pay-back.csv", 1, "pay_back_years")).isCloseTo(1000 / gain, within(1e-6));
    }

    /** One person more all year round: 8766 h at 28, or at 30 where the option says so. Fewer or more is told. */
    @Test
    void paysPeopleByTheHoursOfTheRoster() throws IOException {
        String choices =
                """
                choices:
                  people:
                    options:
                      two: {set: {/shifts/pattern/A/crew/operator: 2}, per_hour: %s}
                """;

        called(choices.formatted("wages"), "--set=/time/length=8 h", "--replications=2", "--no-charts");
        double wages = number("pay-back.csv", 1, "price_per_year");
        called(choices.formatted("30"), "--set=/time/length=8 h", "--replications=2", "--no-charts");

        assertThat(wages).isCloseTo(8766 * 28, within(0.1));
        assertThat(number("pay-back.csv", 1, "price_per_year")).isCloseTo(8766 * 30, within(0.1));
        assertThat(number("pay-back.csv", 1, "paid_hours_per_year_more")).isCloseTo(8766, within(0.01));
    }

    @Test
    void cautionsWhereTheCrewGetsLeaner() {
        Called called = called(
                """
                choices:
                  people: {options: {one: {set: {/shifts/pattern/A/crew/operator: 1}, per_hour: wages}}}
                """,
                "--set=/shifts/pattern/A/crew/operator=2",
                "--set=/time/length=2 h",
                "--replications=2",
                "--no-charts");

        assertThat(oneLine(called.out()))
                .contains(
                        "Fewer people: people one. A leaner crew takes longer to answer burns", "docs/cautions.md, 11");
    }

    /**
     * A swap of 5 min outlasts 120 m, which last 71.6 s. A spool is full every 300 + (335.284 - 120) / 1.676418 = 428.4 s,
     * first after 200 s: 34 swaps in 4 h, of which the last began less than 71.6 s before the end; 33 / 34 = 97.06 %.
     */
    @Test
    void saysWhatLimitsATargetThatNoMixReaches() {
        Called called = called(
                """
                choices:
                  room: {options: {120 m: {set: {/lines/L2/accumulator: 120 m}, per_year: 0}}}
                """,
                "--target=overflow <= 1 %",
                "--set=/every_line/winder/stop=5 min",
                "--set=/time/length=4 h",
                "--no-charts");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err())
                .contains(
                        "No mix meets it. Nearest comes",
                        "with 97.06 % of swaps",
                        "swap too slow 97.06 %",
                        "no crew 0.00 %",
                        "Mend: ");
        assertThat(folder.resolve("out")).doesNotExist();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "{/lines/L9/accumulator: 70 m}, per_year: 0 | choices.yaml:3: /choices/c/options/o/set/~1lines~1L9~1accumulator = | there is no L9 on the way. | write L2 in place of L9",
                "{/shifts/pattern/X/crew/operator: 3}, per_year: 0 | choices.yaml:3: | there is nothing on the way to it. | 1 fault.",
                "{/lines/L2/acumulator: 70 m}, per_year: 0 | choices.yaml:3: | The key is unknown. | rename it to accumulator",
                "{/lines/L2/accumulator: 70 kg}, per_year: 0 | choices.yaml:3: | With c o: Must be a length | Mend:",
                "{/lines/L2/accumulator: -5 m}, per_year: 0 | choices.yaml:3: | With c o: | Mend:",
                "{/lines/L2/accumulator: 50 m}, buy_per_metre: 5, life_years: 3 | choices.yaml:3: /choices/c/options/o/buy_per_metre = 5.0. | more metres of accumulator | Mend:",
                "{/lines/L2/accumulator: 70 m}, buy_per_winder: 5, life_years: 3 | choices.yaml:3: | changes a winder | Mend:",
                "{/time/length: 3 h}, per_year: 0 | choices.yaml:3: | Must leave the time of the run | Mend:"
            })
    void saysWhereAnOptionIsWrong(String option, String place, String allowed, String mend) {
        Called called = called("choices:\n  c: {options: {\n      o: {set: " + option + "}}}\n", "--no-charts");

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains(place, allowed, mend);
        assertThat(called.out()).isEmpty();
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "--line=L3 | --line = L3. Must be a line of this plant: L2.",
                "--target=overflow<1% | --target = overflow<1%. Must have one of the forms",
                "--within=0 | --within = 0.0. Must be above 0.",
                "--budget=2kg | --budget = 2kg. Must be a time from 1 s to 7 days.",
                "--confidence=100 | --confidence = 100.0. Must be at least 50 and below 100.",
                "--most=5 | --most = 5. Must be a whole number from 10 to 100000.",
                "--set=/costs=null | Must have costs"
            })
    void refusesWhatMakesNoSense(String option, String message) {
        Called called =
                called("choices:\n  c: {options: {o: {set: {/lines/L2/accumulator: 70 m}, per_year: 0}}}\n", option);

        assertThat(called.code()).isEqualTo(ExitCode.INPUT);
        assertThat(called.err()).contains(message).contains("Mend: ");
    }

    @Test
    void tellsAllFaultsOfTheCallAtOnce() {
        Called called = called(
                "choices:\n  c: {options: {o: {set: {/lines/L2/accumulator: 70 m}, per_yeer: 0}}}\n",
                "--line=L3",
                "--most=1",
                "--target=overflow");

        assertThat(called.err())
                .contains("--most = 1.", "--target = overflow.", "per_yeer = 0.", "--line = L3.", "5 faults.");
        assertThat(called.out()).isEmpty();
        assertThat(folder.resolve("out")).doesNotExist();
    }

    private double number(String file, int row, String column) throws IOException {
        List<String> lines = Files.readAllLines(folder.resolve("out").resolve(file));
        int place = Arrays.asList(lines.get(0).split(",")).indexOf(column);
        return Double.parseDouble(lines.get(row).split(",", -1)[place]);
    }

    private static String oneLine(String text) {
        return text.replaceAll("\\s+", " ");
    }

    private Called called(String choices, String... options) {
        try {
            Path file = folder.resolve("choices.yaml");
            Files.writeString(file, choices);
            Path corner = Path.of(
                    InvestCommandTest.class.getResource("/corners/accumulator").toURI());
            List<String> arguments = new ArrayList<>(
                    List.of("invest", corner.toString(), "--choices=" + file, "--out=" + folder.resolve("out"), COSTS));
            arguments.addAll(List.of(options));
            return Called.with(arguments.toArray(String[]::new));
        } catch (IOException | URISyntaxException failure) {
            throw new IllegalStateException(failure);
        }
    }
}
