package spoolyard.scenarios.factor;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.scenarios.fault.Origin;

final class FactorTest {
    /** By hand: the straight line from low to high, whole numbers for counts, the nearer end for anything else. */
    @ParameterizedTest
    @CsvSource({
        "40 m, 80 m, 0, 40 m, 0",
        "40 m, 80 m, 0.25, 50 m, 0.25",
        "80 m, 40 m, 0.25, 70 m, 0.25",
        "3, 5, 0.6666666666666666, 4, 0.5",
        "3, 4, 0.3333333333333333, 3, 0",
        "3.0, 4.0, 0.25, 3.25, 0.25",
        "100 spools, 203 spools, 0.5, 152 spools, 0.5048543689",
        "1 km, 2000 m, 0.4, 1 km, 0",
        "due date first, lightest next, 0.7, lightest next, 1"
    })
    void findsTheValueAtAShareOfTheRange(String low, String high, double share, String value, double at) {
        Factor factor = new Factor("one", "/one", low, high, new Origin("factors.yaml", 1, "/factors/one"));

        Factor.Level level = factor.level(share);

        assertThat(level.value()).isEqualTo(value);
        assertThat(level.share()).isCloseTo(at, within(1e-9));
    }
}
