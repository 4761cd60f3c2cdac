package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import picocli.CommandLine.Option;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.InfeasibleBookException;
import spoolyard.core.plant.Plant;

/** What is planned around: the reserve before due dates, and orders that stay where they are. */
final class BookOptions {
    private static final double MOST_RESERVE_H = 10_000;

    @Option(
            names = "--reserve",
            paramLabel = "HOURS",
            defaultValue = "24",
            description = "Time kept between made and due, for stops, sealing and packing. Default: ${DEFAULT-VALUE}.")
    private double reserveH;

    @Option(
            names = "--freeze",
            paramLabel = "LINE=ORDER,...",
            description = "Orders that a line makes first, as they stand; may be given again for another line.")
    private List<String> freezes = new ArrayList<>();

    /**
     * Checks the numbers.
     *
     * @throws InputException if one is out of range
     */
    void check() throws InputException {
        Requirements.within("--reserve", reserveH, 0, MOST_RESERVE_H);
    }

    /**
     * Time between made and due.
     *
     * @return hours
     */
    double reserveH() {
        return reserveH;
    }

    /**
     * The order book of a plant.
     *
     * @param plant the plant
     * @param weights what its plans are judged by
     * @param scenario where it was read from
     * @return the book
     * @throws InputException if there is no order, or no plan is possible
     */
    PlantBook book(Plant plant, Weights weights, ScenarioArgument scenario) throws InputException {
        if (plant.book().orders().isEmpty()) {
            throw new InputException(
                    scenario.path().toString(),
                    "Has no orders. Must have at least one.",
                    "add orders to its orders file");
        }
        try {
            return PlantBook.of(plant, weights, frozen(plant));
        } catch (InfeasibleBookException conflict) {
            throw new InputException(
                    "No plan is possible", conflict.getMessage(), "change the order, the line or what is frozen");
        }
    }

    /**
     * What is frozen.
     *
     * @param plant the plant
     * @return order ids by line
     * @throws InputException if a line is not there
     */
    Map<String, List<String>> frozen(Plant plant) throws InputException {
        Map<String, List<String>> frozen = new LinkedHashMap<>();
        for (String freeze : freezes) {
            String[] parts = freeze.split("=", 2);
            boolean isKnown =
                    plant.lines().stream().anyMatch(line -> line.name().equals(parts[0]));
            if (parts.length < 2 || !isKnown) {
                throw new InputException(
                        "--freeze = " + freeze,
                        "Must be a line of this plant, an equals sign and orders.",
                        "write for example --freeze L3=SO-1,SO-2");
            }
            frozen.computeIfAbsent(parts[0], line -> new ArrayList<>()).addAll(List.of(parts[1].split(",")));
        }
        return frozen;
    }
}
