package spoolyard.analysis.cli;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

final class SchoolTest {
    private final Stop stop = new Stop();
    private final School school = new School(Simulator.REAL, 1);
    private Plant plant;

    @BeforeEach
    void read() throws ScenarioException {
        plant = ScenarioReader.read(Path.of("..", "scenarios", "two-lines"), List.of())
                .plant();
    }

    @Test
    void makesAllReplicationsWhereThereIsTime() {
        List<Integer> heard = new ArrayList<>();

        school.attend(plant, Optional.empty(), stop, (done, total) -> heard.add(done));

        assertThat(heard).last().isEqualTo(School.REPLICATIONS);
        assertThat(school.told()).isEmpty();
    }

    @Test
    void makesTwoAtLeastAndSaysSo() {
        school.attend(plant, Optional.of(Duration.ZERO), stop, Progress.UNHEARD);

        assertThat(school.told().orElseThrow()).startsWith("Learned from 2 replications in place of 6");
    }

    @Test
    void endsEarlyWhenItIsStopped() {
        stop.ask();

        school.attend(plant, Optional.empty(), stop, Progress.UNHEARD);

        assertThat(school.told().orElseThrow()).startsWith("Learned from 2 replications in place of 6");
    }
}
