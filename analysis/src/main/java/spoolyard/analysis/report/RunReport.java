package spoolyard.analysis.report;

import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.analysis.experiment.Interval;
import spoolyard.core.record.Activity;

/** What an experiment says about a plant: every table with an interval in each cell. Immutable. */
public final class RunReport {
    private final Provenance provenance;
    private final Setting setting;
    private final int replications;
    private final List<Activity> firstActivity;
    private final Map<String, Estimates> tables;

    private RunReport(
            Provenance provenance, Setting setting, List<ReplicationSummary> summaries, Map<String, Estimates> tables) {
        this.provenance = provenance;
        this.setting = setting;
        this.replications = summaries.size();
        this.firstActivity = summaries.get(0).activity();
        this.tables = tables;
    }

    /**
     * Estimates everything.
     *
     * @param provenance where the results come from
     * @param setting what was run
     * @param summaries the replications, at least one, in order
     * @return the report, with intervals at {@link Interval#USUAL_LEVEL}
     */
    public static RunReport of(Provenance provenance, Setting setting, List<ReplicationSummary> summaries) {
        Map<String, Estimates> tables = new LinkedHashMap<>();
        for (int i = 0; i < Sheets.ALL.size(); i++) {
            int place = i;
            Sheet<?> sheet = Sheets.ALL.get(i);
            List<Rows> rows = summaries.stream()
                    .map(summary -> summary.tables().get(place))
                    .toList();
            tables.put(sheet.name(), Estimates.of(sheet, rows, sheet.order().apply(setting), Interval.USUAL_LEVEL));
        }
        return new RunReport(provenance, setting, summaries, tables);
    }

    /**
     * Where the results come from.
     *
     * @return version, scenario, seed
     */
    public Provenance provenance() {
        return provenance;
    }

    /**
     * What was run.
     *
     * @return plant and clock
     */
    public Setting setting() {
        return setting;
    }

    /**
     * Number of replications.
     *
     * @return at least 1
     */
    public int replications() {
        return replications;
    }

    /**
     * Activity of the stations in the first replication.
     *
     * @return one a station
     */
    List<Activity> firstActivity() {
        return firstActivity;
    }

    /**
     * A table.
     *
     * @param sheet which
     * @return its estimates
     */
    Estimates table(Sheet<?> sheet) {
        return Optional.ofNullable(tables.get(sheet.name()))
                .orElseThrow(() -> new IllegalArgumentException("no table " + sheet.name()));
    }

    /**
     * A number for the plant as a whole.
     *
     * @param column which
     * @return its interval
     */
    Interval plant(Column<?> column) {
        return table(PlantSheet.SHEET).at(PlantSheet.ROW, column);
    }
}
