package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Random;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Plant;
import spoolyard.core.process.PlantRun;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.RunResult;
import spoolyard.scenarios.ScenarioReader;

/**
 * The way from full rate to good spools. That its parts are what the run counted is held on 300 random plants by
 * {@code ConservationProperties} in the core.
 */
final class LossTest {
    private static final Path SHIPPED = Path.of("../scenarios");

    private static Map<String, Double> byLabel(List<Loss> losses) {
        return losses.stream().collect(Collectors.toMap(Loss::label, Loss::spools));
    }

    /** Every step but the first, which they add up to. */
    private static double sumBelow(List<Loss> losses) {
        return losses.stream().skip(1).mapToDouble(Loss::spools).sum();
    }

    /**
     * By hand: a day at 18 kg/h is 432 kg, with spools of 1 kg 432 spools. 4 h not scheduled are 72, 2 h waiting for
     * crew 36, 3 h down 54; 15 h running are 270 at full rate, of which 250 at the rate of the product (20 lost), 10 lost
     * to reduced speed, 5 still on the line, 225 good; the last 10 ran to waste on a strand under repair.
     */
    @Test
    void addsUpOnALineWorkedByHand() {
        Plant plant = SamplePlant.of(1, 1);
        assertThat(plant.lines().get(0).nominalRateKgPerH()).isEqualTo(18);
        LineResult line = OeeTest.line(
                Map.of(
                        LineState.NOT_SCHEDULED, 4.0,
                        LineState.WAITING_FOR_CREW, 2.0,
                        LineState.DOWN, 3.0,
                        LineState.RUNNING, 15.0),
                225,
                250,
                10,
                5);

        List<Loss> losses = Loss.of(plant, line);

        Map<String, Double> spools = byLabel(losses);
        assertThat(losses.get(0)).isEqualTo(new Loss(Loss.FULL, 432));
        assertThat(spools.get("not scheduled")).isEqualTo(72);
        assertThat(spools.get("no crew")).isEqualTo(36);
        assertThat(spools.get("down")).isEqualTo(54);
        assertThat(spools.get("product rate")).isEqualTo(20);
        assertThat(spools.get("reduced speed")).isEqualTo(10);
        assertThat(spools.get("strand under repair")).isEqualTo(10);
        assertThat(spools.get("still on the line")).isEqualTo(5);
        assertThat(losses.get(losses.size() - 1)).isEqualTo(new Loss(Loss.GOOD, 225));
        assertThat(sumBelow(losses)).isEqualTo(432);
    }

    @ParameterizedTest
    @ValueSource(strings = {"orrenvale", "orrenvale-two-by-twelve", "two-lines"})
    void addsUpOnSimulatedLinesAndEndsAtTheirGoodSpools(String scenario) throws Exception {
        Plant plant = ScenarioReader.read(SHIPPED.resolve(scenario), List.of("/time/length=9 days"))
                .plant();
        RunResult run = new PlantRun(plant, new Random(20271202).nextLong(), 0, EventLog.SILENT).run();

        for (LineResult line : run.lines()) {
            List<Loss> losses = Loss.of(plant, line);
            Map<String, Double> spools = byLabel(losses);
            assertThat(sumBelow(losses))
                    .isCloseTo(
                            losses.get(0).spools(), within(1e-10 * losses.get(0).spools()));
            assertThat(spools.get(Loss.GOOD)).isCloseTo(line.goodSpools(), within(1e-9));
            spools.forEach((label, lost) -> assertThat(lost).as(label).isGreaterThan(-1e-6));
            double spoolKg = line.goodKg() / line.goodSpools();
            double fullKg = plant.lines().stream()
                    .filter(each -> each.name().equals(line.line()))
                    .mapToDouble(each -> each.nominalRateKgPerH() * Ticks.toHours(plant.horizonTicks()))
                    .sum();
            assertThat(losses.get(0).spools() * spoolKg).isCloseTo(fullKg, within(1e-6));
        }
    }

    @Test
    void addsUpToTheLossesOfAllLines() {
        RunReport report = SampleReports.of(3, 1, 2);
        Estimates table = report.table(LossSheet.SHEET);

        for (List<String> key : table.keys()) {
            double ofLines = List.of("L1", "L2", "L3").stream()
                    .mapToDouble(line -> table.at(List.of(line, key.get(1)), LossSheet.SPOOLS)
                            .mean())
                    .sum();
            assertThat(table.at(List.of(LossSheet.ALL, key.get(1)), LossSheet.SPOOLS)
                            .mean())
                    .as(key.get(1))
                    .isCloseTo(ofLines, within(1e-6));
        }
        assertThat(table.at(List.of(LossSheet.ALL, Loss.GOOD), LossSheet.SPOOLS).mean())
                .isCloseTo(report.plant(PlantSheet.SPOOLS).mean(), within(1e-6));
    }
}
