package spoolyard.core.bench;

import java.util.Collection;
import java.util.Locale;
import java.util.Map;
import java.util.TreeMap;
import java.util.stream.Collectors;
import org.openjdk.jmh.results.IterationResult;
import org.openjdk.jmh.results.RunResult;
import org.openjdk.jmh.runner.Runner;
import org.openjdk.jmh.runner.RunnerException;
import org.openjdk.jmh.runner.options.CommandLineOptionException;
import org.openjdk.jmh.runner.options.CommandLineOptions;

/** Runs the benchmarks and prints, case by case, the engine beside its limit; takes JMH's own options. */
public final class Benchmarks {
    private static final double LEAST_RATIO = 0.5;

    private Benchmarks() {}

    /**
     * Runs.
     *
     * @param arguments as for JMH, see {@code -h}
     * @throws RunnerException if a benchmark fails
     * @throws CommandLineOptionException if an option is wrong
     * @throws IllegalStateException if the engine is slower than half the limit in any case
     */
    public static void main(String[] arguments) throws RunnerException, CommandLineOptionException {
        Map<String, Map<String, Double>> byCase = byCase(new Runner(new CommandLineOptions(arguments)).run());
        System.out.printf("%n%-32s %10s %10s %10s%n", "million events/CPU s", "engine", "limit", "ratio");
        byCase.forEach((name, rates) -> System.out.printf(
                Locale.ROOT,
                "%-32s %10.1f %10.1f %10.2f%n",
                name,
                rates.get("engine"),
                rates.get("limit"),
                ratio(rates)));
        if (byCase.values().stream().anyMatch(rates -> ratio(rates) < LEAST_RATIO)) {
            throw new IllegalStateException("The engine is slower than " + LEAST_RATIO + " of the limit.");
        }
    }

    private static double ratio(Map<String, Double> rates) {
        return rates.get("engine") / rates.get("limit");
    }

    /** Million events a processor second, by case, then by who ran it. */
    private static Map<String, Map<String, Double>> byCase(Collection<RunResult> results) {
        Map<String, Map<String, Double>> byCase = new TreeMap<>();
        for (RunResult result : results) {
            String[] path = result.getParams().getBenchmark().split("\\.");
            String name = path[path.length - 2] + " "
                    + result.getParams().getParamsKeys().stream()
                            .map(key -> key + " " + result.getParams().getParam(key))
                            .collect(Collectors.joining(", "));
            byCase.computeIfAbsent(name, key -> new TreeMap<>()).put(path[path.length - 1], rate(result));
        }
        return byCase;
    }

    /** Of the best iteration of all forks, the one least disturbed by what else the machine does. */
    private static double rate(RunResult result) {
        return result.getBenchmarkResults().stream()
                .flatMap(fork -> fork.getIterationResults().stream())
                .mapToDouble(Benchmarks::rate)
                .max()
                .orElseThrow();
    }

    private static double rate(IterationResult iteration) {
        double events = iteration.getSecondaryResults().get("events").getScore();
        double cpuNanos = iteration.getSecondaryResults().get("cpuNanos").getScore();
        return 1000 * events / cpuNanos;
    }
}
