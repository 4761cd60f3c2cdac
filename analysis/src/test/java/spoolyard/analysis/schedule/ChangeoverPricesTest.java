package spoolyard.analysis.schedule;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.BeforeAll;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.core.plant.Product;
import spoolyard.core.record.RunResult.ChangeoverResult;
import spoolyard.scenarios.ScenarioReader;

final class ChangeoverPricesTest {
    private static PlantBook book;

    @BeforeAll
    static void readsThePlant() throws Exception {
        Plant plant = ScenarioReader.read(Path.of("..", "scenarios", "orrenvale"), List.of())
                .plant();
        book = PlantBook.of(
                plant,
                new Weights(
                        plant.economy().prices(),
                        OptionalDouble.empty(),
                        OptionalDouble.empty(),
                        0.5,
                        24,
                        Weights.First.NEITHER),
                Map.of());
    }

    private static ChangeoverResult result(Line line, Product from, Product to, ChangeoverEstimate took, double waitS) {
        return new ChangeoverResult(
                line.name(),
                from.label(),
                to.label(),
                from.colour().code(),
                to.colour().code(),
                0,
                1,
                took.purgeKg() + took.compoundKg(),
                took.crewS(),
                waitS);
    }

    /** What was planned and what was simulated are priced alike, so the two costs can be compared. */
    @Test
    void whatComesAsExpectedCostsWhatWasPlanned() {
        ChangeoverArithmetic arithmetic = new ChangeoverArithmetic(book.plant(), book.weights());
        ChangeoverPrices prices = new ChangeoverPrices(book);

        for (Line line : book.plant().lines()) {
            List<Product> made = book.products().stream().filter(line::canMake).toList();
            for (Product from : made) {
                for (Product to : made) {
                    ChangeoverEstimate mean = arithmetic.estimate(line, from, to);
                    ChangeoverResult result = result(line, from, to, mean, 0);
                    if (!from.sameMelt(to)) {
                        assertThat(prices.lineS(result)).isCloseTo(mean.lineS(), within(1e-6));
                        assertThat(prices.money(result)).isCloseTo(mean.money(), within(1e-6));
                    }
                }
            }
        }
    }

    @Test
    void anHourOfWaitingCostsAnHourOfTheLine() {
        ChangeoverPrices prices = new ChangeoverPrices(book);
        Line line = book.plant().lines().get(1);
        List<Product> made = book.products().stream().filter(line::canMake).toList();
        Product from = made.get(0);
        Product to = made.get(1);
        ChangeoverEstimate mean = new ChangeoverArithmetic(book.plant(), book.weights()).estimate(line, from, to);

        double waited = prices.money(result(line, from, to, mean, 3600));

        assertThat(waited - mean.money()).isCloseTo(book.weights().linePerH(line, to), within(1e-6));
    }
}
