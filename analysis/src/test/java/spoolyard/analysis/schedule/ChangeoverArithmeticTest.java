package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.PurgeTable;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class ChangeoverArithmeticTest {
    private static final double RATE_KG_PER_S = 18.0 / 3600;

    private static Plant orrenvale() throws ScenarioException {
        return orrenvale("run to waste");
    }

    private static Plant orrenvale(String meanwhile) throws ScenarioException {
        return ScenarioReader.read(
                        Path.of("..", "scenarios", "orrenvale"), List.of("/changeover/approval/meanwhile=" + meanwhile))
                .plant();
    }

    private static Weights weights(Plant plant) {
        return new Weights(
                plant.economy().prices(), OptionalDouble.of(2), OptionalDouble.of(100), 0.5, 24, Weights.First.NEITHER);
    }

    private static Product product(Plant plant, String label) {
        return plant.book().orders().stream()
                .map(order -> order.product())
                .filter(product -> product.label().equals(label))
                .findFirst()
                .orElseThrow();
    }

    /**
     * By hand, on L2 at 18 kg/h: feeder swap 6 min; purge of the table; approval 10 min, refused with 6 %, so 10 / 0.94 min
     * and 0.06 / 0.94 times half the purge again. The setter has 34 an hour, the laboratory 32.
     */
    @Test
    void reckonsAColourChangeWorkedByHand() throws ScenarioException {
        Plant plant = orrenvale();
        Line line = plant.lines().get(1);
        Product from = product(plant, "PLA NVY 1.75 mm");
        Product to = product(plant, "PLA YEL 1.75 mm");
        double tableKg =
                new PurgeTable(plant.changeovers()).purgeKg(line, from, to).orElseThrow();
        double purgeKg = tableKg * (1 + 0.5 * 0.06 / 0.94);
        double approvalS = 600 / 0.94;

        ChangeoverEstimate estimate = new ChangeoverArithmetic(plant, weights(plant)).estimate(line, from, to);

        double lineS = 360 + purgeKg / RATE_KG_PER_S + approvalS;
        double wasteKg = purgeKg + approvalS * RATE_KG_PER_S;
        assertThat(estimate.purgeKg()).isCloseTo(wasteKg, within(1e-9));
        assertThat(estimate.compoundKg()).isZero();
        assertThat(estimate.lineS()).isCloseTo(lineS, within(1e-6));
        assertThat(estimate.crewS()).isCloseTo(360 + approvalS, within(1e-6));
        assertThat(estimate.money())
                .isCloseTo(2 * wasteKg + 100 * lineS / 3600 + 34 * 360 / 3600.0 + 32 * approvalS / 3600, within(1e-6));
    }

    /** By hand: the laboratory works 10 / 0.94 min either way; what is held costs the line only what is refused. */
    @Test
    void whoJudgesWhatIsHeldWorksEachTime() throws ScenarioException {
        Plant wasted = orrenvale();
        Plant held = orrenvale("hold");
        Product from = product(wasted, "PLA NVY 1.75 mm");
        Product to = product(wasted, "PLA YEL 1.75 mm");

        ChangeoverEstimate waste = new ChangeoverArithmetic(wasted, weights(wasted))
                .estimate(wasted.lines().get(1), from, to);
        ChangeoverEstimate hold = new ChangeoverArithmetic(held, weights(held))
                .estimate(held.lines().get(1), from, to);

        assertThat(hold.crewS()).isCloseTo(360 + 600 / 0.94, within(1e-6));
        assertThat(waste.lineS() - hold.lineS()).isCloseTo(600, within(1e-6));
        assertThat(waste.purgeKg() - hold.purgeKg()).isCloseTo(600 * RATE_KG_PER_S, within(1e-9));
        assertThat(waste.money() - hold.money()).isCloseTo(2 * 600 * RATE_KG_PER_S + 100 * 600 / 3600.0, within(1e-6));
    }

    @Test
    void sameMeltCostsNothing() throws ScenarioException {
        Plant plant = orrenvale();
        Product black = product(plant, "PLA BLK 1.75 mm");

        assertThat(new ChangeoverArithmetic(plant, weights(plant))
                        .estimate(plant.lines().get(1), black, black))
                .isEqualTo(ChangeoverEstimate.NONE);
    }
}
