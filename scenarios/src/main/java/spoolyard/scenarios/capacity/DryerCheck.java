package spoolyard.scenarios.capacity;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Stream;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.Warning;

/** Finds lines whose dryer gives less than they could extrude: content over drying time against what they draw from it. */
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
        Map<Polymer, Double> drawn = new LinkedHashMap<>();
        plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(Order::product)
                .forEach(product -> drawn.merge(
                        product.polymer(), line.rateKgPerH(product) * supply.driedShare(product), Math::max));
        return drawn.keySet().stream().flatMap(polymer -> ofPolymer(line, supply, polymer, drawn.get(polymer)));
    }

    private Stream<Warning> ofPolymer(Line line, MaterialSupply supply, Polymer polymer, double drawnKgPerH) {
        if (supply.driedKgPerH(supply.hopperKg(), polymer) < drawnKgPerH) {
            return Stream.of(warning(line, supply, polymer, drawnKgPerH, supply.hopperKg(), "the hopper"));
        }
        double mobileKg = plant.drying().mobileKg();
        return usesWheels(line, supply) && supply.driedKgPerH(mobileKg, polymer) < drawnKgPerH
                ? Stream.of(warning(line, supply, polymer, drawnKgPerH, mobileKg, "a dryer on wheels"))
                : Stream.empty();
    }

    /** Whether its next material may be prepared in a dryer on wheels: there is one, and it makes of several materials. */
    private boolean usesWheels(Line line, MaterialSupply supply) {
        return plant.drying().mobileDryers() > 0
                && plant.drying().looksAhead()
                && plant.book().orders().stream()
                                .filter(order -> order.lines().contains(line.name()))
                                .map(order -> supply.materialOf(order.product()))
                                .distinct()
                                .count()
                        > 1;
    }

    private Warning warning(
            Line line, MaterialSupply supply, Polymer polymer, double drawnKgPerH, double dryerKg, String where) {
        String text = String.format(
                Locale.ROOT,
                "line %s dries at most %.1f kg/h of %s: %.0f kg in %s for %.1f h; the line could draw %.1f kg/h.",
                line.name(),
                supply.driedKgPerH(dryerKg, polymer),
                polymer.code(),
                Math.max(0, dryerKg - supply.batchKg()),
                where,
                polymer.dryingS() / 3600,
                drawnKgPerH);
        return new Warning(Warning.Kind.DRYER_TOO_SMALL, origins.of("lines", line.name(), "material", "hopper"), text);
    }
}
