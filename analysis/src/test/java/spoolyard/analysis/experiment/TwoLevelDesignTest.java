package spoolyard.analysis.experiment;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;

import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

final class TwoLevelDesignTest {
    /**
     * The 2^(7-4) design with D = AB, E = AC, F = BC, G = ABC in standard order, and the times of the bicycle experiment
     * with its effects: Box, Hunter and Hunter, Statistics for Experimenters, 2nd ed. 2005, section 6 (from memory;
     * recomputed by hand).
     */
    private static final List<String> BICYCLE =
            List.of("---+++-", "+----++", "-+--+-+", "++-+---", "--++--+", "+-+-+--", "-++--+-", "+++++++");

    private static final double[] TIMES_S = {69, 52, 60, 83, 71, 50, 59, 88};
    private static final double[] EFFECTS_S = {3.5, 12, 1, 22.5, 0.5, 1, 2.5};

    @Test
    void isTheSaturatedDesignOfTheTextbook() {
        assertThat(rows(TwoLevelDesign.ofEightRuns(7))).isEqualTo(BICYCLE);
    }

    private static List<String> rows(TwoLevelDesign design) {
        return IntStream.range(0, design.runs())
                .mapToObj(run -> {
                    StringBuilder row = new StringBuilder();
                    IntStream.range(0, design.factors())
                            .forEach(factor -> row.append(design.isHigh(run, factor) ? '+' : '-'));
                    return row.toString();
                })
                .toList();
    }

    @Test
    void findsTheEffectsOfTheTextbook() {
        TwoLevelDesign design = TwoLevelDesign.ofEightRuns(7);

        for (int factor = 0; factor < 7; factor++) {
            assertThat(design.effect(factor, TIMES_S)).isEqualTo(EFFECTS_S[factor]);
        }
    }

    /** Source: as above; l1 estimates 1 + 24 + 35 + 67. */
    @Test
    void namesTheInteractionsThatItCannotTellApart() {
        assertThat(TwoLevelDesign.ofEightRuns(7).aliases(0))
                .containsExactly(List.of(1, 3), List.of(2, 4), List.of(5, 6));
        assertThat(TwoLevelDesign.of(8).aliases(0)).isEmpty();
    }

    /**
     * Source: NIST, Dataplot file DEXRES4, minimal designs of resolution IV (read): 4=123; 5=123 6=234; 5=123 6=234
     * 7=134; 5=234 6=134 7=123 8=124. Columns of the generators as masks, factor 1 being the lowest bit.
     */
    @Test
    void hasThePublishedGeneratorsOfResolutionFour() {
        assertThat(TwoLevelDesign.of(4).generators()).containsExactly(1, 2, 4, 0b0111);
        assertThat(TwoLevelDesign.of(6).generators()).containsExactly(1, 2, 4, 8, 0b0111, 0b1110);
        assertThat(TwoLevelDesign.of(7).generators()).containsExactly(1, 2, 4, 8, 0b0111, 0b1110, 0b1101);
        assertThat(TwoLevelDesign.of(8).generators()).containsExactly(1, 2, 4, 8, 0b1110, 0b1101, 0b0111, 0b1011);
    }

    /** Source: NIST/SEMATECH e-Handbook, table of section 5.3.3.4.7 (from memory). */
    @ParameterizedTest
    @CsvSource({
        "4, 8, 4",
        "5, 16, 5",
        "6, 16, 4",
        "7, 16, 4",
        "8, 16, 4",
        "9, 16, 3",
        "10, 16, 3",
        "11, 16, 3",
        "15, 16, 3"
    })
    void hasThePublishedRunsAndResolution(int factors, int runs, int resolution) {
        TwoLevelDesign design = TwoLevelDesign.of(factors);

        assertThat(design.runs()).isEqualTo(runs);
        assertThat(design.resolution()).contains(resolution);
    }

    @ParameterizedTest
    @ValueSource(ints = {2, 3})
    void isFullForTwoAndThreeFactors(int factors) {
        assertThat(TwoLevelDesign.of(factors).runs()).isEqualTo(1 << factors);
        assertThat(TwoLevelDesign.of(factors).resolution()).isEqualTo(Optional.empty());
    }

    static Stream<TwoLevelDesign> designs() {
        return Stream.concat(
                IntStream.rangeClosed(2, TwoLevelDesign.MOST_FACTORS).mapToObj(TwoLevelDesign::of),
                IntStream.rangeClosed(4, 7).mapToObj(TwoLevelDesign::ofEightRuns));
    }

    /** Each factor is as often high as low, and so in either level of each other factor. */
    @ParameterizedTest
    @MethodSource("designs")
    void isBalancedAndOrthogonal(TwoLevelDesign design) {
        for (int one = 0; one < design.factors(); one++) {
            for (int other = 0; other < design.factors(); other++) {
                int a = one;
                int b = other;
                long alike = IntStream.range(0, design.runs())
                        .filter(run -> design.isHigh(run, a) == design.isHigh(run, b))
                        .count();
                assertThat(alike).isEqualTo(one == other ? design.runs() : design.runs() / 2);
            }
            int a = one;
            assertThat(IntStream.range(0, design.runs()).filter(run -> design.isHigh(run, a)))
                    .hasSize(design.runs() / 2);
        }
    }

    @ParameterizedTest
    @ValueSource(ints = {1, 16})
    void refusesMoreFactorsThanItHasDesignsFor(int factors) {
        assertThatIllegalArgumentException()
                .isThrownBy(() -> TwoLevelDesign.of(factors))
                .withMessageContaining("Must be 2 to 15.");
    }
}
