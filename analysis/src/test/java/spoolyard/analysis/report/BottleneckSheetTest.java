package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;
import spoolyard.core.record.LineResult;
import spoolyard.core.record.LineState;
import spoolyard.core.record.QualityResult;
import spoolyard.core.record.RunResult;
import spoolyard.core.record.Turn;

/** The method itself is held to a worked example in {@code spoolyard.core.activity}. */
final class BottleneckSheetTest {
    private static final Setting SETTING = new Setting(SamplePlant.of(1, 1), SampleReports.clock());

    @Test
    void ranksLinesRolesAndFinishingStationsTogether() {
        RunReport report = SampleReports.of(2, 1, 3);

        List<Candidate> ranked = Candidate.ranked(report);

        assertThat(ranked).extracting(Candidate::kind).containsOnly("line", "crew", "finishing");
        assertThat(ranked).hasSize(2 + 3 + 2);
        assertThat(ranked).extracting(candidate -> -candidate.sharePct().mean()).isSorted();
    }

    @Test
    void leavesOutWhatWasNeverActive() {
        assertThat(column(BottleneckSheet.MEAN_ACTIVE, new Activity(Activity.Kind.CREW, "lead", 0, 0, 0, List.of())))
                .isNaN();
    }

    /** By hand: 168 h of run, 42 h alone and 21 h shifting are 25 % and 12.5 %; 63 h in 9 periods are 7 h each. */
    @Test
    void givesShareOfTheRunAndMeanPeriod() {
        long h = Ticks.PER_HOUR;
        List<Turn> turns = List.of(new Turn(0, 0, 30 * h, 40 * h), new Turn(50 * h, 61 * h, 73 * h, 73 * h));
        Activity line = new Activity(Activity.Kind.LINE, "L1", 63 * 3600, 9, 20 * 3600, turns);

        assertThat(column(BottleneckSheet.SOLE, line)).isEqualTo(25);
        assertThat(column(BottleneckSheet.SHIFTING, line)).isEqualTo(12.5);
        assertThat(column(BottleneckSheet.SHARE, line)).isEqualTo(37.5);
        assertThat(column(BottleneckSheet.MEAN_ACTIVE, line)).isEqualTo(7 * 60);
        assertThat(column(BottleneckSheet.LONGEST, line)).isEqualTo(20 * 60);
    }

    /** By hand: of 24 h, 2 h without material and 1 h without an order are 12.5 % starved; waiting for crew is not. */
    @Test
    void showsHowLongALineWasStarved() {
        assertThat(column(BottleneckSheet.STARVED, new Activity(Activity.Kind.LINE, "L1", 1, 1, 1, List.of())))
                .isCloseTo(12.5, within(1e-9));
        assertThat(column(BottleneckSheet.STARVED, new Activity(Activity.Kind.DRYER, "L1", 1, 1, 1, List.of())))
                .isNaN();
    }

    private static double column(Column<BottleneckSheet.Station> column, Activity activity) {
        LineResult line = OeeTest.line(
                Map.of(
                        LineState.RUNNING, 20.0,
                        LineState.WAITING_FOR_MATERIAL, 2.0,
                        LineState.NO_ORDER, 1.0,
                        LineState.WAITING_FOR_CREW, 1.0),
                0,
                0,
                0,
                0);
        RunResult plain = Runs.of(line);
        RunResult run = new RunResult(
                1,
                0,
                168 * Ticks.PER_HOUR,
                0,
                plain.lines(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                List.of(),
                plain.flow(),
                QualityResult.NONE,
                List.of(),
                List.of(),
                List.of(activity));
        return column.value()
                .applyAsDouble(BottleneckSheet.SHEET.items().apply(SETTING, run).get(0));
    }
}
