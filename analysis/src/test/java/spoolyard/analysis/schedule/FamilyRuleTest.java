package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.process.PlantRun;
import spoolyard.core.record.EventLog;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** A family rule costs the simulator and the planner the same. */
final class FamilyRuleTest {
    private static final String NO_REFUSALS = "/changeover/approval/refused=0 %";
    private static final String THROUGH_RED = "/changeover/through/dark to light="
            + "{from: [BLK, NVY, BLU, PUR, BRN, GRN], to: [WHT, NAT, YEL, ORG, LGR], colour: RED}";

    private static Plant orrenvale(String... settings) throws ScenarioException {
        return ScenarioReader.read(Path.of("..", "scenarios", "orrenvale"), List.of(settings))
                .plant();
    }

    private static List<ChangeoverResult> changeovers(Plant plant) {
        return new PlantRun(plant, 1, 0, EventLog.SILENT).run().changeovers();
    }

    private static double plannedKg(Plant plant, ChangeoverResult change) {
        Weights weights = new Weights(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, 24, Weights.First.NEITHER);
        Line line = plant.lines().stream()
                .filter(each -> each.name().equals(change.line()))
                .findFirst()
                .orElseThrow();
        return new ChangeoverArithmetic(plant, weights)
                .estimate(line, product(plant, change.from()), product(plant, change.to()))
                .purgeKg();
    }

    private static Product product(Plant plant, String label) {
        return plant.book().orders().stream()
                .map(order -> order.product())
                .filter(product -> product.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /** Up to the first change under the rule the two runs of a line are one, so the difference there is the rule's alone. */
    @Test
    void theFirstChangeUnderARulePurgesAsMuchMoreAsPlanned() throws ScenarioException {
        Plant plain = orrenvale(NO_REFUSALS);
        Plant ruled = orrenvale(NO_REFUSALS, THROUGH_RED);
        List<ChangeoverResult> before = changeovers(plain);
        ChangeoverResult first = changeovers(ruled).stream()
                .filter(change -> !change.from().isEmpty())
                .filter(change -> plannedKg(ruled, change) != plannedKg(plain, change))
                .min((one, other) -> Long.compare(one.startTick(), other.startTick()))
                .orElseThrow();

        ChangeoverResult same = before.stream()
                .filter(change -> change.line().equals(first.line()) && change.startTick() == first.startTick())
                .findFirst()
                .orElseThrow();

        double more = plannedKg(ruled, first) - plannedKg(plain, first);
        assertThat(more).isGreaterThan(0.1);
        assertThat(first.purgeKg() - same.purgeKg()).isCloseTo(more, within(1e-3));
    }
}
