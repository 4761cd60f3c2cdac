package spoolyard.core.plant;

import java.util.List;

/**
 * An order for spools of one product. Immutable.
 *
 * @param id name used in files, unique in the book
 * @param product what is ordered
 * @param spools good spools wanted, {@code >= 1}
 * @param releaseTick earliest start, in ticks since the start of the run; may be negative
 * @param dueTick latest completion that is on time, in ticks since the start of the run
 * @param priority 1 is served first; ties go by due date
 * @param weight relative penalty of lateness, {@code > 0}
 * @param lines names of the lines that can and may make it, in plant order; empty: it is never begun
 */
public record Order(
        String id,
        Product product,
        int spools,
        long releaseTick,
        long dueTick,
        int priority,
        double weight,
        List<String> lines) {
    /** Copies the list. */
    public Order {
        lines = List.copyOf(lines);
    }
}
