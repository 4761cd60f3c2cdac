package spoolyard.analysis.report;

import java.time.ZoneId;
import java.time.ZonedDateTime;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import spoolyard.analysis.schedule.PlanFigures;
import spoolyard.analysis.schedule.PlantBook;
import spoolyard.analysis.schedule.Weights;
import spoolyard.analysis.sequence.Plan;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Plant;

/** Plans that make every order on its first line, in book order. */
final class SamplePlans {
    static final PlantClock CLOCK =
            new PlantClock(ZonedDateTime.of(2027, 3, 1, 6, 0, 0, 0, ZoneId.of("Europe/Berlin")));

    private static final Weights WEIGHTS = new Weights(
            Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, 24, Weights.First.NEITHER);

    private SamplePlans() {}

    static PlanFigures of(Plant plant, Map<String, List<String>> frozen) {
        PlantBook book = PlantBook.of(plant, WEIGHTS, frozen);
        List<List<Integer>> lines = new ArrayList<>();
        plant.lines().forEach(line -> lines.add(new ArrayList<>()));
        List<Order> orders = plant.book().orders();
        for (int i = 0; i < orders.size(); i++) {
            String first = orders.get(i).lines().get(0);
            int line = plant.lines().stream().map(each -> each.name()).toList().indexOf(first);
            lines.get(line).add(i);
        }
        return PlanFigures.of("this plan", book, TimedPlan.of(book.problem(), new Plan(lines)));
    }
}
