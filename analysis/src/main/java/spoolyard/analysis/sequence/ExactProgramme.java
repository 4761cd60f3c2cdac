package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * The best plan of a small book, proved: a dynamic programme over subsets of the orders for each line, and subset convolution
 * over the lines. It keeps, for each subset and last order, every pair of worked time and cost that no other beats in both;
 * as a line may wait, earlier is never worse.
 *
 * <p>Source: Held and Karp, Journal of SIAM 10 (1962), with labels.
 */
final class ExactProgramme {
    /** Largest book for several lines or with due dates. */
    static final int MOST_JOBS = 11;

    /** Largest book for one line where only changeovers cost. */
    static final int MOST_PURE_JOBS = 15;

    private final SequencingProblem problem;
    private final int[] jobs;
    private final boolean isTimeless;

    private ExactProgramme(SequencingProblem problem) {
        this.problem = problem;
        List<Integer> frozen =
                problem.lines().stream().flatMap(line -> line.frozen().stream()).toList();
        jobs = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .toArray();
        isTimeless = problem.isPureChangeover();
    }

    /**
     * Whether a book is small enough.
     *
     * @param problem the problem
     * @return true if it is solved within about a second
     */
    static boolean isFor(SequencingProblem problem) {
        int frozen =
                problem.lines().stream().mapToInt(line -> line.frozen().size()).sum();
        int free = problem.jobs().size() - frozen;
        boolean isEasy = problem.lines().size() == 1 && problem.isPureChangeover();
        return free <= (isEasy ? MOST_PURE_JOBS : MOST_JOBS);
    }

    /** A way to make a subset on a line. */
    private record Label(double workedS, double cost, int last, Label before) {}

    static Plan solve(SequencingProblem problem) {
        return new ExactProgramme(problem).best();
    }

    private Plan best() {
        List<List<List<Label>>> done = new ArrayList<>();
        for (int line = 0; line < problem.lines().size(); line++) {
            done.add(finished(line));
        }
        return new Convolution(done).plan();
    }

    /** For each subset the ways to make it on a line, the way out paid, that no other beats in end and cost. */
    private List<List<Label>> finished(int line) {
        LineKernel kernel = new LineKernel(problem, line);
        int subsets = 1 << jobs.length;
        List<List<List<Label>>> table = new ArrayList<>(subsets);
        for (int subset = 0; subset < subsets; subset++) {
            table.add(new ArrayList<>());
        }
        Label start = new Label(0, 0, -1, null);
        for (int job : problem.lines().get(line).frozen()) {
            start = follow(kernel, start, job);
        }
        table.get(0).add(List.of(start));
        List<List<Label>> finished = new ArrayList<>(subsets);
        for (int subset = 0; subset < subsets; subset++) {
            if (subset > 0) {
                extend(kernel, table, subset);
            }
            finished.add(wayOut(kernel, table.get(subset)));
        }
        return finished;
    }

    private void extend(LineKernel kernel, List<List<List<Label>>> table, int subset) {
        for (int last = 0; last < jobs.length; last++) {
            boolean isLast = (subset >> last & 1) == 1 && kernel.canMake(jobs[last]);
            if (isLast) {
                int job = jobs[last];
                List<Label> ways = new ArrayList<>();
                table.get(subset & ~(1 << last))
                        .forEach(cell -> cell.forEach(way -> ways.add(follow(kernel, way, job))));
                table.get(subset).add(unbeaten(ways));
            }
        }
    }

    private Label follow(LineKernel kernel, Label before, int job) {
        int from = before.last < 0 ? kernel.atStart : kernel.product[before.last];
        int entry = from * kernel.states + kernel.product[job];
        double worked = Math.max(before.workedS, kernel.releaseS[job]) + kernel.timeS[entry] + kernel.runS[job];
        double cost = before.cost + kernel.cost[entry] + kernel.lateCost(job, worked);
        return new Label(isTimeless ? 0 : worked, cost, job, before);
    }

    private List<Label> wayOut(LineKernel kernel, List<List<Label>> cells) {
        List<Label> ways = new ArrayList<>();
        for (List<Label> cell : cells) {
            for (Label way : cell) {
                int from = way.last < 0 ? kernel.atStart : kernel.product[way.last];
                double endS = way.last < 0 ? 0 : kernel.endOfS(way.workedS);
                double cost = way.cost + kernel.cost[from * kernel.states + kernel.atEnd];
                ways.add(new Label(problem.makespanPerS() > 0 ? endS : 0, cost, -1, way));
            }
        }
        return unbeaten(ways);
    }

    private static List<Label> unbeaten(List<Label> ways) {
        ways.sort((a, b) ->
                a.workedS != b.workedS ? Double.compare(a.workedS, b.workedS) : Double.compare(a.cost, b.cost));
        List<Label> kept = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Label way : ways) {
            if (way.cost < least) {
                kept.add(way);
                least = way.cost;
            }
        }
        return kept;
    }

    /** Shares the orders out over the lines. */
    private final class Convolution {
        private final List<List<List<Label>>> done;
        private final int subsets = 1 << jobs.length;

        Convolution(List<List<List<Label>>> done) {
            this.done = done;
        }

        /** A way to make a subset on the first lines. */
        private record Share(double endS, double cost, Label way, Share before) {}

        Plan plan() {
            List<List<Share>> shares = new ArrayList<>();
            for (int subset = 0; subset < subsets; subset++) {
                shares.add(subset == 0 ? List.of(new Share(0, 0, null, null)) : List.of());
            }
            for (List<List<Label>> line : done) {
                shares = withLine(shares, line);
            }
            Share best = shares.get(subsets - 1).stream()
                    .min(Comparator.comparingDouble(this::cost))
                    .orElseThrow();
            return plan(best);
        }

        private double cost(Share share) {
            return share.cost + share.endS * problem.makespanPerS();
        }

        private List<List<Share>> withLine(List<List<Share>> before, List<List<Label>> line) {
            List<List<Share>> after = new ArrayList<>();
            for (int subset = 0; subset < subsets; subset++) {
                List<Share> ways = new ArrayList<>();
                for (int part = subset; part >= 0; part = part == 0 ? -1 : part - 1 & subset) {
                    join(before.get(subset & ~part), line.get(part), ways);
                }
                after.add(unbeatenShares(ways));
            }
            return after;
        }

        private void join(List<Share> before, List<Label> ways, List<Share> joined) {
            for (Share share : before) {
                for (Label way : ways) {
                    joined.add(new Share(Math.max(share.endS, way.workedS), share.cost + way.cost, way, share));
                }
            }
        }

        private List<Share> unbeatenShares(List<Share> ways) {
            ways.sort(Comparator.comparingDouble(Share::endS).thenComparingDouble(Share::cost));
            List<Share> kept = new ArrayList<>();
            double least = Double.POSITIVE_INFINITY;
            for (Share way : ways) {
                if (way.cost < least) {
                    kept.add(way);
                    least = way.cost;
                }
            }
            return kept;
        }

        private Plan plan(Share best) {
            List<List<Integer>> lines = new ArrayList<>();
            for (Share share = best; share.way != null; share = share.before) {
                List<Integer> sequence = new ArrayList<>();
                for (Label way = share.way.before; way.last >= 0; way = way.before) {
                    sequence.add(0, way.last);
                }
                lines.add(0, sequence);
            }
            return new Plan(lines);
        }
    }
}
