package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.schedule.Experience;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class LearnedReportTest {
    private static final PlantClock CLOCK =
            new PlantClock(ZonedDateTime.of(2027, 3, 1, 6, 0, 0, 0, ZoneId.of("Europe/Berlin")));

    private static List<String> lines(Experience experience) throws ScenarioException {
        Plant plant = ScenarioReader.read(Path.of("..", "scenarios", "two-lines"), List.of())
                .plant();
        return new LearnedReport(experience, plant, CLOCK).lines();
    }

    @Test
    void saysNothingWhereNothingWasLearned() throws ScenarioException {
        assertThat(lines(Experience.NONE)).isEmpty();
    }

    @Test
    void namesWhatTakesFarFromWhatWasReckonedFirst() throws ScenarioException {
        Experience experience =
                new Experience(Map.of("L1", Map.of("PETG", 1.5, "PLA", 1.04), "L2", Map.of("PLA", 0.8)), List.of());

        assertThat(String.join(" ", lines(experience)))
                .isEqualTo(
                        "Learned in simulation, how many times as long as reckoned orders take: PETG on L1 1.50, PLA on"
                                + " L2 0.80. ");
    }

    /** The second order can begin after two days; those with nothing to wait for aren't named. */
    @Test
    void saysWhenMaterialIsThere() throws ScenarioException {
        Experience experience = new Experience(Map.of(), List.of(0.0, 2 * 86_400.0, 0.0, 0.0, 0.0, 0.0));

        assertThat(lines(experience))
                .containsExactly("Not begun before their material is there: 1002 2027-03-03 06:00.", "");
    }
}
