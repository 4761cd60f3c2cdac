package spoolyard.core.plant;

import java.util.List;
import java.util.Optional;

/**
 * What the plant keeps in store for its lines and packers. Immutable. What isn't listed is always there.
 *
 * @param stocks one an article that may run out
 * @param whenShort what a line does whose order lacks something
 * @param regrind what becomes of clean scrap; empty: it is sold
 */
public record Materials(List<StockItem> stocks, WhenShort whenShort, Optional<Regrind> regrind) {
    /** Nothing ever runs out. */
    public static final Materials NONE = new Materials(List.of(), WhenShort.ANOTHER_ORDER, Optional.empty());

    /** What a line does whose order lacks something in store. */
    public enum WhenShort {
        /** It puts the order back and makes another one for which all is there; it waits if there is none. */
        ANOTHER_ORDER,
        /** It waits. */
        WAIT
    }

    /** Copies the list. */
    public Materials {
        stocks = List.copyOf(stocks);
    }
}
