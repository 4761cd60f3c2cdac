package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.experiment.Experiment;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.schedule.Experience;
import spoolyard.analysis.schedule.Lesson;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.core.plant.Plant;

/** Runs plants so that a planner learns from them; on other random numbers than those on which plans are judged. */
final class School {
    private static final int REPLICATIONS = 6;

    private final Simulator simulator;
    private final long seed;
    private final List<Lesson> lessons = new ArrayList<>();

    /**
     * A school without pupils.
     *
     * @param simulator makes replications
     * @param seed seed on which plans are judged
     */
    School(Simulator simulator, long seed) {
        this.simulator = simulator;
        this.seed = ~seed;
    }

    /**
     * Runs a plant.
     *
     * @param plant with its orders in the order to be tried
     */
    void attend(Plant plant) {
        Lesson.Deliveries first = new Lesson.Deliveries();
        int threads = Runtime.getRuntime().availableProcessors();
        lessons.addAll(new Experiment(simulator.of(plant, seed, first), REPLICATIONS, threads)
                .run(
                        result -> Lesson.of(result, result.replication() == 0 ? first : new Lesson.Deliveries()),
                        Progress.UNHEARD));
    }

    /**
     * What all runs taught so far.
     *
     * @param plain the book as reckoned without experience
     * @return the experience
     */
    Experience experience(PlantBook plain) {
        return Experience.of(plain, lessons);
    }
}
