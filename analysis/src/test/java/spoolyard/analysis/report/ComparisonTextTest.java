package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import org.junit.jupiter.api.Test;

final class ComparisonTextTest {
    @Test
    void saysInASentenceWhatAnAlternativeGainsAndLoses() {
        double[] shift = SampleComparisons.shift(0);
        shift[Measure.GOOD_SPOOLS_PER_WEEK.ordinal()] = 40;
        shift[Measure.ORDERS_LATE.ordinal()] = -20;
        shift[Measure.LABOUR_H_PER_WEEK.ordinal()] = 30;

        String answer = new Answer(SampleComparisons.of(shift), 1).text();

        assertThat(answer)
                .matches("B makes \\d\\d to \\d\\d more good spools a week than the base and is late on"
                        + " \\d\\d\\.\\d to \\d\\d\\.\\d fewer orders\\."
                        + " It pays \\d\\d to \\d\\d more hours a week\\."
                        + " The data cannot tell whether it differs in good spools per shift, orders on time,"
                        + " late spool-days, scrap, time without an order, and longest crew wait\\.");
    }

    @Test
    void saysPlainlyThatTheDataCannotTell() {
        assertThat(new Answer(SampleComparisons.of(SampleComparisons.shift(0)), 1).text())
                .isEqualTo("B: the data cannot tell whether it differs from the base in anything.");
    }

    /** Nine measures have a value in each plant, the cost has none. */
    @Test
    void countsAllStatementsInItsConfidence() {
        Comparison comparison = SampleComparisons.of(SampleComparisons.shift(1), SampleComparisons.shift(2));

        assertThat(comparison.measures()).hasSize(9).doesNotContain(Measure.COST_PER_GOOD_SPOOL);
        assertThat(comparison.confidence().statements()).isEqualTo(18);
        assertThat(String.join(" ", text(comparison)))
                .contains(
                        "With 95 % confidence all statements hold at once (Bonferroni, 9 measures x 2 alternatives).");
    }

    @Test
    void fitsTheScreenWithManyAlternatives() {
        Comparison comparison = SampleComparisons.of(
                SampleComparisons.shift(-123_456),
                SampleComparisons.shift(0),
                SampleComparisons.shift(123_456),
                SampleComparisons.shift(9));

        assertThat(text(comparison)).allMatch(line -> line.length() <= TextReport.MOST_COLUMNS);
        assertThat(text(comparison))
                .anyMatch(line -> line.contains("D less A"))
                .anyMatch(line -> line.contains("E less A"));
    }

    private static List<String> text(Comparison comparison) {
        return new ComparisonText(comparison, Ink.PLAIN).body();
    }
}
