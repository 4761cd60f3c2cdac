package spoolyard.analysis.buffer;

import java.util.List;
import java.util.OptionalDouble;
import spoolyard.analysis.theory.SwapOverflow;
import spoolyard.core.plant.Crew;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.OverflowPolicy;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.core.plant.Winder;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Swap;

/**
 * The chance that a swap overflows given all that happened before the work on it began: conditional Monte Carlo on the
 * time of the swap. Immutable.
 *
 * <p>At that instant the level L and the speed v of the line are known, and the time S of the work is drawn independently
 * of all before. If nothing else comes between, the accumulator fills if S &gt; (C - L) / v. So P(S &gt; (C - L) / v) has the
 * mean of the indicator of an overflow, and less variance. Source: A. M. Law, Simulation Modeling and Analysis, 5th ed.
 * 2015, section 11.6 (conditioning).
 *
 * <p>There is no chance, and the overflow is to be counted, where something else did come between, or where the past does
 * not tell it: each such case is decided by what does not depend on S, so the mean stays right.
 *
 * @param plant the plant
 * @param line one of its lines
 */
record OverflowChance(Plant plant, Line line) {
    /** Levels are told to the tick: a line that stops for a full accumulator is none of the disturbances. */
    private static final double SLACK_TICKS = Ticks.PER_SECOND / 100.0;

    /**
     * Chance of a swap; none of one that the end of the run leaves no time for.
     *
     * @param swap a swap of the line
     * @param knownUntilTick instant of the next spool, or the end of the run: until then a disturbance is known
     * @return in [0, 1]; empty if it must be counted
     */
    OptionalDouble of(Swap swap, long knownUntilTick) {
        if (soonestFullTick(swap) > plant.horizonTicks()) {
            return OptionalDouble.of(0);
        }
        if (swap.begunTick() == Ticks.NEVER
                || swap.begunMPerS() <= 0
                || isSlowedByOthers()
                || mayHaveOverflowedBefore(swap)) {
            return OptionalDouble.empty();
        }
        double graceS = graceS(swap.begunLevelM(), swap.begunMPerS());
        double endTick = swap.begunTick() + graceS * Ticks.PER_SECOND;
        boolean isUndisturbed = endTick - SLACK_TICKS <= Math.min(swap.disturbedTick(), knownUntilTick)
                || graceS == Double.POSITIVE_INFINITY && swap.disturbedTick() == Ticks.NEVER;
        OptionalDouble pace = pace(swap.begunTick(), endTick);
        return isUndisturbed && pace.isPresent()
                ? OptionalDouble.of(new SwapOverflow(swapTimeS(), graceS / pace.getAsDouble(), 1).probability())
                : OptionalDouble.empty();
    }

    /** Where strands share a speed and slow down for a level, each of them may be slow for another. */
    private boolean isSlowedByOthers() {
        return line.strands() > 1 && line.overflow() instanceof OverflowPolicy.Slow;
    }

    /** In the time of the wait the line may have filled the accumulator, if it ran all the while. */
    private boolean mayHaveOverflowedBefore(Swap swap) {
        return soonestFullTick(swap) <= swap.begunTick() + SLACK_TICKS;
    }

    private double soonestFullTick(Swap swap) {
        double fastestMPerS =
                line.speedMPerS(swap.product().polymer(), swap.product().diameterMm());
        return swap.fullTick() + graceS(swap.fullLevelM(), fastestMPerS) * Ticks.PER_SECOND;
    }

    /** Time until the accumulator is full if the winder does not turn. */
    private double graceS(double levelM, double mPerS) {
        if (line.overflow() instanceof OverflowPolicy.Slow slow && levelM < slow.fromLevelShare() * roomM()) {
            double slowM = slow.fromLevelShare() * roomM();
            double slowed = slow.minimumSpeedShare() * (1 - slow.scrapShare());
            return (slowM - levelM) / mPerS + (roomM() - slowM) / (slowed * mPerS);
        }
        return Math.max(0, roomM() - levelM) / mPerS;
    }

    private double roomM() {
        return line.accumulator().roomM();
    }

    private Law swapTimeS() {
        return line.winder() instanceof Winder.Manual manual
                ? manual.stopTimeS()
                : ((Winder.TwoPosition) line.winder()).transferTimeS();
    }

    /** Factor on the time of the work; empty if shifts differ in it, or if one that ends meanwhile hands over. */
    private OptionalDouble pace(long fromTick, double endTick) {
        if (line.winder() instanceof Winder.TwoPosition) {
            return OptionalDouble.of(1);
        }
        List<Shift> on = plant.shifts().stream()
                .filter(shift -> shift.startTick() - shift.handOverTicks() <= fromTick && fromTick <= shift.endTick())
                .toList();
        boolean handsOver = plant.crew().endOfShift() == Crew.EndOfShift.HAND_OVER
                && on.stream().anyMatch(shift -> shift.endTick() <= endTick);
        boolean isOne = on.stream().mapToDouble(Shift::pace).distinct().count() == 1;
        return isOne && !handsOver ? OptionalDouble.of(on.get(0).pace()) : OptionalDouble.empty();
    }
}
