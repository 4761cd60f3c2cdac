package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * All trade-offs of a small book, proved: {@link ExactProgramme} with both parts of the cost kept apart. Of each subset and
 * last order it keeps every way that no other beats in worked time, changeovers and lateness.
 */
final class ExactTradeOff {
    /** Largest book. */
    static final int MOST_JOBS = 8;

    private final SequencingProblem problem;
    private final int[] jobs;

    private ExactTradeOff(SequencingProblem problem) {
        this.problem = problem;
        List<Integer> frozen =
                problem.lines().stream().flatMap(line -> line.frozen().stream()).toList();
        jobs = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .toArray();
    }

    /** Whether a book is small enough. */
    static boolean isFor(SequencingProblem problem) {
        return new ExactTradeOff(problem).jobs.length <= MOST_JOBS;
    }

    /** A way to make some orders on a line, the last of them known. */
    private record Way(double workedS, double changeovers, double late, int last, Way before) {
        boolean isNoWorseThan(Way other) {
            return workedS <= other.workedS && changeovers <= other.changeovers && late <= other.late;
        }
    }

    /** A way to make some orders on the first lines. */
    private record Share(double changeovers, double late, Way way, Share before) {}

    /** A plan of each point, no two of the same point. */
    static List<Plan> solve(SequencingProblem problem) {
        return new ExactTradeOff(problem).plans();
    }

    private List<Plan> plans() {
        int subsets = 1 << jobs.length;
        List<List<Share>> shares = new ArrayList<>();
        for (int subset = 0; subset < subsets; subset++) {
            shares.add(subset == 0 ? List.of(new Share(0, 0, null, null)) : List.of());
        }
        for (int line = 0; line < problem.lines().size(); line++) {
            shares = withLine(shares, finished(line));
        }
        return shares.get(subsets - 1).stream().map(ExactTradeOff::plan).toList();
    }

    /** For each subset the ways to make it on a line, the way out paid. */
    private List<List<Way>> finished(int line) {
        LineKernel kernel = new LineKernel(problem, line);
        Way start = new Way(0, 0, 0, -1, null);
        for (int job : problem.lines().get(line).frozen()) {
            start = follow(kernel, start, job);
        }
        List<List<Way>> table = new ArrayList<>();
        List<List<Way>> finished = new ArrayList<>();
        for (int subset = 0; subset < 1 << jobs.length; subset++) {
            table.add(subset == 0 ? List.of(start) : extended(kernel, table, subset));
            finished.add(
                    table.get(subset).stream().map(way -> wayOut(kernel, way)).toList());
        }
        return finished;
    }

    private List<Way> extended(LineKernel kernel, List<List<Way>> table, int subset) {
        List<Way> kept = new ArrayList<>();
        for (int last = 0; last < jobs.length; last++) {
            if ((subset >> last & 1) == 1 && kernel.canMake(jobs[last])) {
                int job = jobs[last];
                List<Way> ways = table.get(subset & ~(1 << last)).stream()
                        .map(way -> follow(kernel, way, job))
                        .sorted(Comparator.comparingDouble(Way::workedS)
                                .thenComparingDouble(Way::changeovers)
                                .thenComparingDouble(Way::late))
                        .toList();
                kept.addAll(unbeaten(ways));
            }
        }
        return kept;
    }

    private static List<Way> unbeaten(List<Way> sorted) {
        List<Way> kept = new ArrayList<>();
        for (Way way : sorted) {
            if (kept.stream().noneMatch(other -> other.isNoWorseThan(way))) {
                kept.add(way);
            }
        }
        return kept;
    }

    private static Way follow(LineKernel kernel, Way before, int job) {
        int from = before.last < 0 ? kernel.atStart : kernel.product[before.last];
        int entry = from * kernel.states + kernel.product[job];
        double worked = Math.max(before.workedS, kernel.releaseS[job]) + kernel.timeS[entry] + kernel.runS[job];
        return new Way(
                worked,
                before.changeovers + kernel.cost[entry],
                before.late + kernel.lateCost(job, worked),
                job,
                before);
    }

    private static Way wayOut(LineKernel kernel, Way way) {
        int from = way.last < 0 ? kernel.atStart : kernel.product[way.last];
        return new Way(0, way.changeovers + kernel.cost[from * kernel.states + kernel.atEnd], way.late, -1, way);
    }

    private List<List<Share>> withLine(List<List<Share>> before, List<List<Way>> line) {
        List<List<Share>> after = new ArrayList<>();
        for (int subset = 0; subset < before.size(); subset++) {
            List<Share> shares = new ArrayList<>();
            for (int part = subset; part >= 0; part = part == 0 ? -1 : part - 1 & subset) {
                join(before.get(subset & ~part), line.get(part), shares);
            }
            after.add(unbeatenShares(shares));
        }
        return after;
    }

    private static void join(List<Share> before, List<Way> ways, List<Share> joined) {
        for (Share share : before) {
            for (Way way : ways) {
                joined.add(new Share(share.changeovers + way.changeovers, share.late + way.late, way, share));
            }
        }
    }

    private static List<Share> unbeatenShares(List<Share> shares) {
        shares.sort(Comparator.comparingDouble(Share::changeovers).thenComparingDouble(Share::late));
        List<Share> kept = new ArrayList<>();
        double least = Double.POSITIVE_INFINITY;
        for (Share share : shares) {
            if (share.late < least) {
                kept.add(share);
                least = share.late;
            }
        }
        return kept;
    }

    private static Plan plan(Share last) {
        List<List<Integer>> lines = new ArrayList<>();
        for (Share share = last; share.way != null; share = share.before) {
            List<Integer> sequence = new ArrayList<>();
            for (Way way = share.way.before; way.last >= 0; way = way.before) {
                sequence.add(0, way.last);
            }
            lines.add(0, sequence);
        }
        return new Plan(lines);
    }
}
