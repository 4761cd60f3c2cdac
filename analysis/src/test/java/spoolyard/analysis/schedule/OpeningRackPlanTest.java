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
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Plant;

/** What stands in racks at the start is made no more: 2130 spools of 1 kg at 18 kg/h with 0.8 % rejects, worked by hand. */
final class OpeningRackPlanTest {
    private static Plant withInRack(Plant plant, int spools, Optional<String> order) {
        Finishing was = plant.finishing();
        OpeningSpools opening = new OpeningSpools("packing", order, 1, Optional.empty(), spools, 0);
        return new Plant(
                plant.name(),
                plant.horizonTicks(),
                plant.lines(),
                plant.crew(),
                plant.shifts(),
                plant.changeovers(),
                new Finishing(
                        was.stations(),
                        was.cartons(),
                        was.cartonsPerPallet(),
                        was.inbound(),
                        was.quality(),
                        List.of(opening)),
                plant.book());
    }

    private static List<TimedJob> jobs(int inRack, Optional<String> order) {
        Weights weights = new Weights(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, 24, Weights.First.NEITHER);
        Plant plant = withInRack(SamplePlant.overAWeekend(Optional.empty()), inRack, order);
        PlantBook book = PlantBook.of(plant, weights, Map.of());
        return TimedPlan.of(book.problem(), new Plan(List.of(List.of(0, 1))))
                .lines()
                .get(0);
    }

    /** 1800 / 18 / 0.992 = 100.80645 h in place of 119.28763; white is made from 10 / 18 h later. */
    @Test
    void anOrderTakesAsMuchLessAsStandsInTheRackForIt() {
        List<TimedJob> jobs = jobs(330, Optional.of("SO-1"));

        assertThat(jobs.get(0).endS() / 3600).isCloseTo(100.8064516, within(1e-6));
        assertThat(jobs.get(1).makingS() / 3600).isCloseTo(101.3620072, within(1e-6));
    }

    @Test
    void spoolsForNoOrderChangeNothing() {
        assertThat(jobs(330, Optional.empty()).get(0).endS() / 3600).isCloseTo(119.2876344, within(1e-6));
    }

    /** All 10 of white stand there: it takes no time to make. */
    @Test
    void anOrderThatStandsThereWholeTakesNoTime() {
        TimedJob white = jobs(10, Optional.of("SO-2")).get(1);

        assertThat(white.endS()).isCloseTo(white.makingS(), within(1e-6));
    }
}
