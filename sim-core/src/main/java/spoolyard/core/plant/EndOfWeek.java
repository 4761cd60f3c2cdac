package spoolyard.core.plant;

import java.util.List;
import spoolyard.core.quantity.Ticks;

/**
 * Purge with compound before a line stands long, so that its screw is clean meanwhile. Immutable. What is made next starts from
 * the clean colour, be it the colour made before.
 *
 * @param standsS shortest stop before which it is done, seconds, {@code > 0}
 * @param holdUps compound that is run through, melt volumes, {@code >= 0}
 * @param durationS time once the crew is there, seconds
 * @param crew who does it
 * @param clean what the screw counts as holding afterwards, such as natural; the polymer stays
 */
public record EndOfWeek(double standsS, double holdUps, Law durationS, CrewNeed crew, Colour clean) {
    /**
     * Whether it is done at the end of a working period: the line then stands long enough before the next period, or, where
     * there is none, before the end of the horizon.
     *
     * @param periods working periods of a line, by start
     * @param period number of one, from 0
     * @param horizonTick end of the run
     * @return true if so
     */
    public boolean comesAfter(List<Window> periods, int period, long horizonTick) {
        long endTick = periods.get(period).endTick();
        long nextTick = period + 1 < periods.size() ? periods.get(period + 1).startTick() : horizonTick;
        return nextTick - endTick >= Ticks.ofSeconds(standsS);
    }

    /**
     * Whether a screw is dirty.
     *
     * @param held what it holds
     * @return false if it holds the clean colour
     */
    public boolean isFor(Product held) {
        return !held.colour().code().equals(clean.code());
    }

    /**
     * What a screw holds afterwards.
     *
     * @param held what it held before
     * @return the same in the clean colour
     */
    public Product cleaned(Product held) {
        return new Product(held.polymer(), clean, held.diameterMm(), held.spoolKg());
    }

    /**
     * Compound for a line.
     *
     * @param line the line
     * @return kg
     */
    public double compoundKg(Line line) {
        return holdUps * line.holdUpKg();
    }
}
