package spoolyard.scenarios.capacity;

import java.util.ArrayList;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Set;
import java.util.stream.Stream;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.Warning;

/** Finds hoppers that have nothing to dry, and drying times and dryers on wheels that no line makes use of. */
final class DryingInVain {
    private final Plant plant;
    private final CapacityWarnings.Origins origins;
    private final List<Warning> warnings = new ArrayList<>();

    DryingInVain(Plant plant, CapacityWarnings.Origins origins) {
        this.plant = plant;
        this.origins = origins;
    }

    List<Warning> warnings() {
        boolean isFed = plant.lines().stream().anyMatch(line -> line.supply().isPresent());
        if (!isFed && !plant.drying().equals(DryingRoom.NONE)) {
            add("the part drying has no effect: no line has a material.", "drying");
        }
        Set<Polymer> driedSomewhere = new LinkedHashSet<>();
        for (Line line : plant.lines()) {
            List<Polymer> dried =
                    polymers(line).filter(polymer -> polymer.dryingS() > 0).toList();
            if (line.supply().isPresent()) {
                driedSomewhere.addAll(dried);
                warnOfIdleHopper(line, dried);
            }
        }
        plant.lines().stream()
                .flatMap(this::polymers)
                .filter(polymer -> polymer.dryingS() > 0 && !driedSomewhere.contains(polymer))
                .distinct()
                .forEach(this::warnOfUnreadTime);
        return warnings;
    }

    /** Of the orders that a line can make. */
    private Stream<Polymer> polymers(Line line) {
        return plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(Order::product)
                .map(product -> product.polymer());
    }

    private void warnOfIdleHopper(Line line, List<Polymer> dried) {
        if (dried.isEmpty()) {
            String text =
                    "line " + line.name() + " has nothing to dry: no polymer ordered of it has a drying time; only"
                            + " loading and cleaning count.";
            add(text, "lines", line.name(), "material");
        }
    }

    private void warnOfUnreadTime(Polymer polymer) {
        String code = polymer.code();
        add(
                "the drying of " + code + " has no effect: no line that makes it has a material.",
                "polymers",
                code,
                "drying");
    }

    private void add(String message, String... path) {
        warnings.add(new Warning(Warning.Kind.DRYING_IN_VAIN, origins.of(path), message));
    }
}
