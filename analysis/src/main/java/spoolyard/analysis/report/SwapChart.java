package spoolyard.analysis.report;

import java.awt.BasicStroke;
import java.awt.Color;
import java.awt.Font;
import java.awt.Graphics2D;
import java.awt.image.BufferedImage;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import org.knowm.xchart.AnnotationText;
import org.knowm.xchart.BitmapEncoder;
import org.knowm.xchart.XYChart;
import org.knowm.xchart.XYChartBuilder;
import org.knowm.xchart.XYSeries;
import spoolyard.analysis.buffer.Stint;
import spoolyard.analysis.buffer.SwapStory;
import spoolyard.core.quantity.Ticks;

/** One overflow: the level of the accumulator against time, and below it what everybody did. */
public final class SwapChart {
    /** Name of its file. */
    public static final String FILE = "overflow.png";

    private static final int LEVEL_HEIGHT = 420;
    private static final int ROW = 46;
    private static final int FRAME = 130;
    private static final int AXIS_MARGIN = 110;
    private static final double BEFORE_S = 30;
    private static final double NAME_SHARE = 0.12;
    private static final double LABEL = 0.4;
    private static final float LINE = 2.4f;
    private static final float BAR = 12f;
    private static final Map<String, Color> COLOURS = colours();

    private final SwapReport report;
    private final SwapStory story;
    private final LevelTrace trace;
    private final double lastS;

    /**
     * Prepares to draw.
     *
     * @param report what; it has a story
     */
    public SwapChart(SwapReport report) {
        this.report = report;
        this.story = report.story().orElseThrow();
        this.trace = LevelTrace.of(story.swap(), report.line());
        List<LevelTrace.Point> points = trace.points();
        this.lastS = Math.max(seconds(points.get(points.size() - 1).tick()), BEFORE_S);
    }

    private static Map<String, Color> colours() {
        Map<String, Color> colours = new LinkedHashMap<>();
        colours.put("works", Palette.PETROL);
        colours.put("walks", Palette.MUSTARD);
        colours.put("takes a break", Palette.CORAL);
        colours.put("is free", Palette.MIST);
        return colours;
    }

    /**
     * Draws it.
     *
     * @return PNG
     */
    public byte[] png() {
        List<String> people = people();
        BufferedImage level = BitmapEncoder.getBufferedImage(level());
        int crewHeight = people.isEmpty() ? 0 : FRAME + ROW * people.size();
        BufferedImage whole = new BufferedImage(ChartLook.WIDTH, LEVEL_HEIGHT + crewHeight, BufferedImage.TYPE_INT_RGB);
        Graphics2D graphics = whole.createGraphics();
        graphics.drawImage(level, 0, 0, null);
        if (crewHeight > 0) {
            graphics.drawImage(BitmapEncoder.getBufferedImage(crew(people, crewHeight)), 0, LEVEL_HEIGHT, null);
        }
        graphics.dispose();
        return Png.of(whole);
    }

    private List<String> people() {
        return story.present(story.swap().fullTick() - Ticks.ofSeconds(BEFORE_S), tick(lastS));
    }

    private XYChart level() {
        XYChart chart = chart(
                "Line " + report.line().name() + ", "
                        + report.setting().clock().minute(story.swap().fullTick()) + ": accumulator, m above home",
                LEVEL_HEIGHT);
        chart.getStyler().setYAxisMin(0.0);
        double roomM = report.line().accumulator().roomM();
        chart.getStyler().setYAxisMax(roomM * 1.15);
        List<Double> x =
                trace.points().stream().map(point -> seconds(point.tick())).toList();
        List<Double> y = trace.points().stream().map(LevelTrace.Point::levelM).toList();
        ChartLook.line(chart, "level", x, y, new ChartLook.Pen(Palette.PETROL, LINE));
        ChartLook.line(
                chart, "room", List.of(-BEFORE_S, lastS), List.of(roomM, roomM), new ChartLook.Pen(Palette.RED, LINE));
        if (story.swap().begunTick() != Ticks.NEVER) {
            double begunS = seconds(story.swap().begunTick());
            ChartLook.line(
                    chart,
                    "work begins",
                    List.of(begunS, begunS),
                    List.of(0.0, roomM),
                    new ChartLook.Pen(Palette.MUSTARD, LINE));
        }
        if (story.swap().turnedTick() != Ticks.NEVER) {
            double turnedS = seconds(story.swap().turnedTick());
            ChartLook.line(
                    chart,
                    "winder turns",
                    List.of(turnedS, turnedS),
                    List.of(0.0, roomM),
                    new ChartLook.Pen(Palette.INDIGO, LINE));
        }
        return chart;
    }

