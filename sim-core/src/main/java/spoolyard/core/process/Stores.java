package spoolyard.core.process;

import java.util.List;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Regrind;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.StockItem.Kind;
import spoolyard.core.record.RegrindResult;
import spoolyard.core.record.StockResult;

/** All that the plant has in store; what is not in it is always there. */
final class Stores {
    private final List<Stock> stocks;
    private final List<ScrapBin> bins;
    private final Optional<Regrind> regrind;
    private final double regrindShare;
    private final Materials.WhenShort whenShort;

    Stores(World world) {
        Materials materials = world.plant().materials();
        this.whenShort = materials.whenShort();
        this.regrind = materials.regrind();
        this.regrindShare = regrind.map(Regrind::share).orElse(0.0);
        this.bins = regrind.map(rule -> rule.polymers().stream()
                        .map(polymer -> new ScrapBin(rule, new Stock(world, regrindOf(polymer, rule))))
                        .toList())
                .orElse(List.of());
        this.stocks = Stream.concat(
                        materials.stocks().stream().map(item -> new Stock(world, item)),
                        bins.stream().map(ScrapBin::stock))
                .toList();
    }

    private static StockItem regrindOf(String polymer, Regrind rule) {
        double openingKg = rule.openingKg().getOrDefault(polymer, 0.0);
        return new StockItem(Kind.REGRIND, polymer, Optional.empty(), openingKg, List.of(), Optional.empty());
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

    /** Regrind for a product; empty if it takes none. */
    Optional<Stock> regrindFor(Product product) {
        return regrind.filter(rule -> rule.isTakenBy(product))
                .flatMap(rule -> named(Kind.REGRIND, product.polymer().code()));
    }

    /** Share of regrind in the natural part of a blend that takes it. */
    double regrindShare() {
        return regrindShare;
    }

    /** Where clean scrap of a product goes; empty if it is sold. */
    Optional<ScrapBin> binFor(Product product) {
        return regrind.filter(rule -> rule.isGivenBy(product)).flatMap(rule -> bins.stream()
                .filter(bin -> bin.polymer().equals(product.polymer().code()))
                .findFirst());
    }

    List<ScrapBin> bins() {
        return bins;
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

    List<RegrindResult> regrindResults() {
        return bins.stream().map(ScrapBin::result).toList();
    }
}
