package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import spoolyard.analysis.experiment.Standing;

/** The files of the results folder of a selection. */
public final class SelectionFiles implements ResultsFolder.Filling {
    /** Marks a summary and says which form it has. */
    public static final String FORMAT = "spoolyard-results/selection-1";

    static final String RACE = "race.csv";

    private static final List<String> HEADER =
            List.of("replications", "letter", "alternative", "mean", "dropped_beyond", "dropped");

    private final SelectionReport report;
    private final Map<String, byte[]> pictures;

    /**
     * Prepares to write.
     *
     * @param report what
     * @param pictures pictures by file name; may be empty
     */
    public SelectionFiles(SelectionReport report, Map<String, byte[]> pictures) {
        this.report = report;
        this.pictures = pictures;
    }

    @Override
    public void into(Path folder) throws IOException {
        CsvTable.write(folder.resolve(RACE), race());
        for (Map.Entry<String, byte[]> picture : pictures.entrySet()) {
            Files.write(folder.resolve(picture.getKey()), picture.getValue());
        }
        Files.writeString(folder.resolve(ResultsFiles.SUMMARY), JsonText.written(summary()));
    }

    private List<List<String>> race() {
        List<List<String>> rows = new ArrayList<>();
        rows.add(HEADER);
        for (Standing standing : report.selection().course()) {
            rows.add(List.of(
                    Integer.toString(standing.count()),
                    Comparison.letter(standing.system()),
                    report.plants().get(standing.system()).name(),
                    Figures.cell(report.shown(standing.mean())),
                    Figures.cell(report.shown(standing.dropsBelow())),
                    standing.isDropped() ? "yes" : "no"));
        }
        return rows;
    }

    private ObjectNode summary() {
        Provenance from = report.plants().get(0).provenance();
        ObjectNode root = JsonText.headed(FORMAT, from);
        root.put("master_seed", from.masterSeed());
        root.put("measure", report.measure().fileName());
        root.put("more_is_better", report.measure().isMoreBetter());
        root.put("procedure", report.procedure());
        root.set("confidence", JsonText.number(report.zone().confidence()));
        root.set("indifference", JsonText.number(report.zone().indifference()));
        root.put("first_stage", report.zone().firstStage());
        root.put("decided", report.selection().isDecided());
        root.put("best", Comparison.letter(report.selection().best()));
        root.put("runs", report.selection().total());
        for (int plant = 0; plant < report.plants().size(); plant++) {
            root.withArray("/plants").add(plant(plant));
        }
        root.putArray("files").add(RACE);
        pictures.keySet().forEach(root.withArray("/files")::add);
        return root;
    }

    private ObjectNode plant(int plant) {
        ObjectNode node = JsonNodeFactory.instance.objectNode();
        Alternative alternative = report.plants().get(plant);
        node.put("letter", Comparison.letter(plant));
        node.put("name", alternative.name());
        JsonText.scenario(node, alternative.provenance());
        node.set("mean", JsonText.number(report.shown(report.selection().means().get(plant))));
        node.put("replications", report.selection().counts().get(plant));
        report.droppedAfter(plant).ifPresent(count -> node.put("dropped_after", count));
        return node;
    }
}
