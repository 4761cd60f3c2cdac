package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.util.List;
import java.util.Map;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.experiment.Interval;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.record.LineState;

final class BottleneckSheetTest {
    /**
     * Source: the method of Roser, Nakano and Tanaka, WSC 2001; the numbers are constructed: M1 active from 0 to 10 and
     * 12 to 15, M2 from 4 to 18, M3 from 1 to 3 and 16 to 22, so mean active periods of 6.5, 14 and 4.
     */
    @Test
    void isTheMeanLengthOfTheActivePeriods() {
        assertThat(meanActiveMin(13, 2)).isEqualTo(6.5);
        assertThat(meanActiveMin(14, 1)).isEqualTo(14);
        assertThat(meanActiveMin(8, 2)).isEqualTo(4);
    }

    @Test
    void isUndefinedForAStationThatWasNeverActive() {
        assertThat(meanActiveMin(0, 0)).isNaN();
    }

    @Test
    void ranksLinesRolesAndFinishingStationsTogether() {
        RunReport report = SampleReports.of(2, 1, 3);

        List<Candidate> ranked = Candidate.ranked(report);

        assertThat(ranked).extracting(Candidate::kind).containsOnly("line", "crew", "finishing");
        assertThat(ranked).hasSize(2 + 3 + 2);
        assertThat(ranked)
                .extracting(candidate -> -candidate.meanActiveMin().mean())
                .isSorted();
    }

    /** Worked by hand: 3 h running and 1 h down are active, 2 h waiting and 18 h not scheduled are not: 4 h of 24 h. */
    @Test
    void countsWorkAndRepairAsActiveAndWaitingAsNot() {
        BottleneckSheet.Station station = BottleneckSheet.SHEET
                .items()
                .apply(
                        new Setting(SamplePlant.of(1, 1), SampleReports.clock()),
                        Runs.of(OeeTest.line(
                                Map.of(
                                        LineState.RUNNING, 3.0,
                                        LineState.DOWN, 1.0,
                                        LineState.WAITING_FOR_CREW, 2.0,
                                        LineState.NOT_SCHEDULED, 18.0),
                                0,
                                0,
                                0,
                                0)))
                .get(0);

        Interval share = Interval.of(
                new double[] {BottleneckSheet.ACTIVE_PCT.value().applyAsDouble(station)}, Interval.USUAL_LEVEL);
        assertThat(share.mean()).isCloseTo(100 * 4 / 24.0, within(1e-12));
        assertThat(station.meanActiveMin()).isEqualTo(240);
    }

    private static double meanActiveMin(double activeMin, long periods) {
        return new BottleneckSheet.Station("line", "M", activeMin * 60, periods, 22 * 60).meanActiveMin();
    }
}
