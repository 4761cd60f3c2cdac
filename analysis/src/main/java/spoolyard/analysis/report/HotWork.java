package spoolyard.analysis.report;

import java.util.List;

/** What whoever changes over a hot line must not forget, in the words of docs/cautions.md. */
final class HotWork {
    /** Comes before everything else. */
    static final String WHO_DECIDES =
            "Local codes, the makers' manuals and the judgement of licensed and competent persons on site come first,"
                    + " always.";

    /** Sentences of docs/cautions.md, in its order. */
    static final List<String> SENTENCES = List.of(
            "Plan no minute that assumes a bypassed guard or a skipped isolation.",
            "For work on die, screen and screw: isolate, and release melt pressure first.",
            "Nobody stands in front of the die at start-up or purge; gloves and face shield; nobody over a blocked die.",
            "Purge piles self-heat and smoke when large: keep them flat and thin, quench, ventilate.",
            "Never POM and PVC in the same machine, hopper, dryer, grinder or loader",
            "Extraction at die and purge point; more for ABS and ASA (styrene), PC and flame-retarded grades.",
            "no threading by hand through running nips, no loose gloves; a broken strand whips.",
            "Require colour approval before the first good spool.");

    private HotWork() {}
}
