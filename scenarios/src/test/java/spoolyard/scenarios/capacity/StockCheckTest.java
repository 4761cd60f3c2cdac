package spoolyard.scenarios.capacity;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.Warning;

/**
 * Needs of the two-line plant by hand, all orders due within its week: 900 + 240 spools of black, 480 white, 360 red, 400
 * blue, 200 natural of 1 kg each.
 */
final class StockCheckTest {
    private static List<Warning> warnings(String materials) throws Exception {
        return ScenarioReader.read(Path.of("two-lines"), List.of("/materials=" + materials))
                .warnings();
    }

    @Test
    void warnsOfAStockThatWhatIsOrderedNeedsMoreOf() throws Exception {
        List<Warning> warnings = warnings("{spools: {1 kg: {opening: 2000 spools,"
                + " deliveries: {in time: {at: 2027-03-03 08:00, amount: 500 spools},"
                + " too late: {at: 2027-04-03 08:00, amount: 500 spools}}}}}");

        assertThat(warnings).hasSize(1);
        assertThat(warnings.get(0).kind()).isEqualTo(Warning.Kind.STOCK_TOO_SMALL);
        assertThat(warnings.get(0).message())
                .isEqualTo("the orders due in the run need 2580 spools of empty spools 1 kg, scrap not counted;"
                        + " 2500 spools are there or come.");
    }

    @Test
    void saysNothingOfAStockThatIsLargeEnough() throws Exception {
        assertThat(warnings("{spools: {all: {opening: 2580 spools}}}")).isEmpty();
    }

    /** 8 to a carton: 60 + 113 + 30 + 45 + 25 + 50. */
    @Test
    void countsAPartCartonAsOne() throws Exception {
        assertThat(warnings("{cartons: {1 kg: {opening: 323 cartons}}}")).isEmpty();
        assertThat(warnings("{cartons: {1 kg: {opening: 322 cartons}}}")).hasSize(1);
    }

    /** 2580 spools in the run of 7 days: 2 days take 737.1. */
    @Test
    void warnsOfAReorderPointBelowTheDemandOfALeadTime() throws Exception {
        String stock = "{spools: {1 kg: {opening: 3000 spools, reorder: {at: %d spools, order: 500 spools,"
                + " lead_time: 2 days, safety_stock: 68 spools}}}}";

        assertThat(warnings(String.format(stock, 806))).isEmpty();
        List<Warning> warnings = warnings(String.format(stock, 805));
        assertThat(warnings).hasSize(1);
        assertThat(warnings.get(0).kind()).isEqualTo(Warning.Kind.REORDER_TOO_LATE);
        assertThat(warnings.get(0).message())
                .isEqualTo("empty spools 1 kg is ordered at 805 spools; a lead time takes 737 spools on average,"
                        + " and 68 spools shall be left.");
    }
}
