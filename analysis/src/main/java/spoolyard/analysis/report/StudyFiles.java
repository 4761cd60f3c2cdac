package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.BufferedWriter;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spoolyard.analysis.experiment.BestSubset;
import spoolyard.analysis.experiment.Interval;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.Variation;

/** The files of the results folder of a study; its journal moves along. */
public final class StudyFiles implements ResultsFolder.Filling {
    /** Marks a summary and says which form it has. */
    public static final String FORMAT = "spoolyard-results/study-1";

    static final String POINTS = "points.csv";

    private final StudyReport report;
    private final Path journal;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param journal the finished journal
     * @param pictures pictures by file name; may be empty
     */
    public StudyFiles(StudyReport report, Path journal, Map<String, byte[]> pictures) {
        this.report = report;
        this.journal = journal;
        this.pictures = pictures;
    }

    @Override
    public void into(Path folder) throws IOException {
        try (BufferedWriter out = Files.newBufferedWriter(folder.resolve(POINTS))) {
            CsvTable.FORMAT.printRecord(out, header().toArray());
            for (int point = 0; point < report.points().size(); point++) {
                for (Measure measure : report.measures()) {
                    CsvTable.FORMAT.printRecord(out, row(point, measure).toArray());
                }
            }
        }
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.copy(journal, folder.resolve(StudyJournal.FILE));
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), JsonText.written(summary()));
    }

    private List<String> header() {
        List<String> header = new ArrayList<>(List.of("point"));
        report.factors().forEach(factor -> header.add(factor.pointer()));
        header.addAll(List.of("measure", "mean", "half_width", "n"));
        return header;
    }

    private List<String> row(int point, Measure measure) {
        List<String> row = new ArrayList<>(List.of(Integer.toString(point + 1)));
        report.points().get(point).forEach(level -> row.add(level.label()));
        Interval interval = report.interval(point, measure);
        row.add(measure.fileName());
        row.add(Figures.cell(interval.mean()));
        row.add(Figures.cell(interval.halfWidth().orElse(Double.NaN)));
        row.add(Integer.toString(interval.count()));
        return row;
    }

    private ObjectNode summary() {
        ObjectNode root = JsonText.opening(FORMAT, report.provenance());
        root.put("design", report.design().fileName());
        root.put("points", report.points().size());
        root.put("replications", report.replications());
        report.factors().forEach(factor -> root.withArray("factors").add(factor(factor)));
        report.measures().forEach(measure -> root.withArray("measures").add(measure.fileName()));
        root.set("best", best());
        ArrayNode names = root.putArray("files");
        List.of(POINTS, StudyJournal.FILE).forEach(names::add);
        pictures.keySet().forEach(names::add);
        return root;
    }

    private static ObjectNode factor(Variation factor) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("pointer", factor.pointer());
        node.put("levels", factor.levels().described());
        return node;
    }

    private ObjectNode best() {
        BestSubset subset = report.best();
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        node.put("measure", report.measure().fileName());
        node.put("is_more_better", report.measure().isMoreBetter());
        node.set("confidence_level", JsonText.number(subset.level()));
        if (subset.best() >= 0) {
            node.put("point", subset.best() + 1);
            node.setAll(JsonText.interval(report.interval(subset.best(), report.measure())));
            ObjectNode values = node.putObject("values");
            List<Level> levels = report.points().get(subset.best());
            for (int i = 0; i < levels.size(); i++) {
                values.put(report.factors().get(i).pointer(), levels.get(i).value());
            }
        }
        ArrayNode members = node.putArray("points_not_told_from_best");
        subset.members().forEach(point -> members.add(point + 1));
        return node;
    }
}
