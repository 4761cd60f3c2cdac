package spoolyard.core.policy;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Order;
import spoolyard.core.plant.Polymer;
import spoolyard.core.plant.Product;

class NextOrderTest {
    private static final Polymer PLA = new Polymer("PLA", 1240, 1, 205, 1200);
    private static final Polymer PETG = new Polymer("PETG", 1270, 0.95, 235, 1200);

    private static Product product(Polymer polymer, double lightness, double diameterMm) {
        return new Product(polymer, new Colour("C" + lightness, "", lightness, 0, 0, 1, 1, 0.03), diameterMm, 1);
    }

    private static Order order(String id, Product product, long due, int priority) {
        return new Order(id, product, 10, 0, due, priority, 1, List.of("L1"));
    }

    private static final Order WHITE = order("white", product(PLA, 95, 1.75), 30, 2);
    private static final Order GREY = order("grey", product(PLA, 50, 1.75), 20, 2);
    private static final Order BLACK = order("black", product(PLA, 17, 1.75), 20, 1);
    private static final Order CLEAR_PETG = order("petg", product(PETG, 88, 1.75), 10, 2);
    private static final Order THICK = order("thick", product(PLA, 60, 2.85), 5, 2);
    private static final List<Order> ALL = List.of(WHITE, GREY, BLACK, CLEAR_PETG, THICK);
    private static final Optional<Product> ON_GREY = Optional.of(product(PLA, 52, 1.75));

    @Test
    void dueDateFirstTakesTheSmallestDueDate() {
        assertThat(new DueDateFirst().choose(ON_GREY, ALL, order -> 0)).isSameAs(THICK);
    }

    @Test
    void dueDateFirstBreaksTiesByPriority() {
        assertThat(new DueDateFirst().choose(ON_GREY, List.of(GREY, BLACK), order -> 0))
                .isSameAs(BLACK);
    }

    @Test
    void lightestNextGoesOnTowardsDark() {
        assertThat(new LightestNext().choose(ON_GREY, ALL, order -> 0)).isSameAs(GREY);
    }

    @Test
    void lightestNextStartsAgainFromTheLightestWhenNothingDarkerIsLeft() {
        assertThat(new LightestNext().choose(Optional.of(product(PLA, 20, 1.75)), List.of(WHITE, GREY), order -> 0))
                .isSameAs(WHITE);
    }

    @Test
    void lightestNextStaysWithPolymerAndDiameterWhileAnyIsLeft() {
        assertThat(new LightestNext().choose(ON_GREY, List.of(CLEAR_PETG, THICK, WHITE), order -> 0))
                .isSameAs(WHITE);
    }

    @Test
    void lightestNextOnACleanScrewTakesTheLightest() {
        assertThat(new LightestNext().choose(Optional.empty(), ALL, order -> 0)).isSameAs(WHITE);
    }

    @Test
    void leastPurgeNextTakesTheCheapestChange() {
        assertThat(new LeastPurgeNext().choose(ON_GREY, ALL, order -> order == BLACK ? 1.0 : 2.0))
                .isSameAs(BLACK);
    }

    @Test
    void leastPurgeNextBreaksTiesByDueDate() {
        assertThat(new LeastPurgeNext().choose(ON_GREY, List.of(WHITE, GREY), order -> 1.0))
                .isSameAs(GREY);
    }
}
