package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.net.URISyntaxException;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.EnumMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.TreeMap;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.RareGain;
import spoolyard.analysis.buffer.RareView;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.plant.Plant;
import spoolyard.core.record.OverflowCause;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/** Where rare overflows are drawn and how they are written, against places and limits worked by hand. */
final class RarePanelTest {
    private static final double SWAPS = 10_000;

    /** Mean and half-width in per cent at 60, 80, 100 m ... */
    private static BufferReport report(double[]... shares) throws ScenarioException, URISyntaxException {
        Path corner =
                Path.of(RarePanelTest.class.getResource("/corners/accumulator").toURI());
        Plant plant = ScenarioReader.read(corner, List.of()).plant();
        List<CapacityCurve.Point> points = new ArrayList<>();
        Map<Double, RareGain> gains = new TreeMap<>();
        for (int i = 0; i < shares.length; i++) {
            double capacityM = 60 + 20.0 * i;
            Map<LossMeasure, Interval> losses = new EnumMap<>(LossMeasure.class);
            for (LossMeasure measure : LossMeasure.values()) {
                losses.put(measure, new Interval(shares[i][0], OptionalDouble.of(shares[i][1]), 0.95, 10));
            }
            points.add(new CapacityCurve.Point(capacityM, losses, new EnumMap<>(OverflowCause.class)));
            gains.put(capacityM, new RareGain(SWAPS, 0, 0, 50, false));
        }
        return new BufferReport(
                new Provenance("0", "corner", "", List.of(), 1),
                plant,
                plant.lines().get(0),
                new CapacityCurve(points),
                Optional.empty(),
                10,
                Map.of(),
                Optional.of(new RareView(gains, 1)));
    }

    private static List<Double> y(XYChart chart, String series) {
        return toList(chart.getSeriesMap().get(series).getYData());
    }

    private static List<Double> toList(double... values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return list;
    }

    /** 1 %, 0.001 % and none: logarithms 0 and -3, then a mark at the lower edge, the decade of the least, -3. */
    @Test
    void drawsLogarithmsAndMarksWhereNoneIsExpected() throws Exception {
        XYChart chart =
                new RarePanel(report(new double[] {1, 0.1}, new double[] {1e-3, 1e-4}, new double[] {0, 0})).chart();

        assertThat(y(chart, "simulated").subList(0, 2)).containsExactly(0.0, -3.0);
        assertThat(chart.getStyler().getYAxisMin()).isEqualTo(-3);
        assertThat(chart.getStyler().getYAxisMax()).isEqualTo(2);
        XYSeries none = chart.getSeriesMap().get("none expected: 0");
        assertThat(toList(none.getXData())).containsExactly(100.0);
        assertThat(toList(none.getYData())).containsExactly(-3.0);
    }

    /** From 1 % +/- 0.9 % the band goes from log 0.1 to log 1.9; where the lower end is below 0 it goes to the edge. */
    @Test
    void drawsTheBandToTheLowerEdgeWhereItReachesZero() throws Exception {
        XYChart chart = new RarePanel(report(new double[] {1, 0.9}, new double[] {1e-3, 2e-3})).chart();

        List<Double> band = chart.getSeriesMap().values().stream()
                .filter(series -> series.getName().startsWith("95 % interval"))
                .findFirst()
                .map(series -> toList(series.getYData()))
                .orElseThrow();
        assertThat(band.get(0)).isCloseTo(Math.log10(1.9), within(1e-12));
        assertThat(band.get(1)).isCloseTo(Math.log10(3e-3), within(1e-12));
        assertThat(band.get(2)).isEqualTo(-3);
        assertThat(band.get(3)).isCloseTo(-1, within(1e-12));
    }

    @Test
    void isOnlyForChancesThatAStraightAxisHides() throws Exception {
        assertThat(RarePanel.isFor(report(new double[] {1, 0.1}, new double[] {0.009, 0.001})))
                .isTrue();
        assertThat(RarePanel.isFor(report(new double[] {1, 0.1}, new double[] {0.01, 0.001})))
                .isFalse();
    }

    /**
     * None in 10 000: at most 1 - 0.05^(1/10000) = 2.9953e-4, 299.5 of a million; the rule of three says 300 (Hanley and
     * Lippman-Hand, JAMA 249 (1983) 1743-1745).
     */
    @Test
    void saysNoneInSoManyWithTheLimitThatTheirNumberSets() throws Exception {
        BufferReport report = report(new double[] {1, 0.1}, new double[] {0, 0});
        List<String> lines = new RareTable(report, report.rare().orElseThrow(), Ink.PLAIN).lines();

        assertThat(lines.get(3)).contains("none in 10 000").doesNotContain("0.00000 +/- 0.00000");
        assertThat(String.join("\n", lines))
                .contains("none in 10 000: with 95 % confidence at most 299.5 of a million");
        assertThat(RareTable.mostOfAMillion(SWAPS)).isCloseTo(1e6 * (1 - Math.pow(0.05, 1e-4)), within(1e-4));
        assertThat(RareTable.mostOfAMillion(SWAPS)).isCloseTo(1e6 * 3 / SWAPS, within(0.5));
    }
}
