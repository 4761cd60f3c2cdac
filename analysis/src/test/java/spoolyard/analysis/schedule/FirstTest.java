package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import java.util.function.ToDoubleFunction;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sequence.RandomBooks;
import spoolyard.analysis.sequence.SearchLimit;
import spoolyard.analysis.sequence.SearchProgress;
import spoolyard.analysis.sequence.SearchSettings;
import spoolyard.analysis.sequence.Sequencer;
import spoolyard.analysis.sequence.Stop;
import spoolyard.analysis.sequence.TimedPlan;
import spoolyard.core.plant.OrderBook;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.ScenarioReader;

/** What comes first against trying all plans, on books of four orders cut from the reference plant, most of them late. */
final class FirstTest {
    private static final int ORDERS = 4;
    private static final int BOOKS = 25;
    private static final double RESERVE_H = 400;

    private static Plant plant;

    @BeforeAll
    static void readsThePlant() throws Exception {
        plant = ScenarioReader.read(Path.of("..", "scenarios", "orrenvale"), List.of())
                .plant();
    }

    private static PlantBook book(int from, Weights.First first) {
        OrderBook all = plant.book();
        Plant small =
                plant.with(new OrderBook(all.orders().subList(from, from + ORDERS), all.rule(), all.givenSequence()));
        return PlantBook.of(
                small,
                new Weights(
                        small.economy().prices(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0.5,
                        RESERVE_H,
                        first),
                Map.of());
    }

    private static TimedPlan best(PlantBook book) {
        SearchSettings settings = new SearchSettings(SearchLimit.iterations(1000), 1, 1, 1);
        return new Sequencer(book.problem(), settings, new Stop(), SearchProgress.UNHEARD)
                .solve(List.of())
                .plan();
    }

    private static double least(PlantBook book, ToDoubleFunction<TimedPlan> part) {
        double[] least = {Double.POSITIVE_INFINITY};
        RandomBooks.forEachPlan(
                book.problem(),
                plan -> least[0] = Math.min(least[0], part.applyAsDouble(TimedPlan.of(book.problem(), plan))));
        return least[0];
    }

    private static double kg(PlantBook book, TimedPlan timed) {
        ChangeoverEstimate sum = PlanFigures.of("", book, timed).changeovers();
        return sum.purgeKg() + sum.compoundKg();
    }

    @Test
    void latenessFirstLeavesTheLeastLatenessThereIs() {
        int late = 0;
        for (int from = 0; from < BOOKS; from++) {
            PlantBook book = book(from * ORDERS, Weights.First.LATE);

            double found = best(book).lateCost();

            double least = least(book, TimedPlan::lateCost);
            assertThat(found).as("orders from %d", from * ORDERS).isCloseTo(least, within(1e-6 * (1 + least)));
            late += least > 0 ? 1 : 0;
        }
        assertThat(late).as("books with lateness").isGreaterThan(BOOKS / 2);
    }

    @Test
    void purgeFirstRunsTheLeastToWasteThereIs() {
        for (int from = 0; from < BOOKS; from++) {
            PlantBook book = book(from * ORDERS, Weights.First.PURGE);

            double found = kg(book, best(book));

            assertThat(found)
                    .as("orders from %d", from * ORDERS)
                    .isCloseTo(least(book, timed -> kg(book, timed)), within(1e-6));
        }
    }
}
