package spoolyard.analysis.crew;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Function;
import java.util.function.ToDoubleFunction;
import java.util.stream.IntStream;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Difference;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.experiment.Progress;
import spoolyard.analysis.experiment.Replicator;
import spoolyard.analysis.experiment.Simultaneous;
import spoolyard.core.plant.Plant;

/** Runs a plant with other numbers of people of a role, on common random numbers. */
public final class CrewStudy {
    private final Function<Plant, Replicator> simulator;
    private final int replications;
    private final int threads;

    /**
     * Prepares a study.
     *
     * @param simulator makes the replications of a plant; the same number must mean the same random numbers for all
     * @param replications replications of each plant, {@code >= 2}
     * @param threads how many at once, {@code >= 1}
     */
    public CrewStudy(Function<Plant, Replicator> simulator, int replications, int threads) {
        this.simulator = simulator;
        this.replications = replications;
        this.threads = threads;
    }

    /**
     * Runs the plant as it is and with each number of people.
     *
     * @param staffing the plant and the role
     * @param people numbers to try, at least one, each {@code >= 1}
     * @param progress hears of each replication of all plants
     * @return what they gave
     */
    public CrewView run(Staffing staffing, List<Integer> people, Progress progress) {
        List<Staffing> all = new ArrayList<>(List.of(staffing));
        people.forEach(number -> all.add(new Staffing(staffing.with(number), staffing.role())));
        List<Replicator> replicators =
                all.stream().map(each -> simulator.apply(each.plant())).toList();
        List<List<CrewOutcome>> outcomes = new CommonNumbers<>(
                        (number, replication) -> CrewOutcome.of(
                                all.get(number), replicators.get(number).replicate(replication)),
                        threads)
                .run(all.size(), 0, replications, progress);
        CrewLoad load = CrewLoad.of(staffing.winders(), of(outcomes, 0));
        double level = new Simultaneous(Interval.USUAL_LEVEL, people.size()).eachLevel();
        List<CrewRow> rows = IntStream.range(0, people.size())
                .mapToObj(i -> row(people.get(i), of(outcomes, 0), of(outcomes, i + 1), level))
                .toList();
        return new CrewView(staffing, load, rows, replications);
    }

    private static List<CrewOutcome> of(List<List<CrewOutcome>> outcomes, int plant) {
        return outcomes.stream().map(replication -> replication.get(plant)).toList();
    }

    private static CrewRow row(int people, List<CrewOutcome> now, List<CrewOutcome> then, double jointly) {
        return new CrewRow(
                people,
                interval(then, CrewOutcome::efficiency),
                interval(then, CrewOutcome::meanWaitS),
                interval(then, CrewOutcome::busyShare),
                interval(then, CrewOutcome::overflowShare),
                Difference.of(values(now, CrewOutcome::goodPerDay), values(then, CrewOutcome::goodPerDay), jointly));
    }

    private static Interval interval(List<CrewOutcome> outcomes, ToDoubleFunction<CrewOutcome> value) {
        return Interval.of(values(outcomes, value), Interval.USUAL_LEVEL);
    }

    private static double[] values(List<CrewOutcome> outcomes, ToDoubleFunction<CrewOutcome> value) {
        return outcomes.stream().mapToDouble(value).toArray();
    }
}
