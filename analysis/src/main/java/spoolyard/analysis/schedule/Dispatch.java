package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import spoolyard.analysis.sequence.Changeovers;
import spoolyard.analysis.sequence.Job;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.SequencedLine;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.NextOrder;
import spoolyard.core.policy.PurgeTable;

/**
 * The plan that a dispatch rule makes when every line takes its next order as soon as it is free, with the times of the
 * sequencing problem. Frozen orders come first. For one thread, once.
 */
final class Dispatch {
    private final PlantBook book;
    private final NextOrder rule;
    private final PurgeTable purges;
    private final List<List<Integer>> plan = new ArrayList<>();
    private final double[] worked;
    private final int[] state;
    private final double[] releaseS;
    private final int[][] openOn;
    private final int[] openCount;
    private int open;

    private Dispatch(PlantBook book, NextOrder rule) {
        this.book = book;
        this.rule = rule;
        purges = new PurgeTable(book.plant().changeovers());
        int lines = book.problem().lines().size();
        worked = new double[lines];
        state = new int[lines];
        List<Job> jobs = book.problem().jobs();
        releaseS = jobs.stream().mapToDouble(Job::releaseS).toArray();
        openOn = IntStream.range(0, lines)
                .mapToObj(line -> IntStream.range(0, jobs.size())
                        .filter(job -> jobs.get(job).canRunOn(line))
                        .toArray())
                .toArray(int[][]::new);
        openCount = Arrays.stream(openOn).mapToInt(each -> each.length).toArray();
        open = jobs.size();
        for (int line = 0; line < lines; line++) {
            plan.add(new ArrayList<>());
            SequencedLine each = book.problem().lines().get(line);
            state[line] = each.changeovers().atStart();
            for (int job : each.frozen()) {
                make(line, job);
            }
        }
    }

    static Plan plan(PlantBook book, NextOrder rule) {
        Dispatch dispatch = new Dispatch(book, rule);
        while (dispatch.open > 0) {
            dispatch.next();
        }
        return new Plan(dispatch.plan);
    }

    /** The line that can begin an order first takes one. */
    private void next() {
        int line = -1;
        double soonestS = Double.POSITIVE_INFINITY;
        for (int each = 0; each < worked.length; each++) {
            double beginS = earliestBeginS(each);
            if (beginS < soonestS) {
                soonestS = beginS;
                line = each;
            }
        }
        double now = soonestS;
        int taker = line;
        List<Integer> candidates = Arrays.stream(openOn[taker], 0, openCount[taker])
                .filter(job -> releaseS[job] <= now + 1e-6)
                .boxed()
                .toList();
        make(taker, choose(taker, candidates));
    }

    private double earliestBeginS(int line) {
        double freeS = book.problem().lines().get(line).hours().startOfS(worked[line]);
        double firstS = Double.POSITIVE_INFINITY;
        for (int i = 0; i < openCount[line]; i++) {
            firstS = Math.min(firstS, Math.max(freeS, releaseS[openOn[line][i]]));
        }
        return firstS;
    }

    /** Takes an order off the lists of all lines; they stay in book order. */
    private void close(int job) {
        for (int line = 0; line < openOn.length; line++) {
            int place = Arrays.binarySearch(openOn[line], 0, openCount[line], job);
            if (place >= 0) {
                openCount[line]--;
                System.arraycopy(openOn[line], place + 1, openOn[line], place, openCount[line] - place);
            }
        }
        open--;
    }

    private int choose(int line, List<Integer> candidates) {
        Line description = book.plant().lines().get(line);
        List<Order> all = book.plant().book().orders();
        List<Order> orders = candidates.stream().map(all::get).toList();
        Optional<Product> now = state[line] < book.products().size()
                ? Optional.of(book.products().get(state[line]))
                : description.onLineNow();
        Order chosen = rule.choose(now, orders, order -> now.map(from ->
                        purges.purgeKg(description, from, order.product()).orElse(Double.POSITIVE_INFINITY))
                .orElse(0.0));
        return candidates.get(orders.indexOf(chosen));
    }

    private void make(int line, int number) {
        SequencedLine each = book.problem().lines().get(line);
        Job job = book.problem().jobs().get(number);
        Changeovers changeovers = each.changeovers();
        double begin = Math.max(worked[line], each.hours().workedUntilS(job.releaseS()));
        worked[line] = begin
                + changeovers.timeS(state[line], job.product())
                + job.runS().get(line);
        state[line] = job.product();
        plan.get(line).add(number);
        close(number);
    }

    @Override
    public String toString() {
        return "free at " + Arrays.toString(worked);
    }
}
