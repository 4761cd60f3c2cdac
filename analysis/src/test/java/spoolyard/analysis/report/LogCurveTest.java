package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;

/** Curves on a logarithmic axis against crossings worked by hand. */
class LogCurveTest {
    private static final double FLOOR = 1e-3;

    @Test
    void leavesThroughTheLowerEdgeWhereTheLogarithmDoes() {
        LogCurve curve = LogCurve.of(List.of(1.0, 2.0, 3.0), List.of(10.0, 1e-2, 1e-5), FLOOR);

        // From 10^-2 to 10^-5 the logarithm falls by 3; the edge 10^-3 is a third of the way.
        assertThat(curve.x()).hasSize(4);
        assertThat(curve.x().get(2)).isCloseTo(2 + 1 / 3.0, within(1e-12));
        assertThat(curve.y().subList(0, 3)).containsExactly(1.0, -2.0, -3.0);
        assertThat(curve.y().get(3)).isNaN();
        assertThat(curve.below()).containsExactly(3.0);
    }

    @Test
    void endsAtTheLastPointAboveZero() {
        LogCurve curve = LogCurve.of(List.of(1.0, 2.0, 3.0), List.of(10.0, 0.0, 1.0), FLOOR);

        assertThat(curve.x()).containsExactly(1.0, 2.0, 3.0);
        assertThat(curve.y()).containsExactly(1.0, Double.NaN, 0.0);
        assertThat(curve.below()).containsExactly(2.0);
    }

    @Test
    void comesBackThroughTheLowerEdge() {
        LogCurve curve = LogCurve.of(List.of(0.0, 1.0), List.of(1e-5, 1e-1), FLOOR);

        assertThat(curve.x()).containsExactly(0.0, 0.5, 1.0);
        assertThat(curve.y()).containsExactly(Double.NaN, -3.0, -1.0);
        assertThat(curve.below()).containsExactly(0.0);
    }

    @Test
    void writesEachPowerOfTenWhereItStands() {
        XYChart chart = new XYChartBuilder().width(600).height(400).build();
        ChartLook.dress(chart.getStyler());

        LogCurve.axis(chart.getStyler(), 1e-3, 100, ChartLook::number);

        assertThat(chart.getStyler().getYAxisMin()).isEqualTo(-3);
        assertThat(chart.getStyler().getYAxisMax()).isEqualTo(2);
        assertThat(List.of(-3.0, -0.5, 0.0, 1.0))
                .extracting(chart.getStyler().getyAxisTickLabelsFormattingFunction())
                .containsExactly("0.001", " ", "1", "10");
        assertThat(chart.getStyler().isYAxisLogarithmic()).isFalse();
    }

    @Test
    void writesChancesAsOneIn() {
        assertThat(LogCurve.oneIn(100)).isEqualTo("1 in 1");
        assertThat(LogCurve.oneIn(0.01)).isEqualTo("1 in 10 000");
        assertThat(LogCurve.oneIn(1e-5)).isEqualTo("1 in 10 million");
        assertThat(LogCurve.oneIn(1e-8)).isEqualTo("1 in 10 billion");
        assertThat(LogCurve.oneIn(1e-12)).isEqualTo("1 in 1e14");
    }
}