    private XYChart crew(List<String> people, int height) {
        XYChart chart = chart("What everybody did; seconds after the spool was full", height);
        chart.getStyler().setYAxisMin(0.3);
        chart.getStyler().setYAxisMax(people.size() + 0.7);
        chart.getStyler().setPlotGridHorizontalLinesVisible(false);
        chart.setCustomYAxisTickLabelsFormatter(at -> " ");
        for (int i = 0; i < people.size(); i++) {
            bars(chart, people.get(i), people.size() - i);
            chart.addAnnotation(new AnnotationText(people.get(i), -BEFORE_S - namesS() / 2, people.size() - i, false));
        }
        return chart;
    }

    private void bars(XYChart chart, String who, double height) {
        long from = tick(-BEFORE_S);
        long to = tick(lastS);
        for (Stint stint : story.of(who, from, to)) {
            Color colour = COLOURS.get(stint.what());
            if (colour == null) {
                continue;
            }
            double startS = Math.max(-BEFORE_S, seconds(stint.startTick()));
            double endS = Math.min(lastS, seconds(Math.min(stint.endTick(), to)));
            String name = chart.getSeriesMap().values().stream()
                            .anyMatch(old -> old.getLabel().equals(stint.what()))
                    ? who + " " + stint.startTick()
                    : stint.what();
            XYSeries series = ChartLook.line(
                    chart, name, List.of(startS, endS), List.of(height, height), new ChartLook.Pen(colour, BAR));
            series.setLineStyle(new BasicStroke(BAR, BasicStroke.CAP_BUTT, BasicStroke.JOIN_MITER));
            series.setShowInLegend(name.equals(stint.what()));
            label(chart, stint, (startS + endS) / 2, height, endS - startS);
        }
    }

    /** Only where the bar is long enough for it. */
    private void label(XYChart chart, Stint stint, double atS, double height, double lengthS) {
        double letters = (ChartLook.WIDTH - 2 * AXIS_MARGIN) * lengthS / (lastS + BEFORE_S + namesS()) / 8;
        if (!stint.detail().isEmpty() && stint.detail().length() < letters) {
            chart.addAnnotation(new AnnotationText(stint.detail(), atS, height + LABEL, false));
        }
    }

    private XYChart chart(String title, int height) {
        XYChart chart = new XYChartBuilder()
                .width(ChartLook.WIDTH)
                .height(height)
                .title(title)
                .build();
        ChartLook.dress(chart.getStyler());
        chart.getStyler().setAxisTitlesVisible(false);
        chart.getStyler().setYAxisLeftWidthHint(AXIS_MARGIN);
        chart.getStyler().setXAxisMin(-BEFORE_S - namesS());
        chart.getStyler().setXAxisMax(lastS);
        chart.getStyler().setxAxisTickLabelsFormattingFunction(atS -> atS < -BEFORE_S ? " " : ChartLook.number(atS));
        chart.getStyler().setAnnotationTextFontColor(Palette.TEXT);
        chart.getStyler().setAnnotationTextFont(new Font(Font.SANS_SERIF, Font.PLAIN, 12));
        return chart;
    }

    /** Room for the names of the people, to the left of the first instant. */
    private double namesS() {
        return NAME_SHARE * (lastS + BEFORE_S);
    }

    private double seconds(long tick) {
        return Ticks.toSeconds(tick - story.swap().fullTick());
    }

    private long tick(double seconds) {
        return story.swap().fullTick() + Math.round(seconds * Ticks.PER_SECOND);
    }
}
