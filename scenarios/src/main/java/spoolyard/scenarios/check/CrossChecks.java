package spoolyard.scenarios.check;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Finishing;
import spoolyard.core.plant.Finishing.CartonSize;
import spoolyard.core.plant.HeatUp;
import spoolyard.core.plant.Lab;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.StockItem;
import spoolyard.core.plant.TaskKind;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.field.Reading;
import spoolyard.scenarios.read.Node;

/** Checks that need the whole plant, run when every part of it is sound by itself. */
final class CrossChecks {
    private final Plant plant;
    private final Node.Mapping tree;
    private final Reading reading;

    CrossChecks(ReadPlant read, Node.Mapping tree, Reading reading) {
        this.plant = read.plant();
        this.tree = tree;
        this.reading = reading;
    }

    void run() {
        requirePart(plant.finishing().stations().isEmpty(), "finishing", "Must have at least one station.");
        requirePart(
                !plant.crew().roles().isEmpty() && plant.shifts().isEmpty(),
                "shifts",
                "Must put the crew to work at some time during the run.");
        requirePart(
                !plant.lines().isEmpty() && plant.book().orders().isEmpty(),
                "files",
                "Must name a file of orders with at least one row; the lines have nothing to make.");
        requirePart(
                plant.lines().isEmpty() && plant.finishing().inbound().isEmpty(),
                "lines",
                "Must have a line, or spools inbound from outside.");
        requireStations();
        requireCartons();
        plant.lines().stream()
                .filter(line -> line.startStop().heatUp() instanceof HeatUp.Zoned)
                .forEach(line -> refuseFlatHeat(line.name()));
        new HopperCheck(plant, tree, reading).run();
        new OpeningCheck(plant, tree, reading).run();
        SequenceCheck.run(plant.book(), tree, reading);
        new PurgeCheck(plant, Trees.at(tree, "changeover").origin(), reading).run();
    }

    /** What the heaters of a line draw must not be said twice. */
    private void refuseFlatHeat(String line) {
        Node own = Trees.at(tree, "energy", "lines", line);
        for (String key : Trees.keys(own)) {
            reading.fault(
                    FaultKind.CONTRADICTION,
                    Trees.at(own, key),
                    "Must not be given: the line is heated by zone.",
                    "delete it; its energy follows from its zones");
        }
    }

    private void requirePart(boolean isWrong, String part, String allowed) {
        if (isWrong) {
            Node node = Trees.at(tree, part);
            reading.missing(node.origin(), allowed, "complete the part " + part);
        }
    }

    /** Lab and exposure clock need the stations that they stand before. */
    private void requireStations() {
        Finishing finishing = plant.finishing();
        boolean isSealed = finishing.firstOf(TaskKind.SEALING) >= 0;
        boolean isPacked = finishing.firstOf(TaskKind.PACKING) >= 0;
        Optional<Lab.Hold> hold = finishing.quality().lab().map(Lab::hold);
        requirePart(
                hold.filter(Lab.Hold.BEFORE_SEALING::equals).isPresent() && !isSealed,
                "finishing",
                "Must have a station of kind sealing: the lab holds spools before it.");
        requirePart(
                hold.filter(Lab.Hold.BEFORE_PACKING::equals).isPresent() && !isPacked,
                "finishing",
                "Must have a station of kind packing: the lab holds spools before it.");
        requirePart(
                finishing.quality().exposure().isPresent() && !isSealed,
                "finishing",
                "Must have a station of kind sealing: it stops the exposure clock.");
        requirePart(
                storesCartons() && !isPacked,
                "finishing",
                "Must have a station of kind packing: it takes the cartons in store.");
    }

    private boolean storesCartons() {
        return plant.materials().stocks().stream().anyMatch(item -> item.kind() == StockItem.Kind.CARTONS);
    }

    /** If cartons are described at all, every ordered spool size must fit one. */
    private void requireCartons() {
        List<CartonSize> cartons = plant.finishing().cartons();
        if (cartons.isEmpty()) {
            return;
        }
        plant.book().orders().stream()
                .map(Order::product)
                .map(product -> product.spoolKg())
                .distinct()
                .filter(kg -> cartons.stream().noneMatch(carton -> carton.spoolKg() == kg))
                .forEach(kg -> reading.faults()
                        .add(new Fault(
                                FaultKind.MISSING_VALUE,
                                Trees.at(tree, "cartons").origin(),
                                "no carton for spools of " + kg + " kg",
                                "Must have an entry for every spool size that is ordered.",
                                "add {spool: " + kg + " kg, spools: COUNT}")));
    }
}
