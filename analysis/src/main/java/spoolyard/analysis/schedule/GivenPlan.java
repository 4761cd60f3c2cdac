package spoolyard.analysis.schedule;

import java.util.HashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.sequence.Plan;
import spoolyard.core.plant.DispatchRule;
import spoolyard.core.plant.OrderBook;

/** The sequence that a plant is given, as a plan. */
public final class GivenPlan {
    private GivenPlan() {}

    /**
     * Its plan.
     *
     * @param book the order book
     * @return the given sequence; empty if the plant has none, or one that leaves orders out
     */
    public static Optional<Plan> of(PlantBook book) {
        OrderBook orders = book.plant().book();
        int placed =
                orders.givenSequence().values().stream().mapToInt(List::size).sum();
        if (orders.rule() != DispatchRule.GIVEN_SEQUENCE
                || placed != orders.orders().size()) {
            return Optional.empty();
        }
        Map<String, Integer> numbers = new HashMap<>();
        for (int i = 0; i < orders.orders().size(); i++) {
            numbers.put(orders.orders().get(i).id(), i);
        }
        List<List<Integer>> lines = book.plant().lines().stream()
                .map(line -> orders.givenSequence().getOrDefault(line.name(), List.of()).stream()
                        .map(numbers::get)
                        .toList())
                .toList();
        return Optional.of(new Plan(lines));
    }
}
