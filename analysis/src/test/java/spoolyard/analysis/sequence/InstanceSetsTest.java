package spoolyard.analysis.sequence;

import static org.assertj.core.api.Assertions.assertThat;
import static org.junit.jupiter.api.Assumptions.assumeTrue;

import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.function.Function;
import java.util.stream.Collectors;
import org.junit.jupiter.api.Test;

/**
 * Whole sets of published instances, of the folder that {@code -Dspoolyard.instances=DIR} names; takes long.
 * {@code -Dspoolyard.instances.seconds=S} is the time for one instance. Prints what docs/benchmarks.md shows.
 */
final class InstanceSetsTest {
    private static final double SECONDS = Double.parseDouble(System.getProperty("spoolyard.instances.seconds", "60"));
    private static final double ROUNDING = 1e-6;
    /** What one round of a search may be late to look at the clock, with the first plan and the bound, on a busy machine. */
    private static final double MOST_AFTER_S = 5;

    private static final Map<String, Double> MOST_ABOVE = Map.of("kro124p", 0.01, "rbg323", 0.01, "rbg403", 0.02);

    /** Instances of weighted tardiness whose value from memory is too high: plans were found that cost less. */
    private static final Set<String> TOO_HIGH = Set.of("37", "55", "57", "59");

    private static Path folder() {
        assumeTrue(Instances.folder().isPresent(), "no folder of instances: give one with -Dspoolyard.instances=DIR");
        return Instances.folder().orElseThrow();
    }

    /** What was found, and after how many seconds at the latest; heard five times a second. */
    private record Found(double cost, double afterS) {}

    /** Keeps what is heard of a search. */
    private static final class Ear implements SearchProgress {
        private final long start = System.nanoTime();
        private double best = Double.POSITIVE_INFINITY;
        private double afterS;

        @Override
        public void reached(double cost, double bound, double share) {
            assertThat(cost)
                    .as("cheapest so far")
                    .isLessThanOrEqualTo(best + ROUNDING)
                    .isGreaterThanOrEqualTo(bound - ROUNDING);
            if (cost < best) {
                best = cost;
                afterS = (System.nanoTime() - start) * 1e-9;
            }
        }

        /** The last plan may have come after the last time that anything was heard. */
        Found found(double cost) {
            double endS = (System.nanoTime() - start) * 1e-9;
            assertThat(cost).as("cost in the end").isLessThanOrEqualTo(best + ROUNDING);
            return new Found(cost, cost < best - ROUNDING ? endS : afterS);
        }
    }

    private static Found solve(SequencingProblem problem) {
        SearchSettings settings = new SearchSettings(SearchLimit.seconds(SECONDS), 1, 2, 2);
        Ear ear = new Ear();
        Solution found = new Sequencer(problem, settings, new Stop(), ear).find(List.of());
        Found heard = ear.found(found.plan().cost());
        assertThat(heard.afterS).as("found in time").isBetween(0.0, SECONDS + MOST_AFTER_S);
        return heard;
    }

    /** Instance name to published value; the file has the name first and the value in the column given. */
    private static Map<String, Double> published(Path table, int column) throws IOException {
        return Files.readAllLines(table).stream()
                .skip(1)
                .map(row -> row.split(","))
                .collect(Collectors.toMap(
                        cells -> cells[0],
                        cells -> Double.parseDouble(cells[column]),
                        (a, b) -> a,
                        java.util.TreeMap::new));
    }

    private static double above(String name, double published, Found found) {
        double share = published == 0 ? (found.cost == 0 ? 0 : 1) : found.cost / published - 1;
        System.out.printf(
                "%s | %.0f | %.0f | %.2f %% | %.1f s%n", name, published, found.cost, 100 * share, found.afterS);
        return share;
    }

    private static List<Double> solveAll(Path table, int column, Function<String, SequencingProblem> problem)
            throws IOException {
        List<Double> shares = new ArrayList<>();
        for (Map.Entry<String, Double> entry : published(table, column).entrySet()) {
            double share = above(entry.getKey(), entry.getValue(), solve(problem.apply(entry.getKey())));
            if (TOO_HIGH.contains(entry.getKey())) {
                share = Math.max(0, share);
            }
            assertThat(share).as(entry.getKey()).isGreaterThanOrEqualTo(-1e-9);
            shares.add(share - MOST_ABOVE.getOrDefault(entry.getKey(), 0.0));
        }
        return shares;
    }

    private static String read(Path file) {
        try {
            return Files.readString(file);
        } catch (IOException failure) {
            throw new java.io.UncheckedIOException(failure);
        }
    }

    /** Source: TSPLIB95. */
    @Test
    void toursAreOptimalOrNear() throws IOException {
        Path tours = folder().resolve("tsplib");

        List<Double> shares = solveAll(
                tours.resolve("optimal_values.csv"), 2, name -> Instances.tour(read(tours.resolve(name + ".atsp"))));

        assertThat(shares).allSatisfy(share -> assertThat(share).isLessThanOrEqualTo(1e-9));
    }

    /** Best known: Tanaka and Araki, Computers and Operations Research 40 (2013), from memory. */
    @Test
    void weightedTardinessIsWithinThreePercentOnAverage() throws IOException {
        Path set = folder().resolve("wtsds");

        List<Double> shares = solveAll(
                set.resolve("values.csv"),
                1,
                name -> Instances.weightedTardiness(read(set.resolve("wt_sds_" + name + ".instance"))));

        assertThat(shares.stream().mapToDouble(Double::doubleValue).average().orElseThrow())
                .isLessThanOrEqualTo(0.03);
    }

    /** Source: Vallada and Ruiz, European Journal of Operational Research 211 (2011); the exact programme solves up to 10 jobs. */
    @Test
    void makespansOfUnrelatedMachinesAreOptimal() throws IOException {
        Path set = folder().resolve("upmsp_small");

        List<Double> shares =
                solveAll(set.resolve("optimal.csv"), 3, name -> Instances.machines(read(set.resolve(name + ".txt"))));

        assertThat(shares).allSatisfy(share -> assertThat(share).isLessThanOrEqualTo(1e-9));
    }

    /** Sources as above; plans by cheapest insertion guide the bound. */
    @Test
    void boundsAreNotAboveWhatIsPublished() throws IOException {
        Path tours = folder().resolve("tsplib");
        Path late = folder().resolve("wtsds");

        published(tours.resolve("optimal_values.csv"), 2)
                .forEach((name, optimum) -> bound(name, optimum, Instances.tour(read(tours.resolve(name + ".atsp")))));
        published(late.resolve("values.csv"), 1)
                .forEach((name, best) -> bound(
                        name, best, Instances.weightedTardiness(read(late.resolve("wt_sds_" + name + ".instance")))));
    }

    private static void bound(String name, double published, SequencingProblem problem) {
        TimedPlan plan = TimedPlan.of(problem, CheapestInsertion.plan(problem));
        Budget budget = new Budget(SearchLimit.seconds(SECONDS / 4), 1, new Stop());
        double shared = LowerBound.of(problem, plan);
        double whole = LowerBound.byWholeLines(problem, plan, budget, 2);
        System.out.printf("%s | %.0f | %.0f | %.0f%n", name, published, shared, whole);
        assertThat(Math.max(shared, whole)).as(name).isLessThanOrEqualTo(published + 1e-6);
    }
}
