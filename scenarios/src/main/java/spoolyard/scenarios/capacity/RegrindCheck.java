package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Regrind;
import spoolyard.scenarios.fault.Warning;

/** Finds regrind that the trade does not use, or that has nowhere to go. */
final class RegrindCheck {
    /** Limit of moulders, per cent: 20 to 25 (resin makers' processing guides, from memory). */
    private static final double MOST_SHARE = 0.25;

    /** Left out of regrind: common practice, no source. */
    private static final String SENSITIVE = "(PA|PC|TPU)[0-9]*";

    /** Class of dark colours, in which shades of other colours don't show. */
    private static final int DARK = 4;

    private final Plant plant;
    private final CapacityWarnings.Origins origins;
    private final List<Warning> warnings = new ArrayList<>();

    RegrindCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    List<Warning> warnings() {
        plant.materials().regrind().ifPresent(this::check);
        return warnings;
    }

    private void check(Regrind regrind) {
        if (regrind.share() > MOST_SHARE) {
            add(
                    "share",
                    "%.0f %% of regrind is more than the 20 to 25 %% that moulders allow themselves.",
                    100 * regrind.share());
        }
        regrind.polymers().forEach(polymer -> checkPolymer(polymer, regrind));
        products()
                .filter(regrind::isTakenBy)
                .map(Product::colour)
                .filter(colour -> colour.shadeClass() < DARK)
                .map(Colour::code)
                .distinct()
                .forEach(code -> add("into", "%s is no dark colour: shades of what is ground may show in it.", code));
    }

    private void checkPolymer(String polymer, Regrind regrind) {
        boolean isTaken = products()
                .filter(product -> product.polymer().code().equals(polymer))
                .anyMatch(regrind::isTakenBy);
        if (polymer.matches(SENSITIVE)) {
            add("polymers", "%s is usually not ground: it takes up water, or its chains break.", polymer);
        }
        if (!isTaken) {
            add("polymers", "no order for %s takes regrind; it fills the store.", polymer);
        }
    }

    private Stream<Product> products() {
        return plant.book().orders().stream().map(Order::product);
    }

    private void add(String key, String form, Object... values) {
        warnings.add(new Warning(
                Warning.Kind.REGRIND_UNUSUAL,
                origins.of("materials", "regrind", key),
                String.format(Locale.ROOT, form, values)));
    }
}
