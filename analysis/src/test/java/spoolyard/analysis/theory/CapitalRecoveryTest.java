package spoolyard.analysis.theory;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.assertThatIllegalArgumentException;
import static org.assertj.core.api.Assertions.within;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

final class CapitalRecoveryTest {
    /** (A/P, i, n) to five digits. Source: interest tables of Blank and Tarquin, Engineering Economy (from memory). */
    @ParameterizedTest
    @CsvSource({
        "0.10, 10, 0.16275",
        "0.10, 5, 0.26380",
        "0.08, 5, 0.25046",
        "0.06, 8, 0.16104",
        "0.12, 20, 0.13388",
        "0.15, 3, 0.43798",
        "0.10, 1, 1.10000"
    })
    void isThatOfTheTables(double interest, double years, double factor) {
        assertThat(CapitalRecovery.factor(interest, years)).isCloseTo(factor, within(0.000005));
    }

    /** What it stands for: the yearly amounts, each brought back to now, are what was paid. */
    @Test
    void paysBackWhatWasPaidWithInterest() {
        double yearly = CapitalRecovery.factor(0.07, 12);
        double now = 0;
        for (int year = 1; year <= 12; year++) {
            now += yearly / Math.pow(1.07, year);
        }

        assertThat(now).isCloseTo(1, within(1e-12));
    }

    @Test
    void writesOffEvenlyWithoutInterestAndNearlySoWithALittle() {
        assertThat(CapitalRecovery.factor(0, 8)).isEqualTo(0.125);
        assertThat(CapitalRecovery.factor(1e-12, 8)).isCloseTo(0.125, within(1e-10));
    }

    @Test
    void refusesWhatIsNoLifeAndNoInterest() {
        assertThatIllegalArgumentException().isThrownBy(() -> CapitalRecovery.factor(-0.01, 5));
        assertThatIllegalArgumentException().isThrownBy(() -> CapitalRecovery.factor(0.1, 0));
    }
}
