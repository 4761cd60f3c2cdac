package spoolyard.core.process;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import spoolyard.core.plant.ChangeoverRules;
import spoolyard.core.plant.ChangeoverRules.MeasuredPurge;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.StartStop;
import spoolyard.core.plant.Window;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.ScrapCause;

/**
 * Hand-worked weeks' ends. The line works from 0 to 10 h and from 58 to 70 h, makes 18 kg/h (0.005 kg/s), holds 0.85 kg of melt.
 * Two melt volumes of compound, 1.7 kg, in 1200 s; natural to white 1 kg (200 s), natural to black 3 kg (600 s), black to white
 * 10 kg (2000 s).
 */
class EndOfWeekTest {
    private static final Colour NATURAL = new Colour("NAT", "Natural", 92, 0, 4, 1, 1, 0);
    private static final double WEEK_H = 10;
    private static final double MONDAY_H = 58;

    private final PlantSketch sketch = new PlantSketch();

    private void plant(EndOfPeriod end, double shutDownS, double shutDownHoldUps) {
        sketch.hours = 70;
        sketch.rateKgPerH = 18;
        sketch.periods.add(new Window("one", 0, PlantSketch.ticks(WEEK_H * 3600)));
        sketch.periods.add(new Window("two", PlantSketch.ticks(MONDAY_H * 3600), PlantSketch.ticks(70 * 3600)));
        sketch.startStop = new StartStop(
                new HeatUp.Timed(Law.ZERO),
                Law.ZERO,
                Law.ZERO,
                Law.ZERO,
                0,
                new Law.Fixed(shutDownS),
                shutDownHoldUps,
                end,
                0,
                CrewNeed.NOBODY);
        ChangeoverRules was = sketch.changeovers;
        sketch.changeovers = new ChangeoverRules(
                List.of(
                        new MeasuredPurge("*", "*", "NAT", "WHT", 1),
                        new MeasuredPurge("*", "*", "NAT", "BLK", 3),
                        new MeasuredPurge("*", "*", "WHT", "BLK", 2),
                        new MeasuredPurge("*", "*", "BLK", "WHT", 10)),
                was.unmeasured(),
                List.of(),
                List.of(),
                List.of(),
                0,
                0,
                false,
                was.approval());
    }

    private void purges(double standsH, CrewNeed crew) {
        sketch.changeovers =
                sketch.changeovers.with(new EndOfWeek(standsH * 3600, 2, new Law.Fixed(1200), crew, NATURAL));
    }

    /** Black from the start; white is released on Monday. */
    private void blackThenWhite() {
        sketch.order("SO-1", PlantSketch.BLACK_PLA, 20);
        Order black = sketch.orders.get(0);
        sketch.orders.add(new Order(
                "SO-2",
                PlantSketch.WHITE_PLA,
                5,
                PlantSketch.ticks(MONDAY_H * 3600),
                black.dueTick(),
                1,
                1,
                List.of("L1")));
    }

    private LineResult run() {
        return result().lines().get(0);
    }

    private RunResult result() {
        return new PlantRun(sketch.plant(), 1, 0, EventLog.SILENT).run();
    }

    private static double scrapKg(LineResult line, ScrapCause cause) {
        return line.scrapKg().get(cause);
    }

    @ParameterizedTest
    @EnumSource(EndOfPeriod.class)
    void theNextColourStartsFromTheCleanOne(EndOfPeriod end) {
        plant(end, 0, 0);
        blackThenWhite();
        LineResult without = run();
        purges(48, CrewNeed.NOBODY);

        LineResult with = run();

        assertThat(scrapKg(without, ScrapCause.POLYMER_PURGE)).isZero();
        assertThat(scrapKg(without, ScrapCause.COLOUR_PURGE)).isCloseTo(10, within(1e-6));
        assertThat(without.stateS().get(LineState.PURGING)).isCloseTo(2000, within(1e-5));
        assertThat(scrapKg(with, ScrapCause.POLYMER_PURGE)).isCloseTo(1.7, within(1e-6));
        assertThat(scrapKg(with, ScrapCause.COLOUR_PURGE)).isCloseTo(1, within(1e-6));
        assertThat(with.stateS().get(LineState.PURGING)).isCloseTo(1200 + 200, within(1e-5));
        assertThat(with.use().compoundKg()).isCloseTo(1.7, within(1e-6));
    }

