package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYSeries;
import spoolyard.core.gauge.ToleranceFinding;
import spoolyard.core.plant.Law;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.ScenarioReader;

/** Where curves of a tolerance leave the picture, which shows no less than 0.001 %. */
final class ToleranceChartTest {
    private static ToleranceReport report(double... perHour) throws Exception {
        Plant plant = ScenarioReader.read(Path.of("../scenarios/orrenvale"), List.of())
                .plant();
        Line line = plant.lines().get(0);
        ToleranceCase study = ToleranceCase.of(plant, line).get(0);
        List<ToleranceFinding> findings = new ArrayList<>();
        for (int i = 0; i < perHour.length; i++) {
            Law length = new Law.Fixed(10);
            findings.add(new ToleranceFinding(
                    0.01 * (i + 1), 0.01, perHour[i] * 10 / 3600, perHour[i], length, perHour[i] > 0 ? 100 : 0));
        }
        return new ToleranceReport(study, findings, 100);
    }

    private static List<XYSeries> marks(XYChart chart) {
        return chart.getSeriesMap().values().stream()
                .filter(series -> series.getName().contains("all below"))
                .toList();
    }

    /** None at 0.03 mm: the curve ends above the edge, and the mark stands at the lower edge at 0.03 mm, log 0.001 = -3. */
    @Test
    void marksWhereACurveHasNothingMore() throws Exception {
        XYChart chart = ToleranceChart.chart(List.of(report(20, 10, 0)));

        assertThat(chart.getStyler().getYAxisMin()).isEqualTo(-3);
        assertThat(marks(chart)).hasSize(1);
        assertThat(marks(chart).get(0).getXData()).containsExactly(0.03);
        assertThat(marks(chart).get(0).getYData()).containsExactly(-3);
        assertThat(marks(chart).get(0).isShowInLegend()).isFalse();
    }

    /** Nothing lost at all: a mark alone, which then stands in the legend. */
    @Test
    void isAMarkAloneWhereNothingIsLost() throws Exception {
        XYChart chart = ToleranceChart.chart(List.of(report(0, 0, 0)));

        assertThat(chart.getSeriesMap()).hasSize(1);
        assertThat(marks(chart).get(0).isShowInLegend()).isTrue();
        assertThat(marks(chart).get(0).getXData()).containsExactly(0.01);
    }

    @Test
    void hasNoMarkWhereAllIsAboveTheEdge() throws Exception {
        assertThat(marks(ToleranceChart.chart(List.of(report(20, 10, 5))))).isEmpty();
    }
}
