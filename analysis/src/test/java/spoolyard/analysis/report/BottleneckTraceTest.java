package spoolyard.analysis.report;

import static org.assertj.core.api.Assertions.assertThat;
import static org.assertj.core.api.Assertions.within;

import java.awt.Color;
import java.awt.image.BufferedImage;
import java.io.ByteArrayInputStream;
import java.io.IOException;
import java.util.List;
import java.util.stream.IntStream;
import javax.imageio.ImageIO;
import org.junit.jupiter.api.Test;
import spoolyard.analysis.sample.PlausibleRuns;
import spoolyard.analysis.sample.SamplePlant;
import spoolyard.core.activity.ActivePeriods;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Activity;

final class BottleneckTraceTest {
    private static final long H = Ticks.PER_HOUR;

    /**
     * The example worked by hand in {@code ActivePeriodsTest}, in hours: M1 is active from 0 to 10 and 12 to 15, M2 from 4
     * to 18, M3 from 1 to 3 and 16 to 22.
     */
    private static List<Activity> worked() {
        ActivePeriods periods = new ActivePeriods();
        IntStream.rangeClosed(1, 3).forEach(i -> periods.add(Activity.Kind.LINE, "M" + i));
        long[][] changes = {
            {0, 1, 0},
            {2, 1, 1},
            {2, 0, 3},
            {1, 1, 4},
            {0, 0, 10},
            {0, 1, 12},
            {0, 0, 15},
            {2, 1, 16},
            {1, 0, 18},
            {2, 0, 22}
        };
        for (long[] change : changes) {
            periods.set((int) change[0], change[1] == 1, change[2] * H);
        }
        return periods.close(24 * H);
    }

    /** By hand: M1 alone to 4, with M2 to 10, M2 alone to 16, with M3 to 18, M3 alone to 22. */
    @Test
    void tellsWhoWasTheBottleneckWhen() {
        List<List<String>> rows = BottleneckTrace.of(worked()).table(SampleReports.clock());

        assertThat(rows.subList(1, rows.size()))
                .extracting(row -> String.join(" ", row.get(1), row.get(2), row.get(5), row.get(6)))
                .containsExactly(
                        "M1 sole 0 4",
                        "M2 shifting 4 6",
                        "M1 shifting 4 6",
                        "M2 sole 10 6",
                        "M2 shifting 16 2",
                        "M3 shifting 16 2",
                        "M3 sole 18 4");
        assertThat(rows.get(4)).startsWith("line", "M2", "sole", "2027-03-01 16:00:00.000", "2027-03-01 22:00:00.000");
    }

    @Test
    void putsTheStationFirstThatWasTheBottleneckForLongest() {
        assertThat(BottleneckTrace.of(worked()).stations())
                .extracting(Activity::name)
                .containsExactly("M2", "M1", "M3");
    }

    /** By hand: of 24 h M2 is alone for 6 and shifts for 8; M1, below it, is alone for 4. Ends are rounded to a pixel. */
    @Test
    void drawsEachTurnAsLongAsItLasted() throws IOException {
        Setting setting = new Setting(SamplePlant.ofHours(3, 24), SampleReports.clock());
        ReplicationSummary any = new ReplicationSummary(
                new Summariser(setting)
                        .apply(new PlausibleRuns(setting.plant(), 1).replicate(0))
                        .tables(),
                worked());
        RunReport report = RunReport.of(
                new Provenance("0.1.0", "sample", "sha256:" + "0".repeat(64), List.of(), 1), setting, List.of(any));

        BufferedImage image = ImageIO.read(new ByteArrayInputStream(BottleneckChart.png(report)));

        double pixelsAnHour = count(image, 150, Palette.PETROL) / 6.0;
        assertThat(count(image, 150, Palette.MUSTARD)).isCloseTo((int) Math.round(8 * pixelsAnHour), within(1));
        assertThat(count(image, 150 + 56, Palette.PETROL)).isCloseTo((int) Math.round(4 * pixelsAnHour), within(1));
    }

    private static int count(BufferedImage image, int y, Color colour) {
        return (int) IntStream.range(0, image.getWidth())
                .filter(x -> image.getRGB(x, y) == colour.getRGB())
                .count();
    }
}
