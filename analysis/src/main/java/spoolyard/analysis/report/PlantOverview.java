package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Shift;
import spoolyard.scenarios.capacity.CapacitySummary;

/** A plant on one screen before it is simulated: what there is, and load against capacity. */
public final class PlantOverview {
    private final Setting setting;
    private final Ink ink;

    /**
     * Prepares to write.
     *
     * @param setting the plant
     * @param ink what the screen can show
     */
    public PlantOverview(Setting setting, Ink ink) {
        this.setting = setting;
        this.ink = ink;
    }

    /**
     * The overview.
     *
     * @param warnings what to beware of, a sentence or two each
     * @return lines without line breaks
     */
    public List<String> lines(List<String> warnings) {
        Plant plant = setting.plant();
        List<String> lines = new ArrayList<>();
        lines.add(ink.strong(Cell.clipped(plant.name(), 56)) + ", "
                + setting.clock().minute(0) + " to " + setting.clock().minute(plant.horizonTicks()));
        lines.add(inventory(plant));
        lines.add("");
        lines.addAll(new CapacityTables(CapacitySummary.of(plant), ink).lines());
        lines.add("");
        if (warnings.isEmpty()) {
            lines.add("No faults, no warnings.");
        } else {
            lines.add(ink.strong("No faults, " + counted(warnings.size(), "warning") + ":"));
            warnings.forEach(warning -> lines.addAll(wrapped(warning)));
        }
        return lines;
    }

    private static String inventory(Plant plant) {
        List<Order> orders = plant.book().orders();
        long spools = orders.stream().mapToLong(Order::spools).sum();
        double kg = orders.stream()
                .mapToDouble(order -> order.spools() * order.product().spoolKg())
                .sum();
        String names =
                plant.shifts().stream().map(Shift::name).distinct().limit(6).collect(Collectors.joining(", "));
        return counted(plant.lines().size(), "line") + "; "
                + counted(plant.shifts().size(), "shift") + " (" + names
                + "); " + counted(orders.size(), "order") + ", " + Figures.shown(spools, 0) + " spools, "
                + Figures.shown(kg, 0) + " kg";
    }

    private static String counted(int number, String noun) {
        return number + " " + noun + (number == 1 ? "" : "s");
    }

    private static List<String> wrapped(String warning) {
        List<String> lines = new ArrayList<>();
        StringBuilder line = new StringBuilder("-");
        for (String word : warning.split(" ")) {
            if (line.length() + 1 + word.length() > TextReport.MOST_COLUMNS) {
                lines.add(line.toString());
                line = new StringBuilder(" ");
            }
            line.append(' ').append(word);
        }
        lines.add(line.toString());
        return lines;
    }
}
