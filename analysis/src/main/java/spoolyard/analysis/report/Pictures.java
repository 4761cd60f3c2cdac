package spoolyard.analysis.report;

import java.io.IOException;
import java.io.UncheckedIOException;
import java.util.LinkedHashMap;
import java.util.Map;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.internal.chartpart.Chart;

/** The pictures of a report, as PNG. Needs no screen, but a Java that has fonts. */
public final class Pictures {
    private static final int FEWEST_BY_TIME = 4;
    private static final int MOST_BY_TIME = 100;

    private Pictures() {}

    /**
     * Draws all pictures.
     *
     * @param report what
     * @return PNG by file name
     */
    public static Map<String, byte[]> of(RunReport report) {
        Map<String, byte[]> pictures = new LinkedHashMap<>();
        int shifts = FullShifts.of(report.setting().plant()).size();
        if (shifts > 0) {
            boolean isReadableByTime = shifts >= FEWEST_BY_TIME && shifts <= MOST_BY_TIME;
            pictures.put(
                    "spools-per-shift.png",
                    png(isReadableByTime ? new ShiftChart(report).chart() : new ShiftNameChart(report).chart()));
        }
        pictures.put("scrap-by-cause.png", png(new ScrapChart(report).chart()));
        pictures.put("losses.png", png(new LossChart(report).chart()));
        pictures.put("time-by-state.png", png(new StateChart(report).chart()));
        if (!BottleneckTrace.of(report.firstActivity()).stations().isEmpty()) {
            pictures.put(BottleneckChart.FILE, BottleneckChart.png(report));
        }
        return pictures;
    }

    /**
     * Encodes a picture.
     *
     * @param chart the picture
     * @return PNG
     */
    static byte[] png(Chart<?, ?> chart) {
        try {
            return BitmapEncoder.getBitmapBytes(chart, BitmapEncoder.BitmapFormat.PNG);
        } catch (IOException impossibleInMemory) {
            throw new UncheckedIOException(impossibleInMemory);
        }
    }
}
