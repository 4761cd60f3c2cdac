package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import java.util.function.Consumer;

/** Small random problems and the cheapest plan of each by trying all of them. */
public final class RandomBooks {
    private RandomBooks() {}

    /** Up to 5 orders on up to 3 lines, with shifts, releases, due dates, gaps in eligibility and a frozen order. */
    static SequencingProblem any(long seed) {
        Random random = new Random(seed);
        int lines = 1 + random.nextInt(3);
        int products = 1 + random.nextInt(4);
        List<Job> jobs = new ArrayList<>();
        for (int job = 0; job < 3 + random.nextInt(3); job++) {
            List<Double> runs = new ArrayList<>();
            for (int line = 0; line < lines; line++) {
                boolean isMadeThere = line == 0 || random.nextInt(4) > 0;
                runs.add(isMadeThere ? 1.0 + random.nextInt(9) : Double.POSITIVE_INFINITY);
            }
            jobs.add(new Job(
                    "J" + job,
                    random.nextInt(products),
                    random.nextInt(10),
                    5 + random.nextInt(25),
                    random.nextInt(4),
                    runs));
        }
        List<SequencedLine> described = new ArrayList<>();
        for (int line = 0; line < lines; line++) {
            List<Integer> frozen =
                    line == 0 && random.nextInt(3) == 0 ? List.of(random.nextInt(jobs.size())) : List.of();
            described.add(new SequencedLine("L" + line, hours(random), changeovers(random, products), frozen));
        }
        return new SequencingProblem(jobs, described, random.nextInt(3) == 0 ? 2 : 0);
    }

    /** One line where only changeovers cost. */
    static SequencingProblem pure(long seed, int jobCount) {
        Random random = new Random(seed);
        List<Job> jobs = new ArrayList<>();
        for (int job = 0; job < jobCount; job++) {
            jobs.add(new Job("J" + job, job, 0, Double.POSITIVE_INFINITY, 0, List.of(1.0)));
        }
        SequencedLine line = new SequencedLine("L", WorkingTime.always(), changeovers(random, jobCount), List.of());
        return new SequencingProblem(jobs, List.of(line), 0);
    }

    private static WorkingTime hours(Random random) {
        return random.nextBoolean()
                ? WorkingTime.always()
                : WorkingTime.of(List.of(new WorkingTime.Span(random.nextInt(3), 8), new WorkingTime.Span(16, 24)));
    }

    private static Changeovers changeovers(Random random, int products) {
        Changeovers.Table table = Changeovers.table(products);
        for (int from = 0; from <= products; from++) {
            for (int to = 0; to <= products + 1; to++) {
                if (from != to && to != products) {
                    table.set(from, to, random.nextInt(20), random.nextInt(3));
                }
            }
        }
        return table.done();
    }

    static double leastByTryingAll(SequencingProblem problem) {
        double[] least = {Double.POSITIVE_INFINITY};
        forEachPlan(
                problem,
                plan -> least[0] =
                        Math.min(least[0], TimedPlan.of(problem, plan).cost()));
        return least[0];
    }

    /** Every plan of a problem, once. */
    public static void forEachPlan(SequencingProblem problem, Consumer<Plan> judge) {
        List<List<Integer>> lines = new ArrayList<>();
        List<Integer> open = new ArrayList<>();
        for (int job = 0; job < problem.jobs().size(); job++) {
            open.add(job);
        }
        for (SequencedLine line : problem.lines()) {
            lines.add(new ArrayList<>(line.frozen()));
            open.removeAll(line.frozen());
        }
        tryAll(problem, lines, 0, open, judge);
    }

    private static void tryAll(
            SequencingProblem problem, List<List<Integer>> lines, int line, List<Integer> open, Consumer<Plan> judge) {
        if (open.isEmpty()) {
            judge.accept(new Plan(lines));
        }
        if (open.isEmpty() || line == lines.size()) {
            return;
        }
        tryAll(problem, lines, line + 1, open, judge);
        for (int job : List.copyOf(open)) {
            if (problem.jobs().get(job).canRunOn(line)) {
                List<Integer> rest = new ArrayList<>(open);
                rest.remove((Integer) job);
                lines.get(line).add(job);
                tryAll(problem, lines, line, rest, judge);
                lines.get(line).remove(lines.get(line).size() - 1);
            }
        }
    }

    /** Held and Karp, Journal of SIAM 10 (1962): the textbook recursion over subsets, written for the test alone. */
    static double leastByHeldAndKarp(SequencingProblem problem) {
        Changeovers table = problem.lines().get(0).changeovers();
        int jobs = problem.jobs().size();
        double[][] least = new double[1 << jobs][jobs];
        for (int subset = 1; subset < 1 << jobs; subset++) {
            for (int last = 0; last < jobs; last++) {
                least[subset][last] = leastOf(table, least, subset, last);
            }
        }
        double best = Double.POSITIVE_INFINITY;
        for (int last = 0; last < jobs; last++) {
            best = Math.min(best, least[(1 << jobs) - 1][last] + table.cost(last, table.atEnd()));
        }
        return best;
    }

    private static double leastOf(Changeovers table, double[][] least, int subset, int last) {
        int rest = subset & ~(1 << last);
        if (rest == subset) {
            return Double.POSITIVE_INFINITY;
        }
        double best = rest == 0 ? table.cost(table.atStart(), last) : Double.POSITIVE_INFINITY;
        for (int before = 0; before < least[0].length; before++) {
            if ((rest >> before & 1) == 1) {
                best = Math.min(best, least[rest][before] + table.cost(before, last));
            }
        }
        return best;
    }
}
