package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.EndOfPeriod;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantRun;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** The elements of OEE, taken from what a simulated line tells, fit together. */
final class RealRunOeeTest {
    private static final Path SCENARIO = Path.of("..", "scenarios", "orrenvale");

    @Test
    void findsProducedMassBetweenGoodMassAndGoodMassWithAllScrap() throws ScenarioException {
        for (LineResult line : twoWeeks().lines()) {
            Oee oee = Oee.of(line);

            assertThat(oee.producedKg()).isGreaterThanOrEqualTo(oee.goodKg() - 1e-6);
            assertThat(oee.producedKg()).isLessThanOrEqualTo(oee.goodKg() + line.totalScrapKg() + 1e-6);
        }
    }

    /** Availability and its losses are shares of one whole: planned busy time. */
    @Test
    void splitsPlannedBusyTimeIntoProductionAndLosses() throws ScenarioException {
        for (LineResult line : twoWeeks().lines()) {
            double lossesS = StateGroup.LOSSES.stream()
                    .flatMap(group -> group.states().stream())
                    .mapToDouble(state -> line.stateS().get(state))
                    .sum();

            Oee oee = Oee.of(line);

            assertThat(oee.productionS() + lossesS).isCloseTo(oee.plannedBusyS(), within(1e-6));
        }
    }

    /**
     * Source: ISO 22400-2:2014, planned busy time is the scheduled time less planned down time. L5 runs on when nobody is there,
     * and L6 heats by timer 2 h ahead of the second Monday (the run begins with the first): busy time outside the schedule.
     */
    @Test
    void plansTheWorkingPeriodsLessPlannedStops() throws ScenarioException {
        Plant plant = plant();
        RunResult result = new PlantRun(plant, 3, 0, EventLog.SILENT).run();

        for (int i = 0; i < plant.lines().size(); i++) {
            LineResult line = result.lines().get(i);
            double scheduledS = plant.lines().get(i).workingPeriods().stream()
                    .mapToDouble(period -> Math.min(period.endTick(), plant.horizonTicks()) - period.startTick())
                    .map(ticks -> ticks / Ticks.PER_SECOND)
                    .sum();

            double plannedS = Oee.of(line).plannedBusyS() + line.stateS().get(LineState.PLANNED_STOP);

            if (plant.lines().get(i).startStop().endOfPeriod() == EndOfPeriod.RUN_ON) {
                assertThat(plannedS).as(line.line()).isGreaterThan(scheduledS);
            } else {
                assertThat(plannedS)
                        .as(line.line())
                        .isCloseTo(scheduledS + (line.line().equals("L6") ? 7200 : 0), within(1e-6));
            }
        }
    }

    private static RunResult twoWeeks() throws ScenarioException {
        return new PlantRun(plant(), 1, 0, EventLog.SILENT).run();
    }

    private static Plant plant() throws ScenarioException {
        return ScenarioReader.read(SCENARIO, List.of("/time/length=2 weeks")).plant();
    }
}
