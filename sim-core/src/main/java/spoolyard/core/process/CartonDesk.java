package spoolyard.core.process;

import java.util.LinkedHashMap;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.StockItem.Kind;

/** Opens cartons for the packers: a spool is packed only if it fits into an open carton or there is another one. */
final class CartonDesk {
    private final Stores stores;
    private final Finishing finishing;
    private final Map<Integer, Long> packedOfOrder = new LinkedHashMap<>();
    private final Map<Double, Long> packedOfNone = new LinkedHashMap<>();

    CartonDesk(Stores stores, Finishing finishing) {
        this.stores = stores;
        this.finishing = finishing;
    }

    boolean hasFor(Spool spool) {
        return !opensNew(spool) || cartons(spool).filter(Stock::isOut).isEmpty();
    }

    private boolean opensNew(Spool spool) {
        return packed(spool) % finishing.cartonOf(spool.sizeKg) == 0;
    }

    private long packed(Spool spool) {
        return spool.order == Spool.NONE
                ? packedOfNone.getOrDefault(spool.sizeKg, 0L)
                : packedOfOrder.getOrDefault(spool.order, 0L);
    }

    private Optional<Stock> cartons(Spool spool) {
        return stores.sized(Kind.CARTONS, spool.sizeKg);
    }

    /** A spool goes to a packer. */
    void admitted(Spool spool) {
        if (opensNew(spool)) {
            cartons(spool).ifPresent(stock -> stock.take(1));
        }
        if (spool.order == Spool.NONE) {
            packedOfNone.merge(spool.sizeKg, 1L, Long::sum);
        } else {
            packedOfOrder.merge(spool.order, 1L, Long::sum);
        }
    }
}
