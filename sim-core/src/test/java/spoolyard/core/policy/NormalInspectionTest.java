package spoolyard.core.policy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.SamplingPlan;

/**
 * Plans against tables I and II-A as they are printed, and against a construction without them.
 *
 * <p>Sources: letters of all levels as a public program that cites ISO 2859-1:1999 table 1 has them; sample sizes and acceptance
 * numbers of each letter from a public legible copy of MIL-STD-105E (1989), table II-A, whose arrows are lost; arrows from
 * 0.65 to 10 from a public copy by the National Institute of Building Sciences (nibs.org); the others, and those at A and R
 * that would lead out of the table, from memory.
 */
class NormalInspectionTest {
    /** Table I of ISO 2859-1, each row at its smallest and its largest lot. */
    @ParameterizedTest
    @CsvSource({
        "2, 8, AAAAAAB",
        "9, 15, AAAAABC",
        "16, 25, AABBBCD",
        "26, 50, ABBCCDE",
        "51, 90, BBCCCEF",
        "91, 150, BBCDDFG",
        "151, 280, BCDEEGH",
        "281, 500, BCDEFHJ",
        "501, 1200, CCEFGJK",
        "1201, 3200, CDEGHKL",
        "3201, 10000, CDFGJLM",
        "10001, 35000, CDFHKMN",
        "35001, 150000, DEGJLNP",
        "150001, 500000, DEGJMPQ",
        "500001, 1000000, DEHKNQR"
    })
    void givesTheLetterOfALot(int smallest, int largest, String fromS1ToIii) {
        for (int lot : new int[] {smallest, largest}) {
            StringBuilder letters = new StringBuilder();
            for (InspectionLevel level : InspectionLevel.values()) {
                letters.append(NormalInspection.letter(level, lot));
            }
            assertThat(letters).as("lots of %d", lot).hasToString(fromS1ToIii);
        }
    }

    /** Table II-A as it is printed, from 0.010 to 10; v and ^ are arrows down and up. */
    private static final String[] PRINTED = {
        "A    2  v  v  v  v  v  v  v  v  v  v  v  v  v  v  0  v",
        "B    3  v  v  v  v  v  v  v  v  v  v  v  v  v  0  ^  v",
        "C    5  v  v  v  v  v  v  v  v  v  v  v  v  0  ^  v  1",
        "D    8  v  v  v  v  v  v  v  v  v  v  v  0  ^  v  1  2",
        "E   13  v  v  v  v  v  v  v  v  v  v  0  ^  v  1  2  3",
        "F   20  v  v  v  v  v  v  v  v  v  0  ^  v  1  2  3  5",
        "G   32  v  v  v  v  v  v  v  v  0  ^  v  1  2  3  5  7",
        "H   50  v  v  v  v  v  v  v  0  ^  v  1  2  3  5  7 10",
        "J   80  v  v  v  v  v  v  0  ^  v  1  2  3  5  7 10 14",
        "K  125  v  v  v  v  v  0  ^  v  1  2  3  5  7 10 14 21",
        "L  200  v  v  v  v  0  ^  v  1  2  3  5  7 10 14 21  ^",
        "M  315  v  v  v  0  ^  v  1  2  3  5  7 10 14 21  ^  ^",
        "N  500  v  v  0  ^  v  1  2  3  5  7 10 14 21  ^  ^  ^",
        "P  800  v  0  ^  v  1  2  3  5  7 10 14 21  ^  ^  ^  ^",
        "Q 1250  0  ^  v  1  2  3  5  7 10 14 21  ^  ^  ^  ^  ^",
        "R 2000  ^  ^  1  2  3  5  7 10 14 21  ^  ^  ^  ^  ^  ^",
    };

    private static final double[] LIMITS = {
        0.010, 0.015, 0.025, 0.040, 0.065, 0.10, 0.15, 0.25, 0.40, 0.65, 1.0, 1.5, 2.5, 4.0, 6.5, 10
    };

    @Test
    void givesThePrintedPlanOfEveryLetterAndLimit() {
        assertThat(NormalInspection.limitsPercent()).hasSize(LIMITS.length);
        for (int row = 0; row < PRINTED.length; row++) {
            for (int column = 0; column < LIMITS.length; column++) {
                SamplingPlan plan = NormalInspection.plan(PRINTED[row].charAt(0), LIMITS[column]);
                assertThat(plan)
                        .as("%s at %s", PRINTED[row].charAt(0), LIMITS[column])
                        .isEqualTo(printed(row, column));
            }
        }
    }

