package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.IntStream;

/**
 * Alternatives run with common random numbers: each sees the same replications, and with them the same luck.
 *
 * <p>Source: A. M. Law, Simulation Modeling and Analysis, 5th ed. 2015, section 11.2; the streams are in step because
 * each belongs to a cause by name (decision 0003).
 *
 * <p>For one thread. May run again, for further replications.
 *
 * @param <S> what is observed of an alternative in a replication
 */
public final class CommonNumbers<S> {
    private final Trial<S> trial;
    private final SideBySide sideBySide;

    /**
     * Prepares to run.
     *
     * @param trial observes an alternative in a replication
     * @param threads how many at once, {@code >= 1}
     * @throws IllegalArgumentException if {@code threads} is below 1
     */
    public CommonNumbers(Trial<S> trial, int threads) {
        if (threads < 1) {
            throw new IllegalArgumentException("threads = " + threads + ". Must be >= 1.");
        }
        this.trial = trial;
        this.sideBySide = new SideBySide(threads);
    }

    /**
     * Runs some replications of some alternatives. Replications go one after the other, in each all alternatives.
     *
     * @param alternatives numbers of the alternatives, at least one
     * @param first number of the first replication, {@code >= 0}
     * @param count how many replications, {@code >= 1}
     * @param progress hears of each run done
     * @return shape {@code [replication - first][alternative]}, the alternatives in the order asked for
     * @throws ReplicationFailedException if a replication broke off; the cause says why
     */
    public List<List<S>> run(List<Integer> alternatives, int first, int count, Progress progress) {
        int width = alternatives.size();
        List<S> flat = observed(alternatives, first, count * width, progress);
        List<List<S>> byReplication = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            byReplication.add(List.copyOf(flat.subList(i * width, (i + 1) * width)));
        }
        return byReplication;
    }

    /**
     * Runs some replications of all alternatives.
     *
     * @param alternatives how many alternatives, {@code >= 1}
     * @param first number of the first replication, {@code >= 0}
     * @param count how many replications, {@code >= 1}
     * @param progress hears of each run done
     * @return shape {@code [replication - first][alternative]}
     * @throws ReplicationFailedException if a replication broke off; the cause says why
     */
    public List<List<S>> run(int alternatives, int first, int count, Progress progress) {
        return run(IntStream.range(0, alternatives).boxed().toList(), first, count, progress);
    }

    private List<S> observed(List<Integer> alternatives, int first, int runs, Progress progress) {
        int width = alternatives.size();
        try {
            return sideBySide.run(
                    runs, number -> trial.observe(alternatives.get(number % width), first + number / width), progress);
        } catch (ReplicationFailedException failure) {
            throw new ReplicationFailedException(first + failure.replication() / width, failure.getCause());
        }
    }
}
