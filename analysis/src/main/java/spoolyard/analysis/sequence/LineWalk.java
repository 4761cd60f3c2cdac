package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;
import spoolyard.analysis.sequence.TimedPlan.WeekEnd;

/**
 * Walks the orders of one line. A changeover that would not be done by the end of a week that is purged waits until after it;
 * an order goes on after it once the line has been changed back to its product. For one thread, once.
 */
final class LineWalk {
    private final SequencingProblem problem;
    private final int number;
    private final Changeovers changeovers;
    private final WorkingTime hours;
    private final WeekEnds ends;
    private final List<TimedJob> jobs = new ArrayList<>();
    private final List<WeekEnd> weekEnds = new ArrayList<>();
    private double changeoverCost;
    private double lateCost;
    private double lastS;
    private double workedS;
    private int state;
    private int nextEnd;

    LineWalk(SequencingProblem problem, int number) {
        SequencedLine line = problem.lines().get(number);
        this.problem = problem;
        this.number = number;
        changeovers = line.changeovers();
        hours = line.hours();
        ends = line.weekEnds();
        state = changeovers.atStart();
    }

    /** Makes all orders and leaves the line. */
    LineWalk along(List<Integer> sequence) {
        sequence.forEach(this::make);
        changeoverCost += changeovers.cost(state, changeovers.atEnd());
        if (nextEnd < ends.workedS().size()) {
            purge(false);
        }
        return this;
    }

    private void make(int order) {
        Job job = problem.jobs().get(order);
        double startS = begin(job);
        int from = state;
        double makingS = startS + changeTo(job.product());
        run(makingS, job.runS().get(number), job.product());
        double endS = hours.endOfS(workedS);
        double lateS = Math.max(0, endS - job.dueS());
        double shownS = Math.max(hours.startOfS(startS), job.releaseS());
        jobs.add(new TimedJob(order, from, shownS, hours.startOfS(makingS), endS, lateS));
        lateCost += lateS * job.latePerS();
        lastS = Math.max(lastS, endS);
    }

    /** When the changeover to an order begins, in worked seconds. */
    private double begin(Job job) {
        double startS = Math.max(workedS, hours.workedUntilS(job.releaseS()));
        while (nextEnd < ends.workedS().size()
                && startS + changeovers.timeS(state, job.product())
                        > ends.workedS().get(nextEnd)) {
            startS = Math.max(startS, ends.workedS().get(nextEnd));
            purge(false);
        }
        return startS;
    }

    private double changeTo(int product) {
        double seconds = changeovers.timeS(state, product);
        changeoverCost += changeovers.cost(state, product);
        state = product;
        return seconds;
    }

    private void run(double makingS, double runS, int product) {
        double leftS = runS;
        workedS = makingS;
        while (nextEnd < ends.workedS().size()
                && workedS + leftS > ends.workedS().get(nextEnd)) {
            double endS = Math.max(workedS, ends.workedS().get(nextEnd));
            leftS -= endS - workedS;
            purge(true);
            workedS = endS + changeTo(product);
        }
        workedS += leftS;
    }

    /** At the next end of a week. */
    private void purge(boolean goesOn) {
        int clean = ends.clean().get(state);
        if (clean >= 0) {
            changeoverCost += ends.cost().get(state);
            weekEnds.add(new WeekEnd(hours.endOfS(ends.workedS().get(nextEnd)), state, clean, jobs.size(), goesOn));
            state = clean;
        }
        nextEnd++;
    }

    List<TimedJob> jobs() {
        return jobs;
    }

    List<WeekEnd> weekEnds() {
        return weekEnds;
    }

    double changeoverCost() {
        return changeoverCost;
    }

    double lateCost() {
        return lateCost;
    }

    double lastS() {
        return lastS;
    }
}