    private static SamplingPlan printed(int row, int column) {
        String[] cells = PRINTED[row].split(" +");
        return switch (cells[column + 2]) {
            case "v" -> printed(row + 1, column);
            case "^" -> printed(row - 1, column);
            default -> new SamplingPlan(Integer.parseInt(cells[1]), Integer.parseInt(cells[column + 2]));
        };
    }

    /**
     * Sample sizes and limits both grow by the fifth root of ten (the series R5 of ISO 3), so the defective spools that a
     * sample holds at the limit, n times AQL, name the acceptance number: 0 up to 0.158, then in turn two arrows, 1, 2, 3, 5, 7,
     * 10, 14, 21. Without the rows and columns of the table.
     */
    @Test
    void whatASampleHoldsAtTheLimitNamesTheAcceptanceNumber() {
        int[] numbers = {0, -1, -1, 1, 2, 3, 5, 7, 10, 14, 21};
        int named = 0;
        for (String row : PRINTED) {
            int sample = Integer.parseInt(row.split(" +")[1]);
            for (double limit : LIMITS) {
                int step = (int) Math.floor(5 * Math.log10(sample * limit / 100)) + 5;
                if (step >= 0 && step < numbers.length && numbers[step] >= 0) {
                    assertThat(NormalInspection.plan(row.charAt(0), limit))
                            .as("n = %d at %s", sample, limit)
                            .isEqualTo(new SamplingPlan(sample, numbers[step]));
                    named++;
                }
            }
        }
        assertThat(named).isEqualTo(15 + 14 + 13 + 12 + 11 + 10 + 9 + 8 + 7);
    }

    /** Level II, AQL 1.0 and 2.5: sample, Ac at 1.0, sample, Ac at 2.5; arrows followed. */
    @ParameterizedTest
    @CsvSource({
        "120, 13, 0, 20, 1",
        "200, 50, 1, 32, 2",
        "400, 50, 1, 50, 3",
        "800, 80, 2, 80, 5",
        "2000, 125, 3, 125, 7",
        "5000, 200, 5, 200, 10"
    })
    void givesThePlanOfALot(int lot, int sampleAtOne, int acAtOne, int sample, int ac) {
        assertThat(NormalInspection.plan(InspectionLevel.II, 1.0, lot))
                .isEqualTo(new SamplingPlan(sampleAtOne, acAtOne));
        assertThat(NormalInspection.plan(InspectionLevel.II, 2.5, lot)).isEqualTo(new SamplingPlan(sample, ac));
    }

    @Test
    void looksAtAWholeLotThatIsSmallerThanTheSample() {
        // letter D at AQL 0.65 leads down to F, n = 20
        assertThat(NormalInspection.plan('D', 0.65)).isEqualTo(new SamplingPlan(20, 0));
        assertThat(NormalInspection.plan(InspectionLevel.II, 0.65, 6)).isEqualTo(new SamplingPlan(6, 0));
        // letter Q at AQL 0.010, n = 1250
        assertThat(NormalInspection.plan(InspectionLevel.II, 0.010, 1251)).isEqualTo(new SamplingPlan(1250, 0));
        assertThat(NormalInspection.plan(InspectionLevel.II, 0.010, 1250)).isEqualTo(new SamplingPlan(1250, 0));
        assertThat(NormalInspection.plan(InspectionLevel.II, 0.010, 1249)).isEqualTo(new SamplingPlan(1249, 0));
        assertThat(NormalInspection.plan(InspectionLevel.S1, 10, 1)).isEqualTo(new SamplingPlan(1, 1));
    }

    @Test
    void refusesALimitThatTheTableDoesNotHave() {
        assertThatThrownBy(() -> NormalInspection.plan('G', 3.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("AQL = 3.0 %")
                .hasMessageContaining("one of [0.01, 0.015,");
        assertThatThrownBy(() -> NormalInspection.plan('O', 4.0)).hasMessageContaining("ABCDEFGHJKLMNPQR");
    }
}
