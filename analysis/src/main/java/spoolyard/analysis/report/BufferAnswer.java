package spoolyard.analysis.report;

import java.util.List;
import spoolyard.analysis.buffer.Finding;

/**
 * A search in one sentence. Immutable.
 *
 * @param finding what was found
 */
record BufferAnswer(Finding finding) {
    String text() {
        List<Double> all = finding.plan().capacitiesM();
        String first = BufferText.metres(all.get(0));
        String last = BufferText.metres(all.get(all.size() - 1));
        return switch (finding.answer()) {
            case FOUND -> meets() + " is the smallest capacity that meets it.";
            case ALL_MEET -> first + ", the smallest asked about, meets it.";
            case NONE_MEETS -> "No capacity up to " + last + " meets it.";
            case CANNOT_TELL ->
                "No capacity up to " + last + " is sure to meet it"
                        + (finding.missesM().isPresent() ? ", and " + misses() + " is sure to miss it." : ".");
            case BETWEEN ->
                "Cannot tell between "
                        + (finding.missesM().isPresent() ? "more than " + misses() : first) + " and " + meets()
                        + ", which meets it. More replications (--most) would.";
        };
    }

    private String meets() {
        return BufferText.metres(finding.meetsM().orElseThrow());
    }

    private String misses() {
        return BufferText.metres(finding.missesM().orElseThrow());
    }
}
