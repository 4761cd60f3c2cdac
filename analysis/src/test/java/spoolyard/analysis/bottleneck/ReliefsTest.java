package spoolyard.analysis.bottleneck;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Winder;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class ReliefsTest {
    private static Plant orrenvale() throws ScenarioException {
        return ScenarioReader.read(Path.of("../scenarios/orrenvale"), List.of()).plant();
    }

    private static Relief find(List<Relief> reliefs, String label) {
        return reliefs.stream()
                .filter(relief -> relief.label().equals(label))
                .findFirst()
                .orElseThrow(() -> new AssertionError(
                        label + " not in " + reliefs.stream().map(Relief::label).toList()));
    }

    @Test
    void changesOneThingAndNothingElse() throws ScenarioException {
        Plant plant = orrenvale();

        for (Relief relief : Reliefs.of(plant, false)) {
            Plant other = relief.plant();
            int changed = (other.lines().equals(plant.lines()) ? 0 : 1)
                    + (other.shifts().equals(plant.shifts()) ? 0 : 1)
                    + (other.finishing().equals(plant.finishing()) ? 0 : 1)
                    + (other.drying().equals(plant.drying()) ? 0 : 1);
            assertThat(changed).as(relief.label()).isEqualTo(1);
            assertThat(other.crew()).isEqualTo(plant.crew());
            assertThat(other.book()).isEqualTo(plant.book());
            assertThat(other.economy()).isEqualTo(plant.economy());
        }
    }

    /** By hand: a tenth more rate and winder speed; a quarter more room above home; a fifth less time. */
    @Test
    void relievesALineByTheStatedAmounts() throws ScenarioException {
        Plant plant = orrenvale();
        List<Relief> reliefs = Reliefs.of(plant, false);
        Line old = plant.lines().get(1);

        Line faster =
                find(reliefs, "L2: 10 % faster, winder and all").plant().lines().get(1);
        Line roomier = find(reliefs, "L2: accumulator +25 %").plant().lines().get(1);
        Line quicker =
                find(reliefs, "L2: spool swaps 20 % quicker").plant().lines().get(1);

        assertThat(faster.nominalRateKgPerH()).isCloseTo(1.1 * old.nominalRateKgPerH(), within(1e-9));
        assertThat(faster.winder().maxSpeedMPerS()).isCloseTo(1.1 * old.winder().maxSpeedMPerS(), within(1e-9));
        assertThat(roomier.accumulator().roomM())
                .isCloseTo(1.25 * old.accumulator().roomM(), within(1e-9));
        double oldS = ((Winder.Manual) old.winder()).stopTimeS().mean();
        assertThat(((Winder.Manual) quicker.winder()).stopTimeS().mean()).isCloseTo(0.8 * oldS, within(1e-9));
    }

    @Test
    void addsAPersonOnlyWhereTheRoleIsThereAlready() throws ScenarioException {
        Plant plant = orrenvale();
        int lab =
                plant.crew().roles().stream().map(role -> role.name()).toList().indexOf("lab");

        Plant more =
                find(Reliefs.of(plant, false), "lab: one more in each shift").plant();

        for (int i = 0; i < plant.shifts().size(); i++) {
            int before = plant.shifts().get(i).heads().get(lab);
            assertThat(more.shifts().get(i).heads().get(lab)).isEqualTo(before == 0 ? 0 : before + 1);
        }
    }

    @Test
    void relievesEachShiftByItselfWhereAsked() throws ScenarioException {
        List<String> changes = Reliefs.of(orrenvale(), true).stream()
                .filter(relief -> relief.station().equals("operator"))
                .map(Relief::change)
                .toList();

        assertThat(changes)
                .containsExactly(
                        "one more in shift D", "one more in shift E", "one more in shift N", "one more in shift S");
    }

    @Test
    void reachesEveryKindThatThePlantHas() throws ScenarioException {
        assertThat(Reliefs.of(orrenvale(), false))
                .extracting(Relief::kind)
                .contains(
                        Relief.Kind.CREW,
                        Relief.Kind.LINE,
                        Relief.Kind.BUFFER,
                        Relief.Kind.SWAP,
                        Relief.Kind.FINISHING,
                        Relief.Kind.RACK,
                        Relief.Kind.LAB,
                        Relief.Kind.DRYER);
    }
}
