package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import java.util.function.Predicate;
import spoolyard.analysis.sequence.InfeasibleBookException;
import spoolyard.analysis.sequence.Job;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.quantity.Ticks;

/** Makes the jobs of a sequencing problem from the orders of a plant. */
final class JobMaker {
    private static final double S_PER_H = 3600;

    private final Plant plant;
    private final Weights weights;
    private final List<LineTimes> times;
    private final Experience experience;

    JobMaker(Plant plant, Weights weights, List<LineTimes> times, Experience experience) {
        this.plant = plant;
        this.weights = weights;
        this.times = times;
        this.experience = experience;
    }

    /**
     * An order as a job.
     *
     * @param number its place in the book
     * @param product number of its product
     * @throws InfeasibleBookException if no line can make it; says why
     */
    Job job(int number, int product) {
        Order order = plant.book().orders().get(number);
        List<Double> runS = new ArrayList<>();
        for (int line = 0; line < times.size(); line++) {
            runS.add(runS(order, line));
        }
        if (runS.stream().allMatch(run -> run == Double.POSITIVE_INFINITY)) {
            throw new InfeasibleBookException(noLine(order));
        }
        return new Job(
                order.id(),
                product,
                Math.max(Ticks.toSeconds(order.releaseTick()), experience.readyS(number)),
                Ticks.toSeconds(order.dueTick()) - weights.reserveH() * S_PER_H,
                weights.latePerS(order.spools(), order.weight()),
                runS);
    }

    private double runS(Order order, int line) {
        Line each = plant.lines().get(line);
        if (!order.lines().contains(each.name()) || !each.canMake(order.product())) {
            return Double.POSITIVE_INFINITY;
        }
        String polymer = order.product().polymer().code();
        return times.get(line).runS(order) * experience.stretch(each.name(), polymer);
    }

    /** Says which of its wishes no line can meet. */
    private String noLine(Order order) {
        Product product = order.product();
        List<String> polymer =
                names(line -> line.polymers().contains(product.polymer().code()));
        List<String> diameter = names(line -> line.diametersMm().contains(product.diameterMm()));
        return "Order " + order.id() + " (" + product.label() + ") can be made on no line: "
                + product.polymer().code() + " runs on " + shown(polymer) + ", " + product.diameterMm() + " mm on "
                + shown(diameter)
                + (order.lines().isEmpty() ? "" : ", and it may run on " + shown(order.lines())) + ".";
    }

    private List<String> names(Predicate<Line> which) {
        return plant.lines().stream().filter(which).map(Line::name).toList();
    }

    private static String shown(List<String> names) {
        return names.isEmpty() ? "no line" : String.join(", ", names);
    }
}
