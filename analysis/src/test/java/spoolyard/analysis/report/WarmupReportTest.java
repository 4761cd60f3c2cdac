package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;

import java.util.List;
import java.util.function.IntToDoubleFunction;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.SamplePlant;

final class WarmupReportTest {
    private static final int SHIFTS = 60;

    private final Setting setting = new Setting(SamplePlant.of(2, 4), SampleReports.clock());

    /** Begins 40 spools low for five shifts; the noise is the same in each replication but for its sign. */
    @Test
    void namesTheShiftsToLeaveOut() {
        List<String> lines = report(i -> i < 5 ? 60 : 100).lines(Ink.PLAIN);

        assertThat(lines.get(0)).startsWith("Warm-up: MSER-5 cuts the first 5 full shifts, until 2027-03-02 22:00.");
        assertThat(lines).anyMatch(line -> line.startsWith("After the warm-up         100.0 +/- "));
        assertThat(String.join(" ", lines)).contains("No sign that the two halves after the warm-up differ.");
    }

    @Test
    void findsNoWarmUpWhereThereIsNone() {
        assertThat(report(i -> 100).lines(Ink.PLAIN).get(0)).isEqualTo("No warm-up found: MSER-5 cuts nothing.");
    }

    /** The orders run out after two thirds of the run: the second half makes 64 spools fewer a shift. */
    @Test
    void noticesThatThePlantRunsOutOfOrders() {
        String text = String.join(" ", report(i -> i < 40 ? 100 : 4).lines(Ink.PLAIN));

        assertThat(text).contains("second half of the run makes 64 spools a shift fewer than the first");
    }

    @Test
    void saysThatARiseWithoutEndHasNoEndInSight() {
        assertThat(report(i -> 10.0 * i).lines(Ink.PLAIN).get(0)).startsWith("No end of the warm-up in sight");
    }

    @Test
    void fitsTheScreen() {
        assertThat(report(i -> 1e6 - 1e4 * i).lines(Ink.PLAIN))
                .allMatch(line -> line.length() <= TextReport.MOST_COLUMNS);
    }

    private WarmupReport report(IntToDoubleFunction level) {
        List<double[]> series = IntStream.range(0, 4)
                .mapToObj(replication -> IntStream.range(0, SHIFTS)
                        .mapToDouble(i -> level.applyAsDouble(i) + noise(replication, i))
                        .toArray())
                .toList();
        return new WarmupReport(setting, series, 6);
    }

    /** Of mean 0 over ten shifts and over the four replications. */
    private static double noise(int replication, int shift) {
        double size = shift % 5 - 2 + (shift % 10 < 5 ? 0.1 : -0.1);
        return replication % 2 == 0 ? size : -size;
    }
}
