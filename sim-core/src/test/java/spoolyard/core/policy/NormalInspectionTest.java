package spoolyard.core.policy;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatThrownBy;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import spoolyard.core.plant.InspectionLevel;
import spoolyard.core.plant.SamplingPlan;

/**
 * Plans against tables read elsewhere than those from which they were typed: code letters and Ac/Re of ISO 2859-1 as a
 * reproduction of ISO 2859 / Z1.4 gives them for lots of 91 to 10 000.
 */
class NormalInspectionTest {
    @ParameterizedTest
    @CsvSource({
        "91, C, D, F",
        "150, C, D, F",
        "151, D, E, G",
        "280, D, E, G",
        "281, D, E, H",
        "500, D, E, H",
        "501, E, F, J",
        "1200, E, F, J",
        "1201, E, G, K",
        "3200, E, G, K",
        "3201, F, G, L",
        "10000, F, G, L"
    })
    void givesTheLetterOfALot(int lot, char s3, char s4, char ii) {
        assertThat(NormalInspection.letter(InspectionLevel.S3, lot)).isEqualTo(s3);
        assertThat(NormalInspection.letter(InspectionLevel.S4, lot)).isEqualTo(s4);
        assertThat(NormalInspection.letter(InspectionLevel.II, lot)).isEqualTo(ii);
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

    /**
     * The master table is a diagonal: down a column the acceptance numbers are 0, an arrow up, an arrow down, 1, 2, 3, 5, 7,
     * 10, 14, 21, and each column is the next one a row lower. From memory of the table's make. At letter A the arrow up is one down,
     * for there is nothing above.
     */
    @Test
    void everyColumnIsTheNextOneARowLower() {
        String letters = "ABCDEFGHJKLMNPQ";
        for (int column = 0; column + 1 < NormalInspection.limitsPercent().size(); column++) {
            double aql = NormalInspection.limitsPercent().get(column);
            double next = NormalInspection.limitsPercent().get(column + 1);
            boolean arrowMeetsTheTop = next == 10.0;
            for (int row = arrowMeetsTheTop ? 1 : 0; row + 1 < letters.length(); row++) {
                int upper = NormalInspection.plan(letters.charAt(row), next).acceptance();
                int lower = NormalInspection.plan(letters.charAt(row + 1), aql).acceptance();
                assertThat(lower).as("%s at %s", letters.charAt(row + 1), aql).isEqualTo(upper);
            }
        }
    }

    @Test
    void looksAtAWholeLotThatIsSmallerThanTheSample() {
        // letter D at AQL 0.65 leads down to F, n = 20
        assertThat(NormalInspection.plan('D', 0.65)).isEqualTo(new SamplingPlan(20, 0));
        assertThat(NormalInspection.plan(InspectionLevel.II, 0.65, 6)).isEqualTo(new SamplingPlan(6, 0));
    }

    @Test
    void refusesALimitThatTheTableDoesNotHave() {
        assertThatThrownBy(() -> NormalInspection.plan('G', 3.0))
                .isInstanceOf(IllegalArgumentException.class)
                .hasMessageContaining("AQL = 3.0 %");
    }
}
