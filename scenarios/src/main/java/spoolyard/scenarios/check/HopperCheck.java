package spoolyard.scenarios.check;

import java.util.Locale;
import java.util.Optional;
import spoolyard.core.plant.DryingRoom;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.MaterialSupply;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** Refuses dryers that hold nothing while a batch is loaded: no rate is slow enough for them to dry anything. */
final class HopperCheck {
    private final Plant plant;
    private final Node.Mapping tree;
    private final Reading reading;

    HopperCheck(Plant plant, Node.Mapping tree, Reading reading) {
        this.plant = plant;
        this.tree = tree;
        this.reading = reading;
    }

    void run() {
        plant.lines().forEach(line -> line.supply().ifPresent(supply -> check(line, supply)));
    }

    private void check(Line line, MaterialSupply supply) {
        Optional<Polymer> dried = plant.book().orders().stream()
                .filter(order -> order.lines().contains(line.name()))
                .map(Order::product)
                .map(product -> product.polymer())
                .filter(polymer -> polymer.dryingS() > 0)
                .findFirst();
        DryingRoom room = plant.drying();
        boolean usesWheels = room.mobileDryers() > 0 && room.looksAhead();
        dried.ifPresent(polymer -> {
            if (supply.batchKg() >= supply.hopperKg()) {
                refuse(line, polymer, "the hopper", "enlarge the hopper");
            } else if (usesWheels && supply.batchKg() >= room.mobileKg()) {
                refuse(line, polymer, "mobile_hopper", "enlarge mobile_hopper of the part drying");
            }
        });
    }

    private void refuse(Line line, Polymer polymer, String dryer, String orElse) {
        String allowed = String.format(
                Locale.ROOT,
                "Must be less than %s: %s dries %.1f h in what is left there while a batch is loaded.",
                dryer,
                polymer.code(),
                polymer.dryingS() / 3600);
        reading.fault(
                FaultKind.CONTRADICTION,
                Trees.at(tree, "lines", line.name(), "material", "batch"),
                allowed,
                "load less at a time, or " + orElse);
    }
}
