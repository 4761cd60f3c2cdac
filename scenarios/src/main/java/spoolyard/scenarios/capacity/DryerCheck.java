package spoolyard.scenarios.capacity;

import java.util.List;
import java.util.Locale;
import java.util.stream.Stream;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;
import spoolyard.scenarios.fault.Warning;

/** Finds lines whose dryer hopper gives less than they could extrude: content over drying time against rate. */
final class DryerCheck {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;

    DryerCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    List<Warning> warnings() {
        return plant.lines().stream()
                .flatMap(line -> line.supply().stream().flatMap(supply -> ofLine(line, supply)))
                .toList();
    }

    private Stream<Warning> ofLine(Line line, MaterialSupply supply) {
        return plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(Order::product)
                .filter(product -> limitKgPerH(supply, product) < line.rateKgPerH(product))
                .map(Product::polymer)
                .distinct()
                .map(polymer -> warning(line, supply, polymer));
    }

    private static double limitKgPerH(MaterialSupply supply, Product product) {
        return supply.limitKgPerH(supply.hopperKg(), product.polymer().dryingS());
    }

    private Warning warning(Line line, MaterialSupply supply, Polymer polymer) {
        double limit = supply.limitKgPerH(supply.hopperKg(), polymer.dryingS());
        String text = String.format(
                Locale.ROOT,
                "line %s dries at most %.1f kg/h of %s: %.0f kg in the hopper for %.1f h; the line could extrude %.1f kg/h.",
                line.name(),
                limit,
                polymer.code(),
                supply.hopperKg() - supply.batchKg(),
                polymer.dryingS() / 3600,
                line.nominalRateKgPerH() * polymer.rateFactor());
        return new Warning(Warning.Kind.DRYER_TOO_SMALL, origins.of("lines", line.name(), "material", "hopper"), text);
    }
}
