package spoolyard.analysis.sequence;

import java.util.Comparator;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/** A first plan: order by order, the most pressing first, each where it adds least to the cost. */
final class CheapestInsertion {
    private CheapestInsertion() {}

    static Plan plan(SequencingProblem problem) {
        Schedule schedule = new Schedule(problem);
        schedule.set(
                new Plan(problem.lines().stream().map(SequencedLine::frozen).toList()));
        List<Integer> frozen =
                problem.lines().stream().flatMap(line -> line.frozen().stream()).toList();
        int[] open = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .boxed()
                .sorted(Comparator.comparingDouble(
                        job -> problem.jobs().get(job).dueS()))
                .mapToInt(Integer::intValue)
                .toArray();
        Neighbours none = new Neighbours(problem, schedule.kernels);
        new Rebuilding(schedule, none, new SplittableRandom(0), open).insertAll(open);
        return schedule.plan();
    }
}
