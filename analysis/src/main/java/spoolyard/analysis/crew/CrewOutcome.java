package spoolyard.analysis.crew;

import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.RunResult.CrewResult;

/**
 * What a role did in a replication, and what the plant made. Immutable.
 *
 * @param calls calls answered
 * @param waitS time from a call until somebody had come, all calls together, seconds
 * @param workS person-seconds at work, walking included
 * @param presentS person-seconds present
 * @param winderS winders times the time in which some of the role are on shift, seconds
 * @param swaps spool changes of all lines
 * @param overflows of these, changes in which the accumulator filled
 * @param goodPerDay good spools a day of the run
 */
record CrewOutcome(
        double calls,
        double waitS,
        double workS,
        double presentS,
        double winderS,
        double swaps,
        double overflows,
        double goodPerDay) {
    private static final double HOURS_PER_DAY = 24;

    static CrewOutcome of(Staffing staffing, RunResult run) {
        double[] sums = new double[4];
        for (CrewResult crew : run.crew()) {
            if (crew.role().equals(staffing.roleName())) {
                sums[0] += crew.tasks();
                sums[1] += crew.tasks() * crew.meanWaitS();
                sums[2] += crew.busyS();
                sums[3] += crew.presentS();
            }
        }
        double swaps = run.lines().stream().mapToLong(LineResult::swaps).sum();
        double overflows = run.lines().stream()
                .flatMap(line -> line.overflows().values().stream())
                .mapToLong(Long::longValue)
                .sum();
        double good = run.lines().stream().mapToLong(LineResult::goodSpools).sum();
        return new CrewOutcome(
                sums[0],
                sums[1],
                sums[2],
                sums[3],
                staffing.winders() * Ticks.toSeconds(staffing.mannedTicks()),
                swaps,
                overflows,
                good * HOURS_PER_DAY / Ticks.toHours(run.horizonTicks()));
    }

    double efficiency() {
        return 1 - waitS / winderS;
    }

    double meanWaitS() {
        return calls == 0 ? Double.NaN : waitS / calls;
    }

    double busyShare() {
        return workS / presentS;
    }

    double overflowShare() {
        return swaps == 0 ? Double.NaN : overflows / swaps;
    }
}
