package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.ListKind;
import spoolyard.scenarios.field.MappingKind;
import spoolyard.scenarios.field.MappingReader;
import spoolyard.scenarios.field.Numbers;
import spoolyard.scenarios.field.Words;

/** The key {@code opening} of a station: what stands in its rack at the start, by order or by mass and polymer. */
final class OpeningKind {
    private static final double ANY_KG = 1;

    private final Map<String, Order> orders;
    private final Kind<String> order;
    private final Map<String, Polymer> polymers;

    /** If the orders are not whole, some could not be read, and an unknown id is no fault of its own. */
    OpeningKind(Map<String, Order> orders, boolean areWhole, Map<String, Polymer> polymers) {
        this.orders = orders;
        this.order = areWhole ? Words.name("order", orders.keySet()) : Words.text();
        this.polymers = polymers;
    }

    Kind<List<OpeningSpools>> of(String station) {
        return ListKind.of(new MappingKind<>("opening", r -> read(station, r)));
    }

    private OpeningSpools read(String station, MappingReader r) {
        Optional<String> id = r.optional("order", order);
        int spools = r.required("spools", Numbers.whole(1, 10_000_000));
        double ageS = r.optional("age", Amounts.AGE, 0.0);
        if (id.isPresent()) {
            refuse(r, "spool");
            refuse(r, "polymer");
            Optional<Product> product = id.map(orders::get).map(Order::product);
            return new OpeningSpools(
                    station,
                    id,
                    product.map(Product::spoolKg).orElse(ANY_KG),
                    product.map(Product::polymer),
                    spools,
                    ageS);
        }
        double spoolKg = r.required("spool", Amounts.SPOOL_MASS);
        Optional<Polymer> polymer = r.optional("polymer", Words.name("polymer", List.copyOf(polymers.keySet())))
                .map(polymers::get);
        return new OpeningSpools(station, id, spoolKg, polymer, spools, ageS);
    }

    private static void refuse(MappingReader r, String key) {
        r.raw(key).ifPresent(node -> r.reading()
                .fault(
                        FaultKind.CONTRADICTION,
                        node,
                        "Must not be given beside order: the order says what is on the spools.",
                        "delete one of the two"));
    }
}
