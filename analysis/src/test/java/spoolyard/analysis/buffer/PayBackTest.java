package spoolyard.analysis.buffer;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.plant.Line;
import spoolyard.core.quantity.Ticks;

final class PayBackTest {
    private static Loss costs(double money) {
        Loss loss = SketchedLoss.of(100, 1);
        return new Loss(1, loss.swaps(), loss.overflows(), loss.overflowsByCause(), 0, 0, money);
    }

    /**
     * Hand: runs of 365.25 / 10 days, so 10 a year; savings of 30 and 50 are 300 and 500 a year, mean 400, standard deviation
     * 141.42; 20 m more of each strand at 15 a metre over 5 years are 60 a year and strand. t(0.975; 1) = 12.7062:
     * half-width 12.7062 x 141.42 / sqrt 2 = 1270.62.
     */
    @Test
    void isWhatIsSavedLessWhatTheMetresCost() {
        Line line = SamplePlant.of(1, 1).lines().get(0);
        PayBack payBack = new PayBack(15, 1 / 5.0, line, Math.round(365.25 * 24 / 10 * Ticks.PER_HOUR));

        Interval net = payBack.netPerYear(
                List.of(costs(100), costs(120)),
                List.of(costs(70), costs(70)),
                line.accumulator().capacityM() + 20);

        assertThat(net.mean()).isCloseTo(400 - 60 * line.strands(), within(1e-6));
        assertThat(net.halfWidth().orElseThrow()).isCloseTo(1270.62, within(0.01));
    }
}
