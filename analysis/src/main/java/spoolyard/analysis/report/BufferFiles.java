package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.buffer.CapacityCurve;
import spoolyard.analysis.buffer.Finding;
import spoolyard.analysis.buffer.LossMeasure;
import spoolyard.analysis.buffer.RareGain;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.OverflowCause;

/** The files of the results folder of a study of an accumulator. */
public final class BufferFiles implements ResultsFolder.Filling {
    /** Marks a summary and says which form it has. */
    public static final String FORMAT = "spoolyard-results/buffer-1";

    static final String CURVE = "curve.csv";
    static final String SEARCH = "search.csv";

    private final BufferReport report;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param pictures pictures by file name; may be empty
     */
    public BufferFiles(BufferReport report, Map<String, byte[]> pictures) {
        this.report = report;
        this.pictures = pictures;
    }

    @Override
    public void into(Path folder) throws IOException {
        CsvTable.write(folder.resolve(CURVE), curve());
        if (report.finding().isPresent()) {
            CsvTable.write(folder.resolve(SEARCH), search(report.finding().get()));
        }
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), JsonText.written(summary()));
    }

    private List<List<String>> curve() {
        List<List<String>> rows = new ArrayList<>();
        List<String> header = new ArrayList<>(List.of("capacity_m"));
        report.measures()
                .forEach(measure -> header.addAll(List.of(measure.column(), measure.column() + "_half_width")));
        for (OverflowCause cause : OverflowCause.values()) {
            header.add("overflow_" + cause.name().toLowerCase(Locale.ROOT) + "_pct_of_swaps");
        }
        header.add("dedicated_operator_overflow_pct");
        if (!report.netPerYear().isEmpty()) {
            header.addAll(List.of("net_per_year", "net_per_year_half_width"));
        }
        report.rare().ifPresent(rare -> header.addAll(List.of("overflows_seen", "counted_swaps", "swaps", "speed_up")));
        rows.add(header);
        report.curve().points().forEach(point -> rows.add(row(point)));
        return rows;
    }

    private List<String> row(CapacityCurve.Point point) {
        List<String> row = new ArrayList<>(List.of(Figures.cell(point.capacityM())));
        for (LossMeasure measure : report.measures()) {
            Interval loss = point.losses().get(measure);
            row.add(Figures.cell(loss.mean()));
            row.add(Figures.cell(loss.halfWidth().orElse(Double.NaN)));
        }
        for (OverflowCause cause : OverflowCause.values()) {
            row.add(Figures.cell(point.pctOfSwaps().get(cause)));
        }
        row.add(Figures.cell(report.operator().overflowPct(point.capacityM())));
        Optional.ofNullable(report.netPerYear().get(point.capacityM()))
                .ifPresent(net -> row.addAll(List.of(
                        Figures.cell(net.mean()), Figures.cell(net.halfWidth().orElse(Double.NaN)))));
        report.rare().ifPresent(rare -> {
            RareGain gain = rare.byCapacity().get(point.capacityM());
            row.addAll(List.of(
                    Figures.cell(gain.seen()),
                    Figures.cell(gain.countedSwaps()),
                    Figures.cell(gain.swaps()),
                    exactOrCell(rare.speedUp(point.capacityM()))));
        });
        return row;
    }

    /** Nothing where the number expected never varies, so that counting would never be as good. */
    private static String exactOrCell(double speedUp) {
        return Double.isInfinite(speedUp) ? "" : Figures.cell(speedUp);
    }

    private static List<List<String>> search(Finding finding) {
        String column = finding.target().measure().column();
        List<List<String>> rows = new ArrayList<>();
        rows.add(List.of("capacity_m", "verdict", column, column + "_half_width", "replications"));
        for (Finding.Tested tested : finding.tested()) {
            rows.add(List.of(
                    Figures.cell(tested.capacityM()),
                    tested.verdict().name().toLowerCase(Locale.ROOT),
                    Figures.cell(tested.estimate().mean()),
                    Figures.cell(tested.estimate().halfWidth().orElse(Double.NaN)),
                    Integer.toString(tested.replications())));
        }
        return rows;
    }

    private ObjectNode summary() {
        ObjectNode root = JsonText.opening(FORMAT, report.provenance());
        root.put("line", report.line().name());
        root.set("capacity_now_m", JsonText.number(report.line().accumulator().capacityM()));
        report.finding().ifPresent(finding -> answer(root.putObject("answer"), finding));
        ObjectNode knees = root.putObject("knee_m");
        for (LossMeasure measure : report.measures()) {
            report.curve().kneeM(measure).ifPresent(kneeM -> knees.set(measure.word(), JsonText.number(kneeM)));
        }
        names().forEach(root.putArray("files")::add);
        return root;
    }

    private static void answer(ObjectNode node, Finding finding) {
        node.put("measure", finding.target().measure().column());
        node.set("at_most", JsonText.number(finding.target().atMost()));
        node.set("level", JsonText.number(finding.plan().level()));
        node.put("kind", finding.answer().name().toLowerCase(Locale.ROOT));
        node.put("sentence", new BufferAnswer(finding).text());
        finding.meetsM().ifPresent(capacityM -> node.set("smallest_that_meets_m", JsonText.number(capacityM)));
        finding.missesM().ifPresent(capacityM -> node.set("largest_that_misses_m", JsonText.number(capacityM)));
    }

    private List<String> names() {
        List<String> names = new ArrayList<>(List.of(CURVE));
        report.finding().ifPresent(finding -> names.add(SEARCH));
        names.addAll(pictures.keySet());
        return names;
    }
}
