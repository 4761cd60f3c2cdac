package spoolyard.analysis.report;

import java.util.List;

/**
 * What is kept of a replication: the numbers of every table, and nothing else.
 *
 * @param tables one for each of {@link Sheets#ALL}, in that order
 */
public record ReplicationSummary(List<Rows> tables) {
    /** Copies the list. */
    public ReplicationSummary {
        tables = List.copyOf(tables);
    }
}
