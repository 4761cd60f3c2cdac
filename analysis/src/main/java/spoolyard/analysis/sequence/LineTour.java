package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;

/**
 * One line whose changeovers alone cost, as a tour. The first node stands for the start and the end of the line, with what is frozen;
 * the others are the orders that are open. Never changed once made.
 *
 * <p>Distances are what an edge costs above the least assignment, its reduced cost: never below 0, and each tour is shorter by the
 * same. What is near by them belongs into a good tour rather than what merely costs little.
 *
 * <p>Source, from memory: candidates by reduced cost, Johnson, Gutin, McGeoch, Yeo, Zhang and Zverovitch, in Gutin and Punnen, The
 * Traveling Salesman Problem and Its Variations, 2002.
 */
final class LineTour {
    private static final double NEVER = 1e12;
    private static final int NEAR = 10;
    private static final int NEAR_ALIKE = 3;

    final int size;
    /** Money of an edge, row-major, from the row to the column. */
    final double[] money;
    /** The same above the least assignment. */
    final double[] distance;
    /** What the least assignment costs: the money of a tour is this and its distances. */
    final double least;

    private final List<Integer> frozen;
    private final int[] cities;
    private final int[] number;
    private final int[] patched;
    private final int[] near;

    LineTour(SequencingProblem problem) {
        LineKernel kernel = new LineKernel(problem, 0);
        frozen = problem.lines().get(0).frozen();
        cities = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .toArray();
        number = new int[problem.jobs().size()];
        for (int city = 0; city < cities.length; city++) {
            number[cities[city]] = city + 1;
        }
        size = cities.length + 1;
        money = money(kernel);
        Assignment assignment = Assignment.of(size, money);
        least = assignment.least();
        distance = reduced(assignment.rowPotentials(), assignment.columnPotentials());
        patched = Patching.tour(size, distance, assignment.columns());
        near = nearest();
    }

    static boolean isFor(SequencingProblem problem) {
        return problem.lines().size() == 1
                && problem.isPureChangeover()
                && problem.jobs().size() - problem.lines().get(0).frozen().size() >= 5;
    }

    private double[] money(LineKernel kernel) {
        int before = frozen.isEmpty() ? kernel.atStart : kernel.product[frozen.get(frozen.size() - 1)];
        double[] all = new double[size * size];
        for (int from = 0; from < size; from++) {
            int row = from == 0 ? before : kernel.product[cities[from - 1]];
            for (int to = 0; to < size; to++) {
                int column = to == 0 ? kernel.atEnd : kernel.product[cities[to - 1]];
                all[from * size + to] = from == to ? NEVER : kernel.cost[row * kernel.states + column];
            }
        }
        return all;
    }

    private double[] reduced(double[] rows, double[] columns) {
        double[] all = new double[size * size];
        for (int from = 0; from < size; from++) {
            for (int to = 0; to < size; to++) {
                double above = money[from * size + to] - rows[from] - columns[to];
                all[from * size + to] = Math.max(0, above);
            }
        }
        return all;
    }

    /** For each node those that best come next, the nearest first, for all as many; not to be changed. */
    int[] near() {
        return near;
    }

    private int[] nearest() {
        int width = Math.min(NEAR, size - 1);
        int[] near = new int[size * width];
        for (int from = 0; from < size; from++) {
            int row = from;
            Integer[] others = IntStream.range(0, size)
                    .filter(to -> to != row)
                    .boxed()
                    .sorted(Comparator.comparingDouble(to -> distance[row * size + to]))
                    .toArray(Integer[]::new);
            fill(others, near, from * width, width);
        }
        return near;
    }

    /** Nodes that differ in nothing would crowd out all others: a few of each kind are enough. */
    private void fill(Integer[] byDistance, int[] near, int offset, int width) {
        boolean[] isTaken = new boolean[byDistance.length];
        int count = 0;
        for (int most = NEAR_ALIKE; count < width; most = Integer.MAX_VALUE) {
            int alike = 0;
            for (int i = 0; i < byDistance.length && count < width; i++) {
                boolean isLikeLast = i > 0 && isAlike(byDistance[i - 1], byDistance[i]);
                alike = isLikeLast ? alike + 1 : 1;
                if (alike <= most && !isTaken[i]) {
                    isTaken[i] = true;
                    near[offset + count++] = byDistance[i];
                }
            }
        }
    }

    private boolean isAlike(int one, int other) {
        return money[one * size + other] == 0 && money[other * size + one] == 0;
    }

    /** The plan that patching the least assignment gives. */
    Plan patched() {
        return plan(patched);
    }

    /** The plan of a tour that begins at any node. */
    Plan plan(int[] nodes) {
        int start = 0;
        while (nodes[start] != 0) {
            start++;
        }
        int[] jobs = new int[cities.length];
        for (int i = 0; i < jobs.length; i++) {
            jobs[i] = cities[nodes[(start + 1 + i) % nodes.length] - 1];
        }
        return new Plan(List.of(IntStream.concat(frozen.stream().mapToInt(Integer::intValue), Arrays.stream(jobs))
                .boxed()
                .toList()));
    }

    /** The tour of a plan, node 0 first. */
    int[] nodes(Plan plan) {
        List<Integer> jobs = plan.lines().get(0);
        int[] nodes = new int[size];
        for (int i = 0; i < cities.length; i++) {
            nodes[i + 1] = number[jobs.get(frozen.size() + i)];
        }
        return nodes;
    }
}
