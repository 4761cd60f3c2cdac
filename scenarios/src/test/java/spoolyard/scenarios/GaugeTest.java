package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.core.plant.DiameterControl;
import spoolyard.core.plant.Gauge;
import spoolyard.core.plant.Law;
import spoolyard.scenarios.check.ToleranceKind;
import spoolyard.scenarios.fault.Warning;

final class GaugeTest {
    @TempDir
    private Path parent;

    private ScenarioFolder folder;

    @BeforeEach
    void copy() {
        folder = ScenarioFolder.everything(parent);
    }

    private static Gauge gauge(Scenario scenario, int line) {
        return scenario.plant().lines().get(line).gauge().orElseThrow();
    }

    private static List<String> tight(Scenario scenario) {
        return scenario.warnings().stream()
                .filter(warning -> warning.kind() == Warning.Kind.TOLERANCE_TOO_TIGHT)
                .map(Warning::text)
                .toList();
    }

    @Test
    void readsExcursionsAsTheyAreGiven() {
        Gauge gauge = gauge(folder.read(), 1);

        Gauge.Excursions given = Gauge.Excursions.ofAll(new Law.Exponential(3 * 3600), new Law.Lognormal(21, 1));
        assertThat(gauge).isEqualTo(new Gauge(List.of(given), new Gauge.Policy.BGrade(), Optional.empty()));
    }

    @Test
    void derivesExcursionsForEveryProductOfTheLine() {
        Gauge gauge = gauge(folder.read("/lines/L1/gauge/diameter/tolerance=20 um"), 0);

        DiameterControl control = gauge.control().orElseThrow();
        assertThat(gauge.policy()).isEqualTo(new Gauge.Policy.Flag(0.3));
        assertThat(control.toleranceMm("PLA")).isEqualTo(0.02);
        assertThat(control.toleranceMm("PETG")).isEqualTo(0.05);
        // PETG keeps 7 standard deviations: no excursion in a hundred years, so no clock for it.
        assertThat(gauge.excursions()).hasSize(1);
        Gauge.Excursions ofPla = gauge.excursions().get(0);
        assertThat(ofPla.polymer()).isEqualTo("PLA");
        assertThat(ofPla.diameterMm()).isEqualTo(1.75);
        assertThat(ofPla.lengthS().mean()).isBetween(1.0, 2.0);
    }

    @Test
    void derivesTheRateOfTheNormalLawWhereThereIsNoDriftAndNoCorrection() {
        Gauge gauge = gauge(
                folder.read("/lines/L1/gauge/diameter={tolerance: 0.03 mm, spread: 0.01 mm, bath: 12 m, gain: 0}"), 0);

        // White noise beyond 3 standard deviations: p = 0.0026998 (Abramowitz and Stegun, table 26.1, from memory).
        // Runs
        // follow each other after 1 / p seconds on average, the exits without joining.
        Law untilNext = gauge.excursions().get(0).untilNextS();
        assertThat(untilNext).isInstanceOf(Law.Exponential.class);
        assertThat(untilNext.mean()).isCloseTo(1 / 0.0026998, within(0.6));
    }

    @Test
    void warnsOfAToleranceThatTheLineDoesNotKeep() {
        assertThat(tight(folder.read())).isEmpty();
        assertThat(tight(folder.read("/lines/L1/gauge/diameter/tolerance=0.02 mm")))
                .singleElement()
                .satisfies(text -> assertThat(text)
                        .contains("line L1 with PLA 1.75 mm leaves its tolerance of 0.020 mm")
                        .endsWith(" % of spools of 1 kg are hit."));
    }

    @Test
    void aLineWithoutTheKeyHasNoGauge() {
        assertThat(folder.read("/lines/L2/gauge=null").plant().lines().get(1).gauge())
                .isEmpty();
    }

    @Test
    void readsATypedTolerance() {
        assertThat(ToleranceKind.parse("\u00b120 um")).hasValue(0.02);
        assertThat(ToleranceKind.parse(" 0.02 mm ")).hasValue(0.02);
        assertThat(ToleranceKind.parse("0.02")).isEmpty();
        assertThat(ToleranceKind.parse("2 mm")).isEmpty();
        assertThat(ToleranceKind.parse("0 mm")).isEmpty();
    }
}
