package spoolyard.core.random;

import spoolyard.core.quantity.Ticks;

/** A law with the stream it is drawn from. Belongs to one run and one thread. */
@FunctionalInterface
public interface Variate {
    /**
     * Draws.
     *
     * @return the next value, {@code >= 0}, in the unit of the law; it can be infinite for laws of very heavy tail
     */
    double next();

    /**
     * Draws from a law in seconds, to the nearest tick.
     *
     * @return whole ticks, {@code 0 ..} {@link Ticks#NEVER}
     */
    default long nextTicks() {
        return Ticks.ofSeconds(next());
    }
}
