package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.as;
import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.assertj.core.api.InstanceOfAssertFactories;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.CrewNeed;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.PurgeTable;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class ChangeoverArithmeticTest {
    private static final double RATE_KG_PER_S = 18.0 / 3600;

    private static Plant orrenvale() throws ScenarioException {
        return ScenarioReader.read(
                        Path.of("..", "scenarios", "orrenvale"), List.of("/changeover/approval/meanwhile=run to waste"))
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

    /** As above with product held: the line waits for refused colours only, but each judgement takes its 10 min of work. */
    @Test
    void countsTheWorkOfAJudgementForWhichTheLineDoesNotWait() throws ScenarioException {
        Plant waiting = orrenvale();
        Plant held = ScenarioReader.read(
                        Path.of("..", "scenarios", "orrenvale"), List.of("/changeover/approval/meanwhile=hold"))
                .plant();
        Product from = product(held, "PLA NVY 1.75 mm");
        Product to = product(held, "PLA YEL 1.75 mm");

        ChangeoverEstimate ifWaiting = new ChangeoverArithmetic(waiting, weights(waiting))
                .estimate(waiting.lines().get(1), from, to);
        ChangeoverEstimate ifHeld = new ChangeoverArithmetic(held, weights(held))
                .estimate(held.lines().get(1), from, to);

        assertThat(ifHeld.lineS()).isCloseTo(ifWaiting.lineS() - 600, within(1e-6));
        assertThat(ifHeld.crewS()).isCloseTo(ifWaiting.crewS(), within(1e-6));
    }

    /** By hand: feeder swap 6 min by the setter, judgement 10 / 0.94 min by the laboratory or the lead. */
    @Test
    void namesWhoIsNeeded() throws ScenarioException {
        Plant plant = orrenvale();

        Map<CrewNeed, Double> crewS = new ChangeoverArithmetic(plant, weights(plant))
                .crewS(plant.lines().get(1), product(plant, "PLA NVY 1.75 mm"), product(plant, "PLA YEL 1.75 mm"));

        assertThat(crewS.keySet())
                .containsExactly(new CrewNeed(List.of("setter")), new CrewNeed(List.of("lab", "lead")));
        assertThat(crewS.values()).first(as(InstanceOfAssertFactories.DOUBLE)).isCloseTo(360, within(1e-6));
        assertThat(crewS.values()).last(as(InstanceOfAssertFactories.DOUBLE)).isCloseTo(600 / 0.94, within(1e-6));
    }

    @Test
    void sharesAllAttendedTimeOutAmongThoseWhoAreNeeded() throws ScenarioException {
        Plant plant = orrenvale();
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(plant, weights(plant));
        Line line = plant.lines().get(7);
        List<Product> products = plant.book().orders().stream()
                .map(order -> order.product())
                .filter(line::canMake)
                .toList();

        for (Product from : products) {
            for (Product to : products) {
                assertThat(arithmetic.crewS(line, from, to).values().stream()
                                .mapToDouble(each -> each)
                                .sum())
                        .isCloseTo(arithmetic.estimate(line, from, to).crewS(), within(1e-6));
            }
        }
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
