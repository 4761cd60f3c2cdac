package spoolyard.core.process;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.StockItem.Kind;

/** Opens cartons for the packers: a spool is packed only if it fits into an open carton or there is another one. */
final class CartonDesk {
    private final Stores stores;
    private final Finishing finishing;
    private final int[] roomOfOrder;
    private final Map<Double, Integer> roomOfNone = new LinkedHashMap<>();

    CartonDesk(Stores stores, Plant plant) {
        this.stores = stores;
        this.finishing = plant.finishing();
        this.roomOfOrder = new int[plant.book().orders().size()];
    }

    boolean hasFor(Spool spool) {
        return roomFor(spool) > 0
                || stores.sized(Kind.CARTONS, spool.sizeKg).filter(Stock::isOut).isEmpty();
    }

    /** Spools that still go into the open carton for a spool; 0 if none is open. */
    private int roomFor(Spool spool) {
        return spool.order == Spool.NONE ? roomOfNone.getOrDefault(spool.sizeKg, 0) : roomOfOrder[spool.order];
    }

    /** A spool goes to a packer. */
    void admitted(Spool spool) {
        int room = roomFor(spool);
        if (room == 0) {
            stores.sized(Kind.CARTONS, spool.sizeKg).ifPresent(stock -> stock.take(1));
            room = finishing.cartonOf(spool.sizeKg);
        }
        if (spool.order == Spool.NONE) {
            roomOfNone.put(spool.sizeKg, room - 1);
        } else {
            roomOfOrder[spool.order] = room - 1;
        }
    }
}
