package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Line;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Swap;

/**
 * The level of an accumulator through a swap, as straight lines between known points: full spool, begin of the work, full
 * accumulator, winder turning, and home or a spool later.
 *
 * @param points by time
 * @param fullTick when the accumulator filled; {@code Ticks.NEVER} if it did not
 */
record LevelTrace(List<Point> points, long fullTick) {
    private static final double ROUNDING_M = 1e-3;

    LevelTrace {
        points = List.copyOf(points);
    }

    static LevelTrace of(Swap swap, Line line) {
        double roomM = line.accumulator().roomM();
        double mPerS = swap.product().filament().speedMPerS(line.rateKgPerH(swap.product())) / line.strands();
        long fullTick = swap.overflow().isPresent() ? filled(swap, roomM, mPerS) : Ticks.NEVER;
        List<Point> points = new ArrayList<>();
        points.add(new Point(swap.fullTick(), swap.fullLevelM()));
        if (fullTick <= swap.begunTick() && fullTick != Ticks.NEVER) {
            points.add(new Point(fullTick, roomM));
        }
        if (swap.begunTick() != Ticks.NEVER) {
            points.add(new Point(swap.begunTick(), swap.begunLevelM()));
        }
        if (fullTick > swap.begunTick() && fullTick != Ticks.NEVER) {
            points.add(new Point(fullTick, roomM));
        }
        if (swap.turnedTick() != Ticks.NEVER) {
            points.add(new Point(swap.turnedTick(), swap.peakLevelM()));
            points.add(drained(swap, line, mPerS));
        }
        return new LevelTrace(points, fullTick);
    }

    /** Where the slope changed on the way, the instant is that of the last known slope. */
    private static long filled(Swap swap, double roomM, double mPerS) {
        boolean isFullAtBegin = swap.begunTick() == Ticks.NEVER || swap.begunLevelM() >= roomM - ROUNDING_M;
        double fromM = isFullAtBegin ? swap.fullLevelM() : swap.begunLevelM();
        long from = isFullAtBegin ? swap.fullTick() : swap.begunTick();
        double slope = isFullAtBegin ? mPerS : swap.begunMPerS();
        return slope > 0 ? from + Ticks.ofSeconds(Math.max(0, roomM - fromM) / slope) : from;
    }

    private static Point drained(Swap swap, Line line, double mPerS) {
        double catchUp = line.winder().maxSpeedMPerS() - mPerS;
        double spoolS = swap.product().filament().lengthM(swap.product().spoolKg())
                / line.winder().maxSpeedMPerS();
        double homeS = catchUp > 0 ? swap.peakLevelM() / catchUp : Double.POSITIVE_INFINITY;
        double seconds = Math.min(homeS, spoolS);
        return new Point(
                swap.turnedTick() + Ticks.ofSeconds(seconds), Math.max(0, swap.peakLevelM() - catchUp * seconds));
    }

    /** A level at an instant. */
    record Point(long tick, double levelM) {}
}
