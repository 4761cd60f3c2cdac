package spoolyard.scenarios.check;

import java.time.LocalDateTime;
import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Materials;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.StockItem.Delivery;
import spoolyard.core.plant.StockItem.Reorder;
import spoolyard.scenarios.calendar.PlantClock;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.NamedKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.field.Times;
import spoolyard.scenarios.field.Words;
import spoolyard.scenarios.read.Node;

/** The part {@code materials}: what is in store at the start, and what comes. */
final class MaterialsSection {
    private static final Map<String, Materials.WhenShort> WHEN_SHORT = whenShort();

    private final PlantNames names;
    private final Products products;
    private final PlantClock clock;

    MaterialsSection(PlantNames names, Products products, PlantClock clock) {
        this.names = names;
        this.products = products;
        this.clock = clock;
    }

    private static Map<String, Materials.WhenShort> whenShort() {
        Map<String, Materials.WhenShort> words = new LinkedHashMap<>();
        words.put("another order", Materials.WhenShort.ANOTHER_ORDER);
        words.put("wait", Materials.WhenShort.WAIT);
        return words;
    }

    Kind<Materials> kind() {
        return new MappingKind<>("materials", this::materials);
    }

    private Materials materials(MappingReader r) {
        List<String> colours = List.copyOf(products.colours().keySet());
        StockKind resin = new StockKind(StockAmount.RESIN);
        StockKind concentrate = new StockKind(StockAmount.CONCENTRATE);
        Kind<Map<String, StockItem>> ofColours = products.isComplete()
                ? new RatesKind<>("colour", colours, false, concentrate)
                : new NamedKind<>(name -> concentrate);
        List<StockItem> stocks = new ArrayList<>();
        named(r.optional("resin", new RatesKind<>("polymer", names.polymers(), false, resin), Map.of()), stocks);
        named(r.optional("concentrate", ofColours, Map.of()), stocks);
        stocks.addAll(r.optional("spools", new SizedStocksKind(new StockKind(StockAmount.SPOOLS)), List.of()));
        stocks.addAll(r.optional("cartons", new SizedStocksKind(new StockKind(StockAmount.CARTONS)), List.of()));
        return new Materials(
                stocks,
                r.optional("when_short", Words.oneOf(WHEN_SHORT), Materials.WhenShort.ANOTHER_ORDER),
                r.optional("regrind", new RegrindKind(names, products).kind()));
    }

    private static void named(Map<String, StockItem> byName, List<StockItem> stocks) {
        byName.forEach((name, item) -> stocks.add(
                new StockItem(item.kind(), name, Optional.empty(), item.opening(), item.deliveries(), item.reorder())));
    }

    /** One article; its name is put in by whoever reads the names. */
    private final class StockKind implements Kind<StockItem> {
        private final StockAmount amount;
        private final Kind<StockItem> mapping;

        StockKind(StockAmount amount) {
            this.amount = amount;
            this.mapping = new MappingKind<>(amount.prefix() + "stock", this::item);
        }

        @Override
        public StockItem read(Node node, Reading reading) {
            return mapping.read(node, reading);
        }

        @Override
        public StockItem standIn() {
            return mapping.standIn();
        }

        private StockItem item(MappingReader r) {
            Kind<Delivery> delivery = new MappingKind<>(amount.prefix() + "delivery", this::delivery);
            Kind<Reorder> reorder = new MappingKind<>(amount.prefix() + "reorder", this::reorder);
            List<Delivery> deliveries =
                    r.optional("deliveries", new NamedKind<>(name -> delivery), Map.of()).values().stream()
                            .sorted(Comparator.comparingLong(Delivery::tick))
                            .toList();
            return new StockItem(
                    amount.kind(),
                    "",
                    Optional.empty(),
                    r.required("opening", amount.orUnlimited()),
                    deliveries,
                    r.optional("reorder", reorder));
        }

        private Delivery delivery(MappingReader r) {
            LocalDateTime at = r.required("at", Times.dateTime());
            boolean isBefore = at.isBefore(clock.start().toLocalDateTime());
            r.raw("at").filter(node -> isBefore).ifPresent(node -> r.reading()
                    .fault(
                            FaultKind.OUT_OF_RANGE,
                            node,
                            "Must not be before the start of the run.",
                            "add what has come by then to the opening stock"));
            return new Delivery(isBefore ? 0 : clock.tick(at), r.required("amount", amount.some()));
        }

        private Reorder reorder(MappingReader r) {
            return new Reorder(
                    r.required("at", amount.any()),
                    r.required("order", amount.some()),
                    r.required("lead_time", Amounts.WORK),
                    r.optional("safety_stock", amount.any(), 0.0));
        }
    }
}
