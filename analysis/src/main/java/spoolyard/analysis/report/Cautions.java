package spoolyard.analysis.report;

import java.util.List;

/** What a reader of results must not forget. */
final class Cautions {
    /** Two lines for the end of every report; docs/cautions.md has them all with their sources. */
    static final List<String> LINES = List.of(
            "Caution: a model is no work method. Assess risk (ISO 12100) and ask operators before you change",
            "steps or crews; plan no bypassed guard or skipped lockout. Local codes rule. docs/cautions.md");

    private Cautions() {}
}
