package spoolyard.analysis.sequence;

import java.util.List;

/** A line's numbers in plain arrays, for the inner loops. Never changed once made. */
final class LineKernel {
    final int states;
    final int atStart;
    final int atEnd;
    final double[] cost;
    final double[] timeS;
    final double[] runS;
    final double[] releaseS;
    final double[] dueWorkedS;
    final double[] dueS;
    final double[] latePerS;
    final int[] product;
    final int frozen;
    private final WorkingTime hours;

    LineKernel(SequencingProblem problem, int line) {
        SequencedLine description = problem.lines().get(line);
        List<Job> jobs = problem.jobs();
        Changeovers changeovers = description.changeovers();
        states = changeovers.states();
        atStart = changeovers.atStart();
        atEnd = changeovers.atEnd();
        cost = changeovers.costs();
        timeS = changeovers.timesS();
        hours = description.hours();
        frozen = description.frozen().size();
        runS = jobs.stream().mapToDouble(job -> job.runS().get(line)).toArray();
        releaseS = jobs.stream()
                .mapToDouble(job -> hours.workedUntilS(job.releaseS()))
                .toArray();
        dueWorkedS = jobs.stream().mapToDouble(this::dueWorked).toArray();
        dueS = jobs.stream().mapToDouble(Job::dueS).toArray();
        latePerS = jobs.stream().mapToDouble(Job::latePerS).toArray();
        product = jobs.stream().mapToInt(Job::product).toArray();
    }

    private double dueWorked(Job job) {
        if (job.dueS() == Double.POSITIVE_INFINITY || job.latePerS() == 0) {
            return Double.POSITIVE_INFINITY;
        }
        return job.dueS() < 0 ? -1 : hours.workedUntilS(job.dueS());
    }

    boolean canMake(int job) {
        return runS[job] < Double.POSITIVE_INFINITY;
    }

    /** What it costs that a job ends after so much work; 0 if that is on time. */
    double lateCost(int job, double work) {
        return work <= dueWorkedS[job] ? 0 : latePerS[job] * Math.max(0, hours.endOfS(work) - dueS[job]);
    }

    double endOfS(double work) {
        return hours.endOfS(work);
    }

    static LineKernel[] of(SequencingProblem problem) {
        LineKernel[] kernels = new LineKernel[problem.lines().size()];
        for (int line = 0; line < kernels.length; line++) {
            kernels[line] = new LineKernel(problem, line);
        }
        return kernels;
    }
}
