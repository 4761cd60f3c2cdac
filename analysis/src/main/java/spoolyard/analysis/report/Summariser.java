package spoolyard.analysis.report;

import java.util.List;
import java.util.Map;
import java.util.concurrent.ConcurrentHashMap;
import java.util.function.Function;
import spoolyard.core.record.RunResult;

/** Reduces a replication to the numbers that a report needs. May be used by several threads at once. */
public final class Summariser implements Function<RunResult, ReplicationSummary> {
    private final Setting setting;
    private final Map<List<List<String>>, List<List<String>>> sharedKeys = new ConcurrentHashMap<>();

    /**
     * For the replications of one plant.
     *
     * @param setting what is run
     */
    public Summariser(Setting setting) {
        this.setting = setting;
    }

    @Override
    public ReplicationSummary apply(RunResult result) {
        List<Rows> tables = Sheets.ALL.stream()
                .map(sheet -> sheet.rows(setting, result))
                .map(rows -> rows.withKeys(sharedKeys.computeIfAbsent(rows.keys(), keys -> keys)))
                .toList();
        return new ReplicationSummary(tables, result.replication() == 0 ? result.activity() : List.of());
    }
}
