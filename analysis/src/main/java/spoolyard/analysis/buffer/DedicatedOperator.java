package spoolyard.analysis.buffer;

import java.util.ArrayList;
import java.util.List;
import spoolyard.analysis.theory.SwapOverflow;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.plant.Winder;

/**
 * What a line would lose with somebody always at hand and the accumulator home before each swap: the closed form of
 * {@link SwapOverflow}, averaged over the products ordered of the line by their spools. Immutable.
 *
 * @param swapTimeS law of the time the winder stands, seconds
 * @param homeM filament held at home, metres
 * @param parts the products
 */
public record DedicatedOperator(Law swapTimeS, double homeM, List<Part> parts) {
    /** Copies the list. */
    public DedicatedOperator {
        parts = List.copyOf(parts);
    }

    /**
     * Of a line with the orders it may make.
     *
     * @param plant the plant
     * @param line one of its lines
     * @return the closed form; without parts if nothing is ordered of the line
     */
    public static DedicatedOperator of(Plant plant, Line line) {
        List<Part> parts = new ArrayList<>();
        for (Order order : plant.book().orders()) {
            Product product = order.product();
            if (order.lines().contains(line.name())) {
                double speed = product.filament().speedMPerS(line.rateKgPerH(product)) / line.strands();
                parts.add(new Part(order.spools(), speed));
            }
        }
        return new DedicatedOperator(standing(line.winder()), line.accumulator().homeM(), parts);
    }

    private static Law standing(Winder winder) {
        return winder instanceof Winder.Manual manual
                ? manual.stopTimeS()
                : ((Winder.TwoPosition) winder).transferTimeS();
    }

    /**
     * Swaps in which the accumulator fills.
     *
     * @param capacityM capacity of the accumulator, metres, at least that at home
     * @return % of the swaps; not a number without parts
     */
    public double overflowPct(double capacityM) {
        double spools = parts.stream().mapToDouble(Part::spools).sum();
        double overflows = parts.stream()
                .mapToDouble(part ->
                        part.spools() * new SwapOverflow(swapTimeS, capacityM - homeM, part.mPerS()).probability())
                .sum();
        return 100 * overflows / spools;
    }

    /**
     * A product ordered.
     *
     * @param spools how many
     * @param mPerS speed of a strand with it, m/s
     */
    public record Part(double spools, double mPerS) {}
}
