package spoolyard.analysis.report;

import com.fasterxml.jackson.databind.node.ArrayNode;
import com.fasterxml.jackson.databind.node.JsonNodeFactory;
import com.fasterxml.jackson.databind.node.ObjectNode;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.quantity.Ticks;

/** Writes the headline numbers as JSON, in the form that {@code summary.schema.json} lays down. */
public final class SummaryJson {
    /** Marks a file as ours and says which form it has. */
    public static final String FORMAT = "spoolyard-results/1";

    private static final JsonNodeFactory NODES = JsonNodeFactory.instance;

    private final RunReport report;

    /**
     * Prepares to write.
     *
     * @param report what
     */
    public SummaryJson(RunReport report) {
        this.report = report;
    }

    /**
     * The summary as text.
     *
     * @param files names of the other files of the results folder
     * @return JSON, two spaces to a level, with a final line break
     */
    public String text(List<String> files) {
        ObjectNode root = NODES.objectNode();
        root.put("$schema", ResultsFiles.SCHEMA);
        root.put("format", FORMAT);
        root.put("version", report.provenance().version());
        root.set("scenario", scenario());
        root.set("run", run());
        root.set("good_spools_per_shift", spoolsPerShift());
        root.set("plant", row(report.table(PlantSheet.SHEET), PlantSheet.ROW));
        root.set("scrap_pct_of_fed_by_cause", byFirstKey(LineSheets.SCRAP_CAUSES, LineSheets.CAUSE_PCT));
        root.set("losses_spools", losses());
        root.set("oee_pct_by_line", byFirstKey(LineSheets.LINES, LineSheets.OEE));
        root.set("crew_busy_pct", crew());
        root.set("bottleneck", bottleneck());
        stocks().ifPresent(stocks -> root.set("stocks", stocks));
        regrind().ifPresent(regrind -> root.set("regrind", regrind));
        new EconomyJson(report, JsonText::interval).addTo(root);
        ArrayNode names = root.putArray("files");
        files.forEach(names::add);
        return JsonText.written(root);
    }

    private ObjectNode scenario() {
        ObjectNode node = NODES.objectNode();
        node.put("name", report.provenance().scenario());
        node.put("plant", report.setting().plant().name());
        node.put("hash", report.provenance().scenarioHash());
        ArrayNode settings = node.putArray("settings");
        report.provenance().settings().forEach(settings::add);
        return node;
    }

    private ObjectNode run() {
        ObjectNode node = NODES.objectNode();
        PlantClock clock = report.setting().clock();
        node.put("start", clock.start().toOffsetDateTime().toString());
        node.put(
                "end",
                clock.at(report.setting().plant().horizonTicks())
                        .toOffsetDateTime()
                        .toString());
        node.put("zone", clock.start().getZone().getId());
        node.set(
                "horizon_h",
                JsonText.number(Ticks.toHours(report.setting().plant().horizonTicks())));
        node.put("master_seed", report.provenance().masterSeed());
        node.put("replications", report.replications());
        node.set("confidence_level", JsonText.number(Interval.USUAL_LEVEL));
        return node;
    }

    private ObjectNode spoolsPerShift() {
        ObjectNode node = NODES.objectNode();
        node.put("full_shifts", FullShifts.of(report.setting().plant()).size());
        node.set("all", JsonText.interval(report.plant(PlantSheet.SPOOLS_PER_SHIFT)));
        node.set("by_shift", byFirstKey(ShiftSheets.SHIFT_NAMES, ShiftSheets.SPOOLS_PER_SHIFT));
        node.set("by_line", byFirstKey(LineSheets.LINES, LineSheets.SPOOLS_PER_SHIFT));
        return node;
    }

    /** What is in store, by kind and name, if the scenario says so. */
    private Optional<ObjectNode> stocks() {
        Estimates table = report.table(StockSheet.SHEET);
        ObjectNode node = NODES.objectNode();
        for (List<String> key : table.keys()) {
            node.withObjectProperty(key.get(0)).set(key.get(1), row(table, key));
        }
        return node.isEmpty() ? Optional.empty() : Optional.of(node);
    }

    /** What is ground and fed again, by polymer, if the scenario says so. */
    private Optional<ObjectNode> regrind() {
        Estimates table = report.table(RegrindSheet.SHEET);
        ObjectNode node = NODES.objectNode();
        table.keys().forEach(key -> node.set(key.get(0), row(table, key)));
        return node.isEmpty() ? Optional.empty() : Optional.of(node);
    }

    private ObjectNode crew() {
        ObjectNode node = NODES.objectNode();
        Estimates crew = report.table(CrewSheet.SHEET);
        for (List<String> key : crew.keys()) {
            node.withObjectProperty(key.get(0)).set(key.get(1), JsonText.interval(crew.at(key, CrewSheet.BUSY)));
        }
        return node;
    }

    private ArrayNode bottleneck() {
        ArrayNode node = NODES.arrayNode();
        for (Candidate candidate : Candidate.ranked(report)) {
            ObjectNode each = node.addObject();
            each.put("kind", candidate.kind());
            each.put("station", candidate.station());
            each.set("bottleneck_pct_of_time", JsonText.interval(candidate.sharePct()));
            each.set("sole_bottleneck_pct_of_time", JsonText.interval(candidate.solePct()));
            each.set("first_pct_of_replications", JsonText.interval(candidate.firstPct()));
            each.set("mean_active_min", JsonText.interval(candidate.meanActiveMin()));
        }
        return node;
    }

    private ObjectNode losses() {
        ObjectNode node = NODES.objectNode();
        Estimates table = report.table(LossSheet.SHEET);
        for (List<String> key : table.keys()) {
            if (key.get(0).equals(LossSheet.ALL)) {
                node.set(key.get(1), JsonText.interval(table.at(key, LossSheet.SPOOLS)));
            }
        }
        return node;
    }

    private ObjectNode byFirstKey(Sheet<?> sheet, Column<?> column) {
        ObjectNode node = NODES.objectNode();
        Estimates table = report.table(sheet);
        table.keys().forEach(key -> node.set(key.get(0), JsonText.interval(table.at(key, column))));
        return node;
    }

    private static ObjectNode row(Estimates table, List<String> key) {
        ObjectNode node = NODES.objectNode();
        table.sheet().columns().forEach(column -> node.set(column.name(), JsonText.interval(table.at(key, column))));
        return node;
    }
}
