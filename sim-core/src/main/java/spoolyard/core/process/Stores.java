package spoolyard.core.process;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.StockItem.Kind;
import spoolyard.core.record.StockResult;

/** All that the plant has in store; what is not in it is always there. */
final class Stores {
    private final List<Stock> stocks;
    private final Materials.WhenShort whenShort;

    Stores(World world) {
        Materials materials = world.plant().materials();
        this.whenShort = materials.whenShort();
        this.stocks =
                materials.stocks().stream().map(item -> new Stock(world, item)).toList();
    }

    void start(List<LineProcess> lines, Runnable packing) {
        stocks.forEach(stock -> stock.tell(lines, packing));
        stocks.forEach(Stock::start);
    }

    boolean isEmpty() {
        return stocks.isEmpty();
    }

    /** Whether a line whose order lacks something makes another one. */
    boolean letsExchange() {
        return !stocks.isEmpty() && whenShort == Materials.WhenShort.ANOTHER_ORDER;
    }

    List<Stock> stocks() {
        return stocks;
    }

    Optional<Stock> resin(String polymer) {
        return named(Kind.RESIN, polymer);
    }

    Optional<Stock> concentrate(String colour) {
        return named(Kind.CONCENTRATE, colour);
    }

    private Optional<Stock> named(Kind kind, String name) {
        for (Stock stock : stocks) {
            if (stock.item().kind() == kind && stock.item().name().equals(name)) {
                return Optional.of(stock);
            }
        }
        return Optional.empty();
    }

    /** Spools or cartons for a spool size; one that is for every size comes last. */
    Optional<Stock> sized(Kind kind, double spoolKg) {
        Optional<Stock> forAll = Optional.empty();
        for (Stock stock : stocks) {
            StockItem item = stock.item();
            if (item.kind() == kind && item.spoolKg().isEmpty()) {
                forAll = Optional.of(stock);
            } else if (item.kind() == kind && item.spoolKg().get() == spoolKg) {
                return Optional.of(stock);
            }
        }
        return forAll;
    }

    List<StockResult> results() {
        return stocks.stream().map(Stock::result).toList();
    }
}
