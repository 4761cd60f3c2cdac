package spoolyard.analysis.schedule;

import java.util.List;
import spoolyard.analysis.sequence.TimedPlan.TimedJob;

/**
 * How different two plans are: the share of the orders that follow another product, or are made more than a day earlier or
 * later. That two lines that are alike change places, or two orders of one product next to each other, is no difference.
 */
final class PlanDistance {
    private static final double APART_S = 86_400;

    private PlanDistance() {}

    static double between(PlanFigures one, PlanFigures other) {
        TimedJob[] first = byOrder(one);
        TimedJob[] second = byOrder(other);
        int different = 0;
        for (int order = 0; order < first.length; order++) {
            boolean isNear = Math.abs(first[order].endS() - second[order].endS()) <= APART_S;
            different += isNear && first[order].from() == second[order].from() ? 0 : 1;
        }
        return different / (double) first.length;
    }

    private static TimedJob[] byOrder(PlanFigures plan) {
        TimedJob[] jobs = new TimedJob[plan.book().problem().jobs().size()];
        plan.timed().lines().stream().flatMap(List::stream).forEach(job -> jobs[job.job()] = job);
        return jobs;
    }
}
