package spoolyard.core.gauge;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.core.plant.DiameterControl;

/** The loop of a line, and how its excursions are joined, by hand. */
class ToleranceStudyTest {
    /** 12 m at 1.55 m/s are 7.74 s, eight samples; 12 m at 1.64 m/s 7.32 s, seven; 0.1 m is one. */
    @Test
    void theDeadTimeIsTheBathOverTheSpeedInWholeSamples() {
        DiameterControl control = new DiameterControl(0.03, Map.of(), 0.006, 0.008, 300, 1, 12, 0.5, 0);
        DiameterControl near = new DiameterControl(0.03, Map.of(), 0.006, 0.008, 300, 1, 0.1, 0.5, 0);

        assertThat(GaugeLoop.of(control, 1.55).deadSamples()).isEqualTo(8);
        assertThat(GaugeLoop.of(control, 1.64).deadSamples()).isEqualTo(7);
        assertThat(GaugeLoop.of(near, 1.64).deadSamples()).isEqualTo(1);
        // the correlation falls to 1/e in 300 samples
        assertThat(Math.pow(GaugeLoop.of(control, 1.64).driftPerSample(), 300)).isCloseTo(Math.exp(-1), within(1e-9));
    }

    /**
     * White noise, outside with p = 0.1 (two-sided 1.644854 standard deviations; Abramowitz and Stegun 1964, from memory),
     * each sample by itself. With three samples to join by, an excursion begins where a sample is outside and the three before
     * it are not: p (1 - p)^3 = 0.0729 a second. Some 18 000 are seen, whose number varies less than that of a Poisson
     * process: four standard errors are below 4 / sqrt(18 000) = 3 % (level above 99.99 %).
     */
    @Test
    void excursionsThatAreCloserThanTheJoiningTimeAreOne() {
        GaugeLoop noise = new GaugeLoop(1, 1, 1, 0, 0.5, 0);

        ToleranceFinding finding =
                new ToleranceStudy(noise, 3, 250_000).of(List.of(1.644854), 7).get(0);

        assertThat(finding.shareOutside()).isCloseTo(0.1, within(1e-6));
        assertThat(finding.perRunningH()).isCloseTo(3600 * 0.0729, within(0.03 * 3600 * 0.0729));
    }
}
