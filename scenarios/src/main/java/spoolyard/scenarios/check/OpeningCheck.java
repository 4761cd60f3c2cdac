package spoolyard.scenarios.check;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.FinishingStation;
import spoolyard.core.plant.OpeningSpools;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.TaskKind;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** Checks what stands in racks at the start: room, spools ordered, and ages that something looks at. */
final class OpeningCheck {
    private final Plant plant;
    private final Node.Mapping tree;
    private final Reading reading;
    private final Map<String, Order> orders = new HashMap<>();
    private final Map<String, Integer> standing = new HashMap<>();

    OpeningCheck(Plant plant, Node.Mapping tree, Reading reading) {
        this.plant = plant;
        this.tree = tree;
        this.reading = reading;
        plant.book().orders().forEach(order -> orders.put(order.id(), order));
    }

    void run() {
        Finishing finishing = plant.finishing();
        int sealing = finishing.quality().exposure().isPresent() ? finishing.firstOf(TaskKind.SEALING) : -1;
        for (int i = 0; i < finishing.stations().size(); i++) {
            FinishingStation station = finishing.stations().get(i);
            List<OpeningSpools> own = finishing.opening().stream()
                    .filter(some -> some.station().equals(station.name()))
                    .toList();
            checkRoom(station, own);
            for (int entry = 0; entry < own.size(); entry++) {
                Node node = Trees.at(tree, "finishing", station.name(), "opening");
                check(own.get(entry), ((Node.Sequence) node).items().get(entry), i <= sealing);
            }
        }
    }

    private void checkRoom(FinishingStation station, List<OpeningSpools> own) {
        long spools = own.stream().mapToLong(OpeningSpools::spools).sum();
        if (spools > station.waitingPlaces()) {
            reading.fault(
                    FaultKind.CONTRADICTION,
                    Trees.at(tree, "finishing", station.name(), "rack"),
                    "Must have room for the " + spools + " spools that stand in it at the start.",
                    "take spools out of opening, or enlarge the rack");
        }
    }

    private void check(OpeningSpools some, Node node, boolean isWatched) {
        if (some.ageS() > 0 && !isWatched) {
            reading.fault(
                    FaultKind.CONTRADICTION,
                    Trees.at(node, "age"),
                    "Must not be given: no exposure clock runs for spools in this rack.",
                    "delete it, or give exposure and a station of kind sealing after it");
        }
        some.order().ifPresent(id -> {
            int before = standing.merge(id, some.spools(), Integer::sum);
            Order order = orders.get(id);
            if (before > order.spools()) {
                reading.fault(
                        FaultKind.CONTRADICTION,
                        Trees.at(node, "spools"),
                        "Must be at most the spools ordered; of " + id + " " + before + " stand in racks, "
                                + order.spools() + " are ordered.",
                        "correct the number; spools beyond the order go without one: {spool: MASS, spools: COUNT}");
            }
        });
    }
}
