package spoolyard.analysis.invest;

import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import spoolyard.analysis.experiment.CommonNumbers;
import spoolyard.analysis.experiment.Progress;

/** Remembers what was observed of each mix, so that no replication is run twice. For one thread. */
final class MixBook {
    private final CommonNumbers<MixLoss> numbers;
    private final Counting counting;
    private final Progress progress;
    private final Map<Integer, List<MixLoss>> seen = new TreeMap<>();

    MixBook(CommonNumbers<MixLoss> numbers, Counting counting, Progress progress) {
        this.numbers = numbers;
        this.counting = counting;
        this.progress = progress;
    }

    /** Runs what is missing of the first replications of some mixes, side by side. */
    void fill(List<Integer> mixes, int count) {
        Map<Integer, List<Integer>> byLength = new TreeMap<>();
        mixes.stream().distinct().filter(mix -> seen(mix) < count).forEach(mix -> byLength.computeIfAbsent(
                        seen(mix), length -> new ArrayList<>())
                .add(mix));
        byLength.forEach((length, behind) -> {
            List<List<MixLoss>> more = numbers.run(behind, length, count - length, progress);
            IntStream.range(0, behind.size())
                    .forEach(place -> more.forEach(
                            replication -> seen.computeIfAbsent(behind.get(place), mix -> new ArrayList<>())
                                    .add(replication.get(place))));
        });
    }

    /** The same, with all from which the money of these mixes is counted. */
    void fillForMoney(List<Integer> mixes, int count) {
        fill(withSources(mixes), count);
    }

    private List<Integer> withSources(List<Integer> mixes) {
        return Stream.concat(mixes.stream(), counting.sourcesOf(mixes).stream()).toList();
    }

    /** Runs that {@link #fill} would take. */
    int missing(List<Integer> mixes, int count) {
        return mixes.stream()
                .distinct()
                .mapToInt(mix -> Math.max(0, count - seen(mix)))
                .sum();
    }

    /** Runs that {@link #fillForMoney} would take. */
    int missingForMoney(List<Integer> mixes, int count) {
        return missing(withSources(mixes), count);
    }

    /** The first replications of a mix. */
    List<MixLoss> at(int mix, int count) {
        fill(List.of(mix), count);
        return List.copyOf(seen.get(mix).subList(0, count));
    }

    /** A replication of a mix. */
    MixLoss one(int mix, int replication) {
        fill(List.of(mix), replication + 1);
        return seen.get(mix).get(replication);
    }

    /** What all lines lost in a replication of a mix, money. */
    double lostMoney(int mix, int replication) {
        List<Integer> sources = counting.sources().get(mix);
        double sum = 0;
        for (int line = 0; line < sources.size(); line++) {
            sum += one(sources.get(line), replication).lostMoney().get(line);
        }
        return sum;
    }

    /** Replications from which the money of a mix can be counted. */
    int seenForMoney(int mix) {
        return counting.sourcesOf(List.of(mix)).stream().mapToInt(this::seen).reduce(seen(mix), Math::min);
    }

    int seen(int mix) {
        return seen.getOrDefault(mix, List.of()).size();
    }

    int runs() {
        return seen.values().stream().mapToInt(List::size).sum();
    }
}
