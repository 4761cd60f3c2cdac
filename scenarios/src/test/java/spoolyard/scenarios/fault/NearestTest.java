package spoolyard.scenarios.fault;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class NearestTest {
    /** Source: kitten/sitting and Saturday/Sunday are the usual textbook pairs; CA/ABC tells optimal string alignment (3)
     * from the unrestricted distance (2). From memory. */
    @ParameterizedTest
    @CsvSource({"kitten,sitting,3", "Saturday,Sunday,3", "CA,ABC,3", "form,from,1", "'',abc,3", "Rate,rate,0"})
    void countsEdits(String first, String second, int expected) {
        assertThat(Nearest.distance(first, second)).isEqualTo(expected);
        assertThat(Nearest.distance(second, first)).isEqualTo(expected);
    }

    @Test
    void findsTheNearestName() {
        List<String> keys = List.of("rate", "accumulator", "accumulator_home", "overflow");

        assertThat(Nearest.to("acumulator", keys)).contains("accumulator");
        assertThat(Nearest.to("overfolw", keys)).contains("overflow");
        assertThat(Nearest.to("qqqqq", keys)).isEmpty();
        assertThat(Nearest.to("x", List.of("y"))).isEmpty();
        assertThat(Nearest.to("rate".repeat(100), keys)).isEmpty();
    }

    @Test
    void takesOnlyNearNamesForSlips() {
        assertThat(Nearest.slipOf("prority", List.of("priority", "lines"))).contains("priority");
        assertThat(Nearest.slipOf("warehouse", List.of("release_date"))).isEmpty();
    }
}
