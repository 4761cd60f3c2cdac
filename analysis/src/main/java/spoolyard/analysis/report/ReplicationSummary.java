package spoolyard.analysis.report;

import java.util.List;
import spoolyard.core.record.Activity;

/**
 * What is kept of a replication: the numbers of every table, and of the first one who was the bottleneck when.
 *
 * @param tables one for each of {@link Sheets#ALL}, in that order
 * @param activity of the stations in the first replication; empty for others
 */
public record ReplicationSummary(List<Rows> tables, List<Activity> activity) {
    /** Copies the lists. */
    public ReplicationSummary {
        tables = List.copyOf(tables);
        activity = List.copyOf(activity);
    }
}
