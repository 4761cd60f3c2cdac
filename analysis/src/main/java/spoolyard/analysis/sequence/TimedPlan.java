package spoolyard.analysis.sequence;

import java.util.ArrayList;
import java.util.List;

/**
 * A plan with its times and its cost, reckoned order by order: the plain statement of what the search makes least. Immutable.
 *
 * @param plan the plan
 * @param lines for each line its orders with their times
 * @param weekEnds for each line its purges at the end of a week
 * @param changeoverCost money of all changeovers and purges at the end of a week
 * @param lateCost money of all lateness
 * @param makespanCost money of the time until all is made
 */
public record TimedPlan(
        Plan plan,
        List<List<TimedJob>> lines,
        List<List<WeekEnd>> weekEnds,
        double changeoverCost,
        double lateCost,
        double makespanCost) {
    /** Copies the lists. */
    public TimedPlan {
        lines = lines.stream().map(List::copyOf).toList();
        weekEnds = weekEnds.stream().map(List::copyOf).toList();
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
     * A purge at the end of a week.
     *
     * @param startS when it begins, seconds since the start of the plan
     * @param from product before it, or the start of the line
     * @param clean product afterwards
     * @param place how many orders of the line are done by then
     * @param goesOn whether the next has begun by then: it is changed back to from the clean product, and goes on
     */
    public record WeekEnd(double startS, int from, int clean, int place, boolean goesOn) {}

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
        List<List<WeekEnd>> weekEnds = new ArrayList<>();
        double changeoverCost = 0;
        double lateCost = 0;
        double lastS = 0;
        for (int line = 0; line < problem.lines().size(); line++) {
            LineWalk walk = new LineWalk(problem, line).along(plan.lines().get(line));
            changeoverCost += walk.changeoverCost();
            lateCost += walk.lateCost();
            lastS = Math.max(lastS, walk.lastS());
            lines.add(walk.jobs());
            weekEnds.add(walk.weekEnds());
        }
        return new TimedPlan(plan, lines, weekEnds, changeoverCost, lateCost, lastS * problem.makespanPerS());
    }
}
