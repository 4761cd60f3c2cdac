package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.Set;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sequence.SequencedLine;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.StockItem;
import spoolyard.core.quantity.Ticks;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** Orders of the plant of two lines: 0 PLA WHT 480, 1 PLA BLK 900, 2 PETG BLK 240, 3 PLA RED 360, 4 PETG NAT, 5 PLA BLU 400. */
final class ExperienceTest {
    private static final int L2 = 1;
    private static final long DAY = 24 * Ticks.PER_HOUR;

    private static Plant twoLines(String... settings) throws ScenarioException {
        return ScenarioReader.read(Path.of("..", "scenarios", "two-lines"), List.of(settings))
                .plant();
    }

    private static PlantBook book(Plant plant) {
        Weights weights = new Weights(
                Optional.empty(), OptionalDouble.empty(), OptionalDouble.empty(), 0.5, 24, Weights.First.NEITHER);
        return PlantBook.of(plant, weights, Map.of());
    }

    private static Lesson lesson(List<Lesson.Made> made) {
        return new Lesson(made, Set.of(), 1, Map.of());
    }

    /** Two orders on L2, one after the other, each taking 1.5 times its changeover and making; the second is prepared ahead. */
    private static List<Lesson.Made> halfAsLongAgain(PlantBook book) {
        SequencedLine line = book.problem().lines().get(L2);
        var first = book.problem().jobs().get(0);
        var second = book.problem().jobs().get(1);
        double firstS = 1.5 * first.runS().get(L2);
        double secondS = 1.5
                * (line.changeovers().timeS(first.product(), second.product())
                        + second.runS().get(L2));
        return List.of(
                new Lesson.Made(0, "L2", 0, line.hours().endOfS(firstS)),
                new Lesson.Made(1, "L2", 3600, line.hours().endOfS(firstS + secondS)));
    }

    @Test
    void findsHowManyTimesAsLongAsReckonedOrdersTake() throws ScenarioException {
        PlantBook book = book(twoLines());

        Experience experience = Experience.of(book, List.of(lesson(halfAsLongAgain(book))));

        assertThat(experience.stretch("L2", "PLA")).isEqualTo(1.5, within(1e-6));
        assertThat(experience.stretch("L1", "PLA")).isEqualTo(1);
        double plainS = book.problem().jobs().get(0).runS().get(L2);
        assertThat(book.with(experience).problem().jobs().get(0).runS().get(L2)).isEqualTo(1.5 * plainS, within(1e-3));
    }

    @Test
    void isNotMisledByAnOrderThatIsMadeUpDaysLater() throws ScenarioException {
        PlantBook book = book(twoLines());
        List<Lesson.Made> asReckoned = halfAsLongAgain(book);
        Lesson.Made madeUp = new Lesson.Made(3, "L2", 3600, 6 * 24 * 3600.0);

        Experience experience =
                Experience.of(book, List.of(lesson(List.of(asReckoned.get(0), asReckoned.get(1), madeUp))));

        assertThat(experience.stretch("L2", "PLA")).isEqualTo(1.5, within(1e-6));
    }

    @Test
    void learnsNoTimesFromOrdersThatWaitedForMaterial() throws ScenarioException {
        PlantBook book = book(twoLines("/materials={resin: {PLA: {opening: 600 kg}}}"));
        Lesson shortOfResin = new Lesson(halfAsLongAgain(book), Set.of("resin PLA"), 1, Map.of());

        assertThat(Experience.of(book, List.of(shortOfResin)).stretch("L2", "PLA"))
                .isEqualTo(1);
    }

    /**
     * By hand: 600 kg of PLA, 1000 kg more after 2 and after 4 days, to be shared by due date, concentrate left out. White,
     * 480 kg with 4 % concentrate, takes 460.8 and finds it; black, 900 kg with 3 %, takes 873 and waits for the first
     * delivery, which leaves 266.2; red, 360 kg with 3 %, takes 349.2 and waits for the second. Blue has some left.
     */
    @Test
    void sharesWhatRunsOutByDueDate() throws ScenarioException {
        PlantBook book = book(twoLines("/materials={resin: {PLA: {opening: 600 kg}}}"));
        List<StockItem.Delivery> twice =
                List.of(new StockItem.Delivery(2 * DAY, 1000), new StockItem.Delivery(4 * DAY, 1000));
        Lesson lesson = new Lesson(List.of(), Set.of("resin PLA"), 1, Map.of("resin PLA", twice));

        Experience experience = Experience.of(book, List.of(lesson));

        double dayS = 24 * 3600;
        assertThat(experience.readyS()).containsExactly(0.0, 2 * dayS, 0.0, 4 * dayS, 0.0, 4 * dayS);
    }

    /** By hand: 36 kg in the hopper dried for 4 h give 9 kg/h of natural, 96 % of white: 480 kg, 460.8 natural, take 51.2 h. */
    @Test
    void reckonsWithTheRateOfTheDryer() throws ScenarioException {
        Plant plant = twoLines(
                "/polymers/PLA/drying=4 h",
                "/lines/L1/material={layout: dose at throat, hopper: 36 kg, load: 15 min, clean: 25 min, crew: setter}",
                "/every_line/stoppages={}",
                "/lines/L1/winding_defects=0 %");

        assertThat(book(plant).problem().jobs().get(0).runS().get(0)).isEqualTo(51.2 * 3600, within(1e-6));
    }
}
