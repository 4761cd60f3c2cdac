package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.TreeMap;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Order;

/**
 * What simulated runs taught about the times that a plan reckons with. Immutable.
 *
 * <p>Means leave out waiting for people, for dry material and for the lab; a run has them. For each line and polymer the
 * experience is how many times as long as reckoned orders took there, changeover included: the median over all orders made,
 * weighted by reckoned time. An order has the line from the end of the one before, for lines prepare ahead;
 * the median lets spools that are made up days later count little. Orders that need an article that
 * ran out tell nothing of that and are left out; for them it is when the article is there, if orders get it in the order of
 * their due dates.
 *
 * @param stretch factor by line, then polymer, {@code > 0}
 * @param readyS for each order of the book, the earliest start for want of material, seconds since the start of the plan;
 *     empty if nothing ran out
 */
public record Experience(Map<String, Map<String, Double>> stretch, List<Double> readyS) {
    /** Nothing was learned yet. */
    public static final Experience NONE = new Experience(Map.of(), List.of());

    private static final double LEAST = 0.1;

    /** Copies the collections. */
    public Experience {
        stretch = Map.copyOf(stretch);
        readyS = List.copyOf(readyS);
    }

    /**
     * Learns from runs.
     *
     * @param plain the book with the times as reckoned, {@link #NONE} applied
     * @param lessons what the runs told, the last one about deliveries too
     * @return the experience
     */
    public static Experience of(PlantBook plain, List<Lesson> lessons) {
        Map<String, Map<String, List<Took>>> all = new TreeMap<>();
        for (Lesson lesson : lessons) {
            for (Line line : plain.plant().lines()) {
                took(plain, lesson, line, all);
            }
        }
        Map<String, Map<String, Double>> stretch = new HashMap<>();
        all.forEach((line, byPolymer) -> {
            Map<String, Double> medians = new TreeMap<>();
            byPolymer.forEach((polymer, each) -> medians.put(polymer, median(each)));
            stretch.put(line, medians);
        });
        return new Experience(stretch, new MaterialReady(plain.plant(), lessons).readyS());
    }

    private static void took(PlantBook plain, Lesson lesson, Line line, Map<String, Map<String, List<Took>>> all) {
        int number = plain.plant().lines().indexOf(line);
        var description = plain.problem().lines().get(number);
        int state = description.changeovers().atStart();
        double freeS = 0;
        for (Lesson.Made made : inOrder(lesson, line)) {
            Order order = plain.plant().book().orders().get(made.order());
            var job = plain.problem().jobs().get(made.order());
            if (!needsScarce(order, lesson)) {
                double reckonedS = description.changeovers().timeS(state, job.product())
                        + job.runS().get(number);
                double tookS = description.hours().workedUntilS(made.endS())
                        - description.hours().workedUntilS(Math.max(freeS, made.startS()));
                all.computeIfAbsent(line.name(), name -> new TreeMap<>())
                        .computeIfAbsent(order.product().polymer().code(), code -> new ArrayList<>())
                        .add(new Took(tookS / reckonedS, reckonedS));
            }
            state = job.product();
            freeS = made.endS();
        }
    }

    private static List<Lesson.Made> inOrder(Lesson lesson, Line line) {
        return lesson.made().stream()
                .filter(made -> made.line().equals(line.name()))
                .sorted(Comparator.comparingDouble(Lesson.Made::endS))
                .toList();
    }

    private static boolean needsScarce(Order order, Lesson lesson) {
        return MaterialReady.articles(order.product()).stream().anyMatch(lesson.scarce()::contains);
    }

    /** How many times as long as reckoned an order took, with what was reckoned, seconds. */
    private record Took(double ratio, double reckonedS) {}

    private static double median(List<Took> all) {
        List<Took> sorted =
                all.stream().sorted(Comparator.comparingDouble(Took::ratio)).toList();
        double half = all.stream().mapToDouble(Took::reckonedS).sum() / 2;
        double sum = 0;
        for (Took took : sorted) {
            sum += took.reckonedS;
            if (sum >= half) {
                return Math.max(took.ratio, LEAST);
            }
        }
        return 1;
    }

    /** How many times as long as reckoned an order takes; 1 if nothing is known. */
    double stretch(String line, String polymer) {
        return stretch.getOrDefault(line, Map.of()).getOrDefault(polymer, 1.0);
    }

    /** Earliest start of an order for want of material, seconds since the start of the plan. */
    double readyS(int order) {
        return readyS.isEmpty() ? 0 : readyS.get(order);
    }
}
