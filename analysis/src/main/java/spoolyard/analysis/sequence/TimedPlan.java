package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.List;

/**
 * A plan with its times and its cost, reckoned order by order: the plain statement of what the search makes least. Immutable.
 *
 * @param plan the plan
 * @param lines for each line its orders with their times
 * @param changeoverCost money of all changeovers
 * @param lateCost money of all lateness
 * @param makespanCost money of the time until all is made
 */
public record TimedPlan(
        Plan plan, List<List<TimedJob>> lines, double changeoverCost, double lateCost, double makespanCost) {
    /** Copies the lists. */
    public TimedPlan {
        lines = lines.stream().map(List::copyOf).toList();
    }

    /**
     * An order in its place.
     *
     * @param job its number
     * @param from product before it, or the start of the line
     * @param startS begin of its changeover, seconds since the start of the plan
     * @param makingS begin of making
     * @param endS end of making
     * @param lateS seconds after its due date, 0 if on time
     */
    public record TimedJob(int job, int from, double startS, double makingS, double endS, double lateS) {}

    /**
     * All of it.
     *
     * @return money
     */
    public double cost() {
        return changeoverCost + lateCost + makespanCost;
    }

    /**
     * Reckons a plan.
     *
     * @param problem the problem
     * @param plan one of its plans
     * @return the plan with times
     * @throws IllegalArgumentException if it isn't a plan of the problem
     */
    public static TimedPlan of(SequencingProblem problem, Plan plan) {
        plan.check(problem);
        List<List<TimedJob>> lines = new ArrayList<>();
        double changeoverCost = 0;
        double lateCost = 0;
        double lastS = 0;
        for (int line = 0; line < problem.lines().size(); line++) {
            Changeovers changeovers = problem.lines().get(line).changeovers();
            List<TimedJob> timed = timed(problem, line, plan.lines().get(line));
            int state = changeovers.atStart();
            for (TimedJob each : timed) {
                Job job = problem.jobs().get(each.job);
                changeoverCost += changeovers.cost(state, job.product());
                lateCost += each.lateS * job.latePerS();
                lastS = Math.max(lastS, each.endS);
                state = job.product();
            }
            changeoverCost += changeovers.cost(state, changeovers.atEnd());
            lines.add(timed);
        }
        return new TimedPlan(plan, lines, changeoverCost, lateCost, lastS * problem.makespanPerS());
    }

    private static List<TimedJob> timed(SequencingProblem problem, int line, List<Integer> sequence) {
        SequencedLine description = problem.lines().get(line);
        WorkingTime hours = description.hours();
        List<TimedJob> timed = new ArrayList<>();
        int state = description.changeovers().atStart();
        double worked = 0;
        for (int number : sequence) {
            Job job = problem.jobs().get(number);
            double start = Math.max(worked, hours.workedUntilS(job.releaseS()));
            double making = start + description.changeovers().timeS(state, job.product());
            worked = making + job.runS().get(line);
            double endS = hours.endOfS(worked);
            double startS = Math.max(hours.startOfS(start), job.releaseS());
            double lateS = Math.max(0, endS - job.dueS());
            timed.add(new TimedJob(number, state, startS, hours.startOfS(making), endS, lateS));
            state = job.product();
        }
        return timed;
    }
}
