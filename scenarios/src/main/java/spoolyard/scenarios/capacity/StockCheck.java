package spoolyard.scenarios.capacity;

import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.fault.Warning;

/**
 * Finds stocks that the orders due in the run need more of than is there and comes, and reorder points below the mean
 * demand of a lead time and the safety stock. Net mass of the spools: scrap and purges come on top.
 */
final class StockCheck {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;

    StockCheck(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    List<Warning> warnings() {
        return plant.materials().stocks().stream()
                .flatMap(item -> item.reorder().isPresent()
                        ? reorder(item, item.reorder().get()).stream()
                        : size(item).stream())
                .toList();
    }

    private Optional<Warning> size(StockItem item) {
        double there = item.opening()
                + item.deliveries().stream()
                        .filter(delivery -> delivery.tick() < plant.horizonTicks())
                        .mapToDouble(StockItem.Delivery::amount)
                        .sum();
        double needed = needed(item);
        if (needed <= there) {
            return Optional.empty();
        }
        String unit = item.kind().unit();
        return Optional.of(warning(
                Warning.Kind.STOCK_TOO_SMALL,
                item,
                "the orders due in the run need %.0f %s of %s %s, scrap not counted; %.0f %s are there or come.",
                needed,
                unit,
                item.kind().label(),
                item.name(),
                there,
                unit));
    }

    private Optional<Warning> reorder(StockItem item, StockItem.Reorder rule) {
        double perS = needed(item) / Ticks.toSeconds(plant.horizonTicks());
        double leadTimeDemand = perS * rule.leadTimeS().mean();
        if (leadTimeDemand + rule.safetyStock() <= rule.point()) {
            return Optional.empty();
        }
        String unit = item.kind().unit();
        return Optional.of(warning(
                Warning.Kind.REORDER_TOO_LATE,
                item,
                "%s %s is ordered at %.0f %s; a lead time takes %.0f %s on average, and %.0f %s shall be left.",
                item.kind().label(),
                item.name(),
                rule.point(),
                unit,
                leadTimeDemand,
                unit,
                rule.safetyStock(),
                unit));
    }

    private Warning warning(Warning.Kind kind, StockItem item, String text, Object... values) {
        String part =
                switch (item.kind()) {
                    case RESIN -> "resin";
                    case CONCENTRATE -> "concentrate";
                    case SPOOLS -> "spools";
                    case CARTONS -> "cartons";
                    case REGRIND -> "regrind";
                };
        return new Warning(kind, origins.of("materials", part, item.name()), String.format(Locale.ROOT, text, values));
    }

    private double needed(StockItem item) {
        return plant.book().orders().stream()
                .filter(order -> order.dueTick() <= plant.horizonTicks())
                .mapToDouble(order -> needed(item, order))
                .sum();
    }

    private double needed(StockItem item, Order order) {
        Product product = order.product();
        double share = product.colour().concentrateShare();
        double kg = plant.toMake(order) * product.spoolKg();
        return switch (item.kind()) {
            case RESIN -> product.polymer().code().equals(item.name()) ? kg * (1 - share) : 0;
            case CONCENTRATE -> product.colour().code().equals(item.name()) ? kg * share : 0;
            case SPOOLS -> isFor(item, product) ? plant.toMake(order) : 0;
            case REGRIND -> 0;
            case CARTONS ->
                isFor(item, product)
                        ? Math.ceil(order.spools() / (double) plant.finishing().cartonOf(product.spoolKg()))
                        : 0;
        };
    }

    /** Of its size, or of any that no other article of its kind is for. */
    private boolean isFor(StockItem item, Product product) {
        if (item.spoolKg().isPresent()) {
            return item.spoolKg().get() == product.spoolKg();
        }
        return Stream.of(product.spoolKg()).noneMatch(kg -> plant.materials().stocks().stream()
                .filter(other -> other.kind() == item.kind())
                .anyMatch(other -> other.spoolKg().filter(kg::equals).isPresent()));
    }
}
