package spoolyard.analysis.cli;

import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.SequentialExperiment;
import spoolyard.analysis.experiment.Source;
import spoolyard.analysis.schedule.Experience;
import spoolyard.analysis.schedule.Lesson;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.sequence.Stop;
import spoolyard.core.plant.Plant;

/** Runs plants so that a planner learns from them; on other random numbers than those on which plans are judged. */
final class School {
    /** Replications of each plant, if there is time. */
    static final int REPLICATIONS = 6;

    private static final int FEWEST = 2;

    /** Stands for an interval that is narrow enough. */
    private static final double STOPPED = 0;

    private final Simulator simulator;
    private final long seed;
    private final List<Lesson> lessons = new ArrayList<>();
    private int plants;

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
     * @param time within which to run it; two replications are run however long they take; empty for no limit
     * @param stop ends it early, once two replications are done
     * @param progress hears of each replication, of so many at most
     */
    void attend(Plant plant, Optional<Duration> time, Stop stop, Progress progress) {
        Lesson.Deliveries first = new Lesson.Deliveries();
        Replicator replicator = simulator.of(plant, seed, first);
        int threads = Runtime.getRuntime().availableProcessors();
        Source<Lesson> source = Source.of(
                number -> Lesson.of(replicator.replicate(number), number == 0 ? first : new Lesson.Deliveries()),
                threads);
        Effort effort = new Effort(FEWEST, REPLICATIONS, OptionalDouble.of(STOPPED), time, threads);
        lessons.addAll(new SequentialExperiment<>(source, effort, each -> stop.isAsked() ? STOPPED : Double.NaN)
                .run((done, total) -> progress.reached(Math.min(done, REPLICATIONS), REPLICATIONS))
                .observations());
        plants++;
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

    /**
     * How much was run.
     *
     * @return a sentence; empty if there was time for all
     */
    Optional<String> told() {
        int whole = plants * REPLICATIONS;
        return lessons.size() == whole
                ? Optional.empty()
                : Optional.of("Learned from " + lessons.size() + " replications in place of " + whole
                        + ": there was no time for more.");
    }
}