    /** The order goes on on Monday after 600 s of purge back into its own colour. */
    @Test
    void aColourThatGoesOnOverTheWeekendIsChangedToOnceMore() {
        plant(EndOfPeriod.SHUT_DOWN, 0, 0);
        sketch.order("SO-1", PlantSketch.BLACK_PLA, 5000);
        purges(48, CrewNeed.NOBODY);

        RunResult result = result();

        LineResult line = result.lines().get(0);
        assertThat(scrapKg(line, ScrapCause.POLYMER_PURGE)).isCloseTo(1.7, within(1e-6));
        assertThat(scrapKg(line, ScrapCause.COLOUR_PURGE)).isCloseTo(3, within(1e-6));
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(1200 + 600, within(1e-5));
        assertThat(line.stateS().get(LineState.NOT_SCHEDULED)).isCloseTo(48 * 3600, within(1e-5));
        assertThat(result.changeovers()).hasSize(1);
        assertThat(result.changeovers().get(0).fromColour()).isEqualTo("NAT");
        assertThat(result.changeovers().get(0).toColour()).isEqualTo("BLK");
    }

    /** 600 s of shut-down with one melt volume, 0.85 kg, follow: the purge begins 1800 s before the end. */
    @Test
    void theShutDownFollowsThePurge() {
        plant(EndOfPeriod.SHUT_DOWN, 600, 1);
        sketch.order("SO-1", PlantSketch.BLACK_PLA, 5000);
        purges(48, CrewNeed.NOBODY);
        sketch.hours = WEEK_H + 40;

        LineResult line = run();

        assertThat(scrapKg(line, ScrapCause.POLYMER_PURGE)).isCloseTo(1.7, within(1e-6));
        assertThat(scrapKg(line, ScrapCause.SHUT_DOWN)).isCloseTo(0.85, within(1e-6));
        assertThat(line.stateS().get(LineState.PURGING)).isCloseTo(1200, within(1e-5));
        assertThat(line.stateS().get(LineState.SHUTTING_DOWN)).isCloseTo(600, within(1e-5));
    }

    @Test
    void aShorterStopAndACleanScrewNeedNone() {
        plant(EndOfPeriod.SHUT_DOWN, 0, 0);
        blackThenWhite();
        purges(48.1, CrewNeed.NOBODY);
        LineResult shorter = run();
        sketch.orders.clear();
        sketch.order("SO-1", new Product(PlantSketch.BLACK_PLA.polymer(), NATURAL, 1.75, 1), 5000);
        purges(48, CrewNeed.NOBODY);

        LineResult clean = run();

        assertThat(scrapKg(shorter, ScrapCause.POLYMER_PURGE)).isZero();
        assertThat(scrapKg(shorter, ScrapCause.COLOUR_PURGE)).isCloseTo(10, within(1e-6));
        assertThat(scrapKg(clean, ScrapCause.POLYMER_PURGE)).isZero();
        assertThat(clean.stateS().get(LineState.PURGING)).isZero();
    }

    /** With an operator as above. Nobody there at the end of the week: the colour stays in the screw. */
    @Test
    void takesItsCrewAndIsLeftOutWithoutOne() {
        plant(EndOfPeriod.SHUT_DOWN, 0, 0);
        blackThenWhite();
        purges(48, PlantSketch.OPERATOR);
        sketch.shifts.add(new Shift("A", 0, PlantSketch.ticks(9.7 * 3600), List.of(0), List.of(), 0, true, 1));
        sketch.shifts.add(new Shift(
                "B",
                PlantSketch.ticks(MONDAY_H * 3600),
                PlantSketch.ticks(70 * 3600),
                List.of(1),
                List.of(),
                0,
                true,
                1));
        sketch.swapCrew = CrewNeed.NOBODY;

        LineResult nobody = run();
        sketch.shifts.clear();
        LineResult somebody = run();

        assertThat(scrapKg(nobody, ScrapCause.POLYMER_PURGE)).isZero();
        assertThat(scrapKg(nobody, ScrapCause.COLOUR_PURGE)).isCloseTo(10, within(1e-6));
        assertThat(scrapKg(somebody, ScrapCause.POLYMER_PURGE)).isCloseTo(1.7, within(1e-6));
        assertThat(scrapKg(somebody, ScrapCause.COLOUR_PURGE)).isCloseTo(1, within(1e-6));
    }
}
