package spoolyard.core.process;

import spoolyard.core.quantity.Ticks;

/** Mean and lowest level of a stock, and the time without it. */
final class StockClock {
    private final World world;
    private double area;
    private double lowest;
    private double lineWaitS;
    private long outTicks;
    private long timesOut;
    private boolean out;
    private long last;

    StockClock(World world, double opening) {
        this.world = world;
        this.lowest = opening;
    }

    /**
     * Books the time since it was last asked.
     *
     * @param level the level then
     * @param perS what was drawn since
     * @param standing lines that stood for want of it since
     * @return the time, seconds
     */
    double advance(double level, double perS, int standing) {
        long ticks = world.now() - last;
        if (ticks == 0) {
            return 0;
        }
        last = world.now();
        double seconds = Ticks.toSeconds(ticks);
        area += (level - perS * seconds / 2) * seconds;
        lineWaitS += standing * seconds;
        outTicks += out ? ticks : 0;
        lowest = Math.min(lowest, level - perS * seconds);
        return seconds;
    }

    /** From now on this is the level, and whether there is nothing to take. */
    void shows(double level, boolean isOut) {
        lowest = Math.min(lowest, level);
        timesOut += isOut && !out ? 1 : 0;
        out = isOut;
    }

    boolean isOut() {
        return out;
    }

    double mean(double levelNow) {
        return last == 0 ? levelNow : area / Ticks.toSeconds(last);
    }

    /** The lowest level; what is but a rounding of the clock is nothing. */
    double lowest() {
        return Math.abs(lowest) < Stock.SLACK ? 0 : lowest;
    }

    double outS() {
        return Ticks.toSeconds(outTicks);
    }

    long timesOut() {
        return timesOut;
    }

    double lineWaitS() {
        return lineWaitS;
    }
}
