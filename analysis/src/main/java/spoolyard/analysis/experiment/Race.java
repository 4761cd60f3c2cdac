package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.function.ToDoubleFunction;

/**
 * Observations made by simulating, some replications ahead so that all threads have work. Depends on the trial alone: what
 * runs ahead and is not asked for is thrown away. For one thread.
 *
 * @param <S> what is observed of a system in a replication
 */
public final class Race<S> implements Observations {
    private final CommonNumbers<S> numbers;
    private final int systems;
    private final ToDoubleFunction<S> value;
    private final int ahead;
    private final Progress progress;
    private final List<List<S>> taken = new ArrayList<>();
    private List<Integer> takenOf = List.of();
    private int first;

    /**
     * Prepares to simulate.
     *
     * @param numbers runs replications of systems
     * @param systems how many systems, {@code >= 2}
     * @param value what is to be large
     * @param ahead replications run together, {@code >= 1}
     * @param progress hears of each run done
     */
    public Race(CommonNumbers<S> numbers, int systems, ToDoubleFunction<S> value, int ahead, Progress progress) {
        if (systems < 2 || ahead < 1) {
            throw new IllegalArgumentException(
                    "systems = " + systems + ", ahead = " + ahead + ". Must be >= 2, and >= 1.");
        }
        this.numbers = numbers;
        this.systems = systems;
        this.value = value;
        this.ahead = ahead;
        this.progress = progress;
    }

    @Override
    public int systems() {
        return systems;
    }

    @Override
    public double[] at(int number, List<Integer> asked) {
        if (number >= first + taken.size() || !takenOf.containsAll(asked)) {
            taken.clear();
            taken.addAll(numbers.run(asked, number, ahead, progress));
            takenOf = List.copyOf(asked);
            first = number;
        }
        List<S> replication = taken.get(number - first);
        return asked.stream()
                .mapToDouble(system -> value.applyAsDouble(replication.get(takenOf.indexOf(system))))
                .toArray();
    }
}
