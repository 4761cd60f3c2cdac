package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

final class LossTargetTest {
    @ParameterizedTest
    @CsvSource({
        "overflow <= 0.5% of swaps, OVERFLOW, 0.5",
        "overflow<=2 %, OVERFLOW, 2",
        "Waste <= 1.25 kg per shift, WASTE, 1.25",
        "lost <= 5 min per shift, LOST, 5",
        "lost <= 5 minutes a shift, LOST, 5",
        "cost <= 20 per shift, COST, 20",
        "cost <= 20 EUR per shift, COST, 20"
    })
    void understandsWhatAPersonTypes(String text, LossMeasure measure, double atMost) {
        assertThat(LossTarget.parse(text)).contains(new LossTarget(measure, atMost));
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "",
                "overflow",
                "overflow < 0.5 %",
                "overflow <= -1 %",
                "overflow <= 101 %",
                "overflow <= 0.5 kg per shift",
                "waste <= 2 %",
                "waste <= 2 kg per day",
                "scrap <= 2 kg per shift",
                "waste <= 2 kg per shift or so"
            })
    void refusesAnythingElse(String text) {
        assertThat(LossTarget.parse(text)).isEmpty();
    }

    @Test
    void isMissedByWhatExceedsIt() {
        LossTarget target = new LossTarget(LossMeasure.OVERFLOW, 0.5);

        assertThat(target.excess(SketchedLoss.of(200, 1))).isZero();
        assertThat(target.excess(SketchedLoss.of(100, 1))).isEqualTo(50);
    }
}
