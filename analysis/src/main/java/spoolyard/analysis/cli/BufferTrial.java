package spoolyard.analysis.cli;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.function.IntFunction;
import spoolyard.analysis.buffer.Loss;
import spoolyard.analysis.buffer.LossTrial;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.fault.ScenarioException;

/** Runs the scenario with an accumulator of another capacity. For one thread. */
final class BufferTrial implements LossTrial {
    private final LossObserver observer;
    private final Progress progress;
    private final CommonNumbers<Loss> runs;
    private final List<Double> capacities = new ArrayList<>();
    private final List<IntFunction<Loss>> losses = new ArrayList<>();

    /**
     * Prepares to run.
     *
     * @param observer observes what the line loses
     * @param threads replications at once
     * @param progress hears of each replication
     */
    BufferTrial(LossObserver observer, int threads, Progress progress) {
        this.observer = observer;
        this.progress = progress;
        this.runs =
                new CommonNumbers<>((plant, replication) -> losses.get(plant).apply(replication), threads);
    }

    /**
     * Reads the scenario with each capacity, before anything is run.
     *
     * @param scenario the scenario
     * @param lineName name of the line
     * @param capacitiesM the capacities, metres
     * @throws ScenarioException if one is out of its range
     */
    void read(ScenarioArgument scenario, String lineName, List<Double> capacitiesM) throws ScenarioException {
        String pointer = "/lines/" + lineName.replace("~", "~0").replace("/", "~1") + "/accumulator=";
        for (double capacityM : capacitiesM) {
            String metres = BigDecimal.valueOf(capacityM).toPlainString();
            Plant plant = scenario.readWith(List.of(pointer + metres + " m")).plant();
            capacities.add(capacityM);
            losses.add(observer.of(plant));
        }
    }

    @Override
    public List<Loss> observe(double capacityM, int first, int count) {
        return runs.run(List.of(capacities.indexOf(capacityM)), first, count, progress).stream()
                .map(alone -> alone.get(0))
                .toList();
    }
}
