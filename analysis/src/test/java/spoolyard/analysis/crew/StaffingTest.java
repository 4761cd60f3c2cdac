package spoolyard.analysis.crew;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** The shipped plant of two lines and the published curves on round numbers. */
final class StaffingTest {
    @Test
    void setsThePeopleOfEveryShiftThatHasAnyAndLeavesTheOthers() throws ScenarioException {
        Plant plant = ScenarioReader.read(Path.of("../scenarios/two-lines"), List.of())
                .plant();
        Staffing staffing = Staffing.of(plant, "operator");

        Staffing three = Staffing.of(staffing.with(3), "operator");

        assertThat(three.fewest()).isEqualTo(3);
        assertThat(three.most()).isEqualTo(3);
        assertThat(three.mannedTicks()).isEqualTo(staffing.mannedTicks()).isPositive();
        assertThat(three.winders()).isEqualTo(staffing.winders()).isEqualTo(3);
    }

    @Test
    void refusesARoleThatThePlantDoesNotHave() throws ScenarioException {
        Plant plant = ScenarioReader.read(Path.of("../scenarios/two-lines"), List.of())
                .plant();

        assertThatIllegalArgumentException()
                .isThrownBy(() -> Staffing.of(plant, "juggler"))
                .withMessageStartingWith("role = juggler. Must be one of [");
    }

    /** Hand: as many people as winders leave none waiting; in a split of 5 over 2, winders of 3 and of 2 wait apart. */
    @Test
    void curvesSplitTheWindersAsEvenlyAsTheyCanBe() {
        CrewLoad load = new CrewLoad(5, 900, 100);

        for (PublishedCurve curve : PublishedCurve.values()) {
            assertThat(curve.efficiency(load, 5)).as(curve.label()).isCloseTo(1, within(1e-12));
            assertThat(curve.efficiency(load, 7)).as(curve.label()).isCloseTo(1, within(1e-12));
        }
        double apart = PublishedCurve.OWN.waitingOfOne(load, 3) + PublishedCurve.OWN.waitingOfOne(load, 2);
        assertThat(PublishedCurve.OWN.efficiency(load, 2)).isCloseTo(1 - apart / 5, within(1e-12));
        assertThat(PublishedCurve.POOL.efficiency(load, 2)).isGreaterThan(PublishedCurve.OWN.efficiency(load, 2));
        assertThat(PublishedCurve.OWN_CONSTANT.efficiency(load, 2))
                .isGreaterThan(PublishedCurve.OWN.efficiency(load, 2));
    }
}
