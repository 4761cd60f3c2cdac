package spoolyard.analysis.invest;

import java.util.function.BooleanSupplier;
import java.util.function.IntSupplier;

/**
 * Whether further runs may begin. Those that are there already may always be looked at, and no look is begun that would go
 * beyond the limit: so where it ends is the same on any machine unless time ends it.
 *
 * @param most runs in all, {@code >= 0}
 * @param done tells runs so far
 * @param hasTime asked before further runs
 */
record Allowance(int most, IntSupplier done, BooleanSupplier hasTime) {
    boolean allows(int more) {
        return more == 0 || more <= most - done.getAsInt() && hasTime.getAsBoolean();
    }
}
