package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.Map;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/**
 * Each part of the plant model shows in what the reference plant makes: none is there in name only. What no table tells by
 * itself, such as dryers on wheels, {@code PartsTurnedOffTest} shows by what is made without it.
 */
final class WholePlantTest {
    private static final Path SCENARIOS = Path.of("..", "scenarios");

    @TempDir
    private static Path parent;

    private static ResultFolder reference;
    private static ResultFolder easter;

    @BeforeAll
    static void runReferencePlantAndItsHouseRules() {
        reference = run("orrenvale");
        easter = run("orrenvale-easter");
    }

    private static ResultFolder run(String scenario) {
        Path out = parent.resolve(scenario);
        Called called = Called.with(
                "run", SCENARIOS.resolve(scenario).toString(), "--replications=2", "--threads=1", "--out=" + out);
        assertThat(called.code()).as(called.err()).isZero();
        return new ResultFolder(out);
    }

    /** Part; file and column of the results; what stands in the first columns of the rows to add up, * for anything. */
    @ParameterizedTest(name = "{0}")
    @CsvSource({
        "sorting of refused lots, lots, sorted_spools, *",
        "winding anew of refused lots, lots, respooled_spools, *",
        "lots closed by a full quarantine, lots, cut_lots, *",
        "lots refused, lots, refused_lots, *",
        "lots held in quarantine, lots, hold_h_each, *",
        "tests, lab, done, moisture",
        "tests that wait for the lab, lab, mean_wait_min, colour",
        "spools exposed too long, exposure, spools_beyond_limit, *",
        "spools dried again, exposure, redried_spools, *",
        "spools scrapped for exposure, exposure, scrapped_spools, *",
        "TPU exposed too long, exposure, spools_beyond_limit, TPU",
        "the oven, lab, done, drying again",
        "colour refused, colour_approval, refusals, *",
        "product held for its colour, colour_approval, held_spools, *",
        "refused product scrapped, colour_approval, scrapped_spools, *",
        "excursions, lines, excursions, *",
        "spools cut at an excursion, lines, spools_cut_short, *",
        "second quality, lines, b_grade_spools, *",
        "spools flagged, lines, flagged_spools, *",
        "flagged spools rejected, lines, flagged_spools_rejected, *",
        "regrind fed, regrind, taken_kg, *",
        "scrap ground, regrind, ground_kg, *",
        "deliveries of resin, stocks, received, resin",
        "deliveries of concentrate, stocks, received, concentrate",
        "deliveries of empty spools, stocks, received, empty spools",
        "deliveries of cartons, stocks, received, cartons",
        "reorders, stocks, orders_placed, *",
        "want of material, stocks, lines_stood_h, concentrate",
        "hoppers and dryers that a line waits for, states, hours, line|*|waiting for material",
        "orderly shut-down, states, hours, line|L1|shutting down",
        "accumulators full, lines, overflow_m, *",
        "a slowed line, states, hours, line|*|slowed",
        "swaps without a person, lines, overflow_no_crew_pct_of_swaps, *",
        "planned stops, states, hours, line|*|planned stop",
        "breakdowns, states, hours, line|*|down",
        "sealing done again, finishing, repeated_cycles, sealing",
        "bar tape, finishing, working_pct_of_open, sealing",
        "overtime, crew, paid_h, operator|S",
        "walking, crew, walking_h, *",
        "breaks, crew, on_break_h, *",
        "energy by mass, energy, kwh, L1|by mass",
        "energy for heat-ups, energy, kwh, L1|heat-ups",
        "energy in hot standby, energy, kwh, L1|hot standby",
        "base load with a line hot, energy, kwh, 'plant|base load, a line hot'",
        "grinding, energy, kwh, plant|grinding",
        "lost contribution, lost_contribution, contribution, *",
        "resin paid, costs, cost, resin",
        "compound paid, costs, cost, purge compound",
        "energy paid, costs, cost, energy"
    })
    void showsInTheResultsOfTheReferencePlant(String part, String file, String column, String keys) {
        assertThat(reference.sum(file, column, keys.split("\\|"))).as(part).isPositive();
    }

    /** By the rates and shares of the scenario: 28 an hour, a quarter more at night, half as much again on Saturday. */
    @Test
    void paysNightsAndSaturdaysMore() {
        double paid = 0;
        for (Map.Entry<String, Double> pay :
                Map.of("D", 1.0, "E", 1.0, "N", 1.25, "S", 1.5).entrySet()) {
            double hours = reference.sum("crew", "paid_h", "operator", pay.getKey());
            assertThat(hours).as(pay.getKey()).isPositive();
            paid += 28 * pay.getValue() * hours;
        }

        assertThat(reference.sum("costs", "cost", "labour", "operator")).isCloseTo(paid, within(0.1));
    }

    /**
     * A line that shuts down is heated once a week; one that stands hot or runs on once, or again after a repair that lets
     * it cool. Nobody swaps spools on Sunday, so a line that runs on stands full: state overflow stop.
     */
    @Test
    void keepsOneLineHotAndLetsOneRunOn() {
        assertThat(reference.sum("energy", "heat_ups", "L6", "heat-ups")).isGreaterThan(3);
        for (String line : new String[] {"L5", "L8"}) {
            assertThat(reference.sum("energy", "heat_ups", line, "heat-ups"))
                    .as(line)
                    .isBetween(1.0, 2.5);
            assertThat(reference.sum("energy", "hours", line, "hot standby"))
                    .as(line)
                    .isGreaterThan(150);
            assertThat(reference.sum("states", "hours", "line", line, "shutting down"))
                    .isZero();
        }
        assertThat(reference.sum("states", "hours", "line", "L5", "overflow stop"))
                .isGreaterThan(1);
        assertThat(reference.sum("states", "hours", "line", "L8", "overflow stop"))
                .isZero();
    }

    /** What the house rules of the variation bring: two lines no longer hot, so that there are hours with none. */
    @Test
    void showsTheOtherPartsInTheVariation() {
        assertThat(easter.sum("energy", "kwh", "plant", "base load, all cold")).isPositive();
        assertThat(easter.sum("scrap", "scrap_kg", "*", "colour approval")).isPositive();
        assertThat(easter.sum("states", "hours", "line", "L5", "shutting down")).isPositive();
        assertThat(easter.sum("orders", "packed_spools", "SO-4102")).isPositive();
    }
}
