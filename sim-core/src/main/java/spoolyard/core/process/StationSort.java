package spoolyard.core.process;

import java.util.Optional;
import spoolyard.core.record.Activity;

/** Where a station stands to the flow of spools; only what the flow must pass can hold it up. */
enum StationSort {
    /** Every spool meets it. */
    FLOW("station", Optional.of(Activity.Kind.FINISHING)),
    /** Lots wait for its finding; one lot alone is a delay and holds up nothing else. */
    LAB("lab test", Optional.of(Activity.Kind.LAB)),
    /** Puts spools right beside the flow. */
    REWORK("rework", Optional.empty());

    private final String label;
    private final Optional<Activity.Kind> kind;

    StationSort(String label, Optional<Activity.Kind> kind) {
        this.label = label;
        this.kind = kind;
    }

    /** First word of the names of its streams. */
    String label() {
        return label;
    }

    /** As what it can be the bottleneck; empty if it cannot. */
    Optional<Activity.Kind> kind() {
        return kind;
    }
}
