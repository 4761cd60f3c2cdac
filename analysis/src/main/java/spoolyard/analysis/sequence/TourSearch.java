package spoolyard.analysis.sequence;

import java.util.Arrays;
import java.util.List;
import java.util.SplittableRandom;
import java.util.stream.IntStream;

/**
 * One line whose changeovers alone cost: an asymmetric travelling salesman, solved by iterated local search. A kick reverses
 * the order of three short neighbouring segments, {@link SegmentExchange} repairs it, and the new tour is kept or
 * taken back as in annealing. For one thread.
 *
 * <p>Source: iterated local search, Lourenço, Martin and Stützle, in Handbook of Metaheuristics, 2003; double bridge: Martin, Otto
 * and Felten, Complex Systems 5 (1991).
 */
final class TourSearch {
    private static final int LONGEST = 50;
    private static final double HOTTEST = 0.4;
    private static final double COOLED = 0.1;
    private static final int CYCLES = 3;

    private final SequencingProblem problem;
    private final LineKernel kernel;
    private final int[] cities;
    private final Tour tour;
    private final SegmentExchange repair;
    private final SplittableRandom random;
    private final int longest;
    private double length;
    private int[] best;
    private double bestLength;

    /** The first node stands for the start and the end of the line, with what is frozen. */
    TourSearch(SequencingProblem problem, long seed) {
        this.problem = problem;
        kernel = new LineKernel(problem, 0);
        List<Integer> frozen = problem.lines().get(0).frozen();
        cities = IntStream.range(0, problem.jobs().size())
                .filter(job -> !frozen.contains(job))
                .toArray();
        int before = frozen.isEmpty() ? kernel.atStart : kernel.product[frozen.get(frozen.size() - 1)];
        tour = new Tour(cities.length + 1, distances(before));
        repair = new SegmentExchange(tour);
        random = new SplittableRandom(seed);
        longest = Math.max(1, Math.min(LONGEST, (tour.size - 1) / 3));
    }

    private double[] distances(int before) {
        int size = cities.length + 1;
        double[] distance = new double[size * size];
        for (int from = 0; from < size; from++) {
            int row = from == 0 ? before : kernel.product[cities[from - 1]];
            for (int to = 0; to < size; to++) {
                int column = to == 0 ? kernel.atEnd : kernel.product[cities[to - 1]];
                distance[from * size + to] = from == to ? 0 : kernel.cost[row * kernel.states + column];
            }
        }
        return distance;
    }

    static boolean isFor(SequencingProblem problem) {
        return problem.lines().size() == 1
                && problem.isPureChangeover()
                && problem.jobs().size() - problem.lines().get(0).frozen().size() >= 5;
    }

    Plan best() {
        int start = 0;
        while (best[start] != 0) {
            start++;
        }
        int[] jobs = new int[cities.length];
        for (int i = 0; i < jobs.length; i++) {
            jobs[i] = cities[best[(start + 1 + i) % best.length] - 1];
        }
        List<Integer> frozen = problem.lines().get(0).frozen();
        return new Plan(List.of(IntStream.concat(frozen.stream().mapToInt(Integer::intValue), Arrays.stream(jobs))
                .boxed()
                .toList()));
    }

    void run(Plan from, Budget budget, SearchWatch watch) {
        start(from);
        double typical = length / tour.size;
        double temperature = 0;
        long iteration = 0;
        while (budget.goesOn()) {
            if (iteration++ % 256 == 0) {
                double phase = budget.progress() * CYCLES % 1;
                temperature = typical * HOTTEST * Math.pow(COOLED, phase);
            }
            double before = length;
            tour.mark();
            kick();
            length -= repair.improve();
            if (length > before - temperature * Math.log(1 - random.nextDouble())) {
                tour.takeBack();
                length = before;
            } else if (length < bestLength - 1e-7) {
                keep();
                watch.found(bestLength);
            }
        }
    }

    private void start(Plan from) {
        int[] number = new int[problem.jobs().size()];
        for (int city = 0; city < cities.length; city++) {
            number[cities[city]] = city + 1;
        }
        List<Integer> jobs = from.lines().get(0);
        int frozen = jobs.size() - cities.length;
        int[] nodes = new int[tour.size];
        for (int i = 0; i < cities.length; i++) {
            nodes[i + 1] = number[jobs.get(frozen + i)];
        }
        tour.set(nodes);
        keep();
        repair.pushAll();
        repair.improve();
        keep();
    }

    /** Keeps the tour as the best; reckons its length anew, so that rounding doesn't add up. */
    private void keep() {
        length = tour.length();
        best = tour.node.clone();
        bestLength = length;
    }

    /** Three neighbouring segments B C D become D C B: four edges change, which no single exchange undoes. */
    private void kick() {
        int start = random.nextInt(tour.size);
        int b = 1 + random.nextInt(longest);
        int c = 1 + random.nextInt(longest);
        int d = 1 + random.nextInt(longest);
        int beforeB = tour.at(start == 0 ? tour.size - 1 : start - 1);
        int[] ends = {
            beforeB,
            tour.at(start),
            tour.at(wrap(start + b - 1)),
            tour.at(wrap(start + b)),
            tour.at(wrap(start + b + c - 1)),
            tour.at(wrap(start + b + c)),
            tour.at(wrap(start + b + c + d - 1)),
            tour.at(wrap(start + b + c + d))
        };
        length += tour.distance(ends[0], ends[5]) + tour.distance(ends[6], ends[3]);
        length += tour.distance(ends[4], ends[1]) + tour.distance(ends[2], ends[7]);
        for (int i = 0; i < ends.length; i += 2) {
            length -= tour.distance(ends[i], ends[i + 1]);
        }
        tour.exchange(start, b, c + d);
        tour.exchange(tour.place[ends[3]], c, d);
        for (int end : ends) {
            repair.push(end);
        }
    }

    private int wrap(int index) {
        return index < tour.size ? index : index - tour.size;
    }
}
