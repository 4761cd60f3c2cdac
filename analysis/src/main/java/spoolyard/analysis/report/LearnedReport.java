package spoolyard.analysis.report;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.stream.IntStream;
import spoolyard.analysis.schedule.Experience;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;
import spoolyard.core.quantity.Ticks;

/**
 * What a plan's times owe to simulated runs, in two sentences. Immutable.
 *
 * @param experience what the runs taught
 * @param plant the plant
 * @param clock the plant's clock
 */
public record LearnedReport(Experience experience, Plant plant, PlantClock clock) {
    private static final int WIDTH = 98;
    private static final int MOST = 4;
    private static final double WORTH_TELLING = 0.05;

    /**
     * The sentences.
     *
     * @return lines without line breaks; none if nothing was learned that matters
     */
    public List<String> lines() {
        List<String> lines = new ArrayList<>();
        List<Factor> factors = factors();
        if (!factors.isEmpty()) {
            lines.addAll(told("Learned in simulation, how many times as long as reckoned orders take: "
                    + joined(factors.stream().map(Factor::text).toList())));
        }
        List<Integer> waiting = waiting();
        if (!waiting.isEmpty()) {
            lines.addAll(told("Not begun before their material is there: "
                    + joined(waiting.stream().map(this::ready).toList())));
        }
        if (!lines.isEmpty()) {
            lines.add("");
        }
        return lines;
    }

    private static List<String> told(String sentence) {
        return Wrapped.lines(sentence + ".", "", WIDTH);
    }

    private record Factor(String where, double factor) {
        double distance() {
            return Math.abs(Math.log(factor));
        }

        String text() {
            return where + " " + Figures.shown(factor, 2);
        }
    }

    private List<Factor> factors() {
        List<Factor> factors = new ArrayList<>();
        experience
                .stretch()
                .forEach((line, byPolymer) -> byPolymer.forEach(
                        (polymer, factor) -> factors.add(new Factor(polymer + " on " + line, factor))));
        return factors.stream()
                .filter(factor -> factor.distance() > WORTH_TELLING)
                .sorted(Comparator.comparingDouble(Factor::distance).reversed().thenComparing(Factor::where))
                .toList();
    }

    private List<Integer> waiting() {
        List<Order> orders = plant.book().orders();
        return IntStream.range(0, experience.readyS().size())
                .filter(order -> experience.readyS().get(order) > 0)
                .boxed()
                .sorted(Comparator.comparingLong(order -> orders.get(order).dueTick()))
                .toList();
    }

    private String ready(int order) {
        return plant.book().orders().get(order).id() + " "
                + clock.minute(Ticks.ofSeconds(experience.readyS().get(order)));
    }

    private static String joined(List<String> all) {
        String more = all.size() > MOST ? " and " + (all.size() - MOST) + " more" : "";
        return String.join(", ", all.subList(0, Math.min(MOST, all.size()))) + more;
    }
}
