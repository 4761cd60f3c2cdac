package spoolyard.analysis.invest;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.stream.IntStream;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.choice.ChosenValue;
import spoolyard.scenarios.choice.Mix;
import spoolyard.scenarios.choice.Option;
import spoolyard.scenarios.format.Pointer;

/**
 * From which replications the money of each mix is counted, line by line. Immutable.
 *
 * <p>An option that changes one line only reaches the others through the moments at which it calls for shared people. Where
 * it leaves their work as it is, that is next to nothing on average, but no two replications are alike on the other lines
 * any more, and that drowns what it does on its own. So the money of the other lines may be taken from the mix without such
 * options.
 *
 * @param sources by mix, then by line, the number of the mix from which the line's losses are taken
 */
public record Counting(List<List<Integer>> sources) {
    private static final String LINES = "lines";
    private static final Set<String> WITHOUT_WORK = Set.of("accumulator", "overflow");

    /** Which lines are taken from the replications of a mix itself. */
    public enum Rule {
        /** Those that an option changes, and all if it changes people or their work. */
        USUAL,
        /** Those that an option changes; what people who have less to do bring to other lines is left out. */
        CHANGED,
        /** All: nothing is left out. */
        ALL
    }

    /** Copies the lists. */
    public Counting {
        sources = sources.stream().map(List::copyOf).toList();
    }

    /**
     * Every line of a mix from its own replications.
     *
     * @param mixes how many mixes
     * @param lines how many lines
     * @return the counting that leaves nothing out
     */
    static Counting ofAll(int mixes, int lines) {
        return new Counting(IntStream.range(0, mixes)
                .mapToObj(mix -> IntStream.range(0, lines).mapToObj(line -> mix).toList())
                .toList());
    }

    /**
     * By a rule.
     *
     * @param rule which
     * @param mixes all mixes of some choices
     * @param now the plant as it is
     * @return the counting
     */
    public static Counting of(Rule rule, List<Mix> mixes, Plant now) {
        return rule == Rule.ALL
                ? ofAll(mixes.size(), now.lines().size())
                : new Counting(mixes.stream()
                        .map(mix -> sources(rule, mix, mixes, now))
                        .toList());
    }

    private static List<Integer> sources(Rule rule, Mix mix, List<Mix> mixes, Plant now) {
        List<String> own = new ArrayList<>();
        List<Mix.Taken> shared = new ArrayList<>();
        for (Mix.Taken taken : mix.taken()) {
            if (isAlone(rule, taken.option(), now)) {
                taken.option().values().forEach(value -> own.add(tokens(value).get(1)));
            } else {
                shared.add(taken);
            }
        }
        int itself = mixes.indexOf(mix);
        int without = mixes.indexOf(new Mix(shared));
        return now.lines().stream()
                .map(line -> own.contains(line.name()) ? itself : without)
                .toList();
    }

    /** Whether an option counts on the lines that it changes alone. */
    private static boolean isAlone(Rule rule, Option option, Plant now) {
        return option.values().stream().allMatch(value -> {
            Optional<Line> changed = changed(value, now);
            return changed.isPresent() && (rule == Rule.CHANGED || isWithoutWork(value, changed.get()));
        });
    }

    private static Optional<Line> changed(ChosenValue value, Plant now) {
        List<String> tokens = tokens(value);
        boolean isOfLine = tokens.size() > 2 && tokens.get(0).equals(LINES);
        return now.lines().stream()
                .filter(line -> isOfLine && line.name().equals(tokens.get(1)))
                .findFirst();
    }

    /** A line that stops at overflows must be threaded up, and that is work. */
    private static boolean isWithoutWork(ChosenValue value, Line line) {
        return WITHOUT_WORK.contains(tokens(value).get(2))
                && !(line.overflow() instanceof OverflowPolicy.Stop)
                && !value.yaml().contains("stop");
    }

    private static List<String> tokens(ChosenValue value) {
        return Pointer.parse(value.pointer()).orElseThrow().tokens();
    }

    /** Other mixes from which lines of some are taken. */
    List<Integer> sourcesOf(List<Integer> mixes) {
        return mixes.stream()
                .flatMap(mix -> sources.get(mix).stream())
                .distinct()
                .toList();
    }
}
