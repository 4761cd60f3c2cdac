package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.core.plant.EndOfWeek;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantRun;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult;

/**
 * Worked by hand, at 3 a kg, 50 an hour of the line, 30 an hour of work. 2130 spools of 1 kg at 18 kg/h with 0.8 % rejects take
 * 2130 / 18 / 0.992 = 119.28763 h of the 120 h of the week. A purge takes 1.7 kg and 1/3 h of line and operator: 5.1 + 16.6667
 * + 10 = 31.76667. Natural to white takes 1 kg and 1/18 h: 3 + 2.77778 = 5.77778; black to white ten times that.
 */
final class EndOfWeekPlanTest {
    private static final double PURGE = 31.7666667;
    private static final double BLACK_H = 119.2876344;

    private static PlantBook book(Optional<EndOfWeek> purge) {
        Weights weights = new Weights(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, 24, Weights.First.NEITHER);
        return PlantBook.of(SamplePlant.overAWeekend(purge), weights, Map.of());
    }

    private static PlanFigures plan(Optional<EndOfWeek> purge) {
        PlantBook book = book(purge);
        return PlanFigures.of("plan", book, TimedPlan.of(book.problem(), new Plan(List.of(List.of(0, 1)))));
    }

    private static double hours(double seconds) {
        return seconds / 3600;
    }

    /** The changeover takes 10/18 = 0.55556 h: white from 119.84319 h. */
    @Test
    void withoutThePurgeTheChangeoverComesBeforeTheWeekend() {
        PlanFigures plan = plan(Optional.empty());

        TimedJob white = plan.timed().lines().get(0).get(1);
        assertThat(hours(white.makingS())).isCloseTo(BLACK_H + 10 / 18.0, within(1e-6));
        assertThat(plan.changeovers().purgeKg()).isCloseTo(10, within(1e-9));
        assertThat(plan.changeovers().money()).isCloseTo(57.7777778, within(1e-6));
        assertThat(plan.timed().changeoverCost()).isCloseTo(57.7777778, within(1e-6));
    }

    /**
     * The purge begins at 119.66667 h; the changeover would not be done by then and waits for Monday, 168 h. The line is purged
     * once more at the end of the second week.
     */
    @Test
    void withThePurgeTheChangeoverStartsFromCleanOnMonday() {
        PlanFigures plan = plan(Optional.of(SamplePlant.PURGE));

        TimedJob white = plan.timed().lines().get(0).get(1);
        assertThat(hours(white.startS())).isCloseTo(168, within(1e-6));
        assertThat(hours(white.makingS())).isCloseTo(168 + 1 / 18.0, within(1e-6));
        assertThat(plan.before(0, white).purgeKg()).isCloseTo(1, within(1e-9));
        assertThat(plan.changeovers().purgeKg()).isCloseTo(1, within(1e-9));
        assertThat(plan.changeovers().compoundKg()).isCloseTo(2 * 1.7, within(1e-9));
        assertThat(hours(plan.changeovers().lineS())).isCloseTo(2 / 3.0 + 1 / 18.0, within(1e-9));
        assertThat(plan.changeovers().money()).isCloseTo(2 * PURGE + 5.7777778, within(1e-6));
        assertThat(plan.timed().changeoverCost()).isCloseTo(2 * PURGE + 5.7777778, within(1e-6));
        assertThat(hours(PlacedWeekEnd.of(plan, 0).get(0).endTick() / 1e6)).isCloseTo(120, within(1e-6));
    }

    /** 1.7 kg of compound twice and 1 kg. */
    @Test
    void theFrontierCountsCompoundToo() {
        PlantBook book = book(Optional.of(SamplePlant.PURGE));

        TimedPlan kg = TimedPlan.of(TradeOffBook.of(book), new Plan(List.of(List.of(0, 1))));

        assertThat(kg.changeoverCost()).isCloseTo(2 * 1.7 + 1, within(1e-9));
    }

    @Test
    void aRunPaysForThePurgesThatItMakes() {
        PlantBook book = book(Optional.of(SamplePlant.PURGE));
        Plant planned = plan(Optional.of(SamplePlant.PURGE)).asGiven();

        RunResult run = new PlantRun(planned, 1, 0, EventLog.SILENT).run();

        assertThat(run.lines().get(0).use().compoundKg()).isCloseTo(2 * 1.7, within(1e-6));
        assertThat(new ChangeoverPrices(book).weekEnds(run)).isCloseTo(2 * PURGE, within(1e-6));
    }
}
