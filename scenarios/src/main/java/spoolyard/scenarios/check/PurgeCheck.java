package spoolyard.scenarios.check;

import java.util.ArrayList;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.policy.PurgeTable;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Reading;

/** Finds changeovers that can occur on a line and for which neither a measured purge nor estimate or formula says how much. */
final class PurgeCheck {
    private static final int MOST_REPORTED = 20;

    private final Plant plant;
    private final PurgeTable purges;
    private final Origin origin;
    private final Reading reading;
    private final Map<String, List<String>> linesByPair = new LinkedHashMap<>();

    PurgeCheck(Plant plant, Origin origin, Reading reading) {
        this.plant = plant;
        this.purges = new PurgeTable(plant.changeovers());
        this.origin = origin;
        this.reading = reading;
    }

    void run() {
        plant.lines().forEach(this::check);
        linesByPair.entrySet().stream().limit(MOST_REPORTED).forEach(e -> report(e.getKey(), e.getValue()));
        int left = linesByPair.size() - MOST_REPORTED;
        if (left > 0) {
            report("and " + left + " more pairs", List.of());
        }
    }

    private void check(Line line) {
        Collection<Product> products = productsOn(line);
        for (Product from : withCleaned(products)) {
            products.stream().filter(to -> !isKnown(line, from, to)).forEach(to -> linesByPair
                    .computeIfAbsent(pair(from, to), pair -> new ArrayList<>())
                    .add(line.name()));
        }
    }

    /** With what the line holds after a purge at the end of a week. */
    private Collection<Product> withCleaned(Collection<Product> products) {
        Map<String, Product> byMelt = new LinkedHashMap<>();
        products.forEach(product -> byMelt.put(melt(product), product));
        plant.changeovers().endOfWeek().ifPresent(purge -> products.stream()
                .map(purge::cleaned)
                .forEach(clean -> byMelt.putIfAbsent(melt(clean), clean)));
        return byMelt.values();
    }

    /** One product of each polymer and colour that the line may get to make, or has on it. */
    private Collection<Product> productsOn(Line line) {
        Map<String, Product> byMelt = new LinkedHashMap<>();
        line.onLineNow().ifPresent(product -> byMelt.put(melt(product), product));
        plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .forEach(order -> byMelt.putIfAbsent(melt(order.product()), order.product()));
        return byMelt.values();
    }

    /** Purge compound cleans between two polymers; without it their pair must be known like any other. */
    private boolean isKnown(Line line, Product from, Product to) {
        boolean isCompounded = plant.changeovers().compoundHoldUps() > 0
                && !from.polymer().code().equals(to.polymer().code());
        return isCompounded || purges.purgeKg(line, from, to).isPresent();
    }

    private void report(String pair, List<String> lines) {
        reading.faults()
                .add(new Fault(
                        FaultKind.UNKNOWN_PURGE,
                        origin,
                        pair + (lines.isEmpty() ? "" : " on " + String.join(", ", lines)),
                        "Must have a row in the changeovers file, a purge_estimate, or a class step in purge_formula"
                                + " that covers it.",
                        "measure it and add a row, or add purge_estimate or the class step"));
    }

    private static String melt(Product product) {
        return product.polymer().code() + " " + product.colour().code();
    }

    private static String pair(Product from, Product to) {
        boolean onePolymer = from.polymer().code().equals(to.polymer().code());
        return melt(from) + " to " + (onePolymer ? to.colour().code() : melt(to));
    }
}
