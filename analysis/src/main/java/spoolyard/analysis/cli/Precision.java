package spoolyard.analysis.cli;

import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import spoolyard.analysis.experiment.Effort;
import spoolyard.analysis.experiment.Grown;
import spoolyard.analysis.report.Measure;

/** Says why an experiment stopped where it did. */
final class Precision {
    private static final double PERCENT = 100;

    private Precision() {}

    /**
     * In words.
     *
     * @param effort what was asked for
     * @param grown what was given
     * @param measure the number looked at
     * @return lines; none for a number of replications laid down beforehand
     */
    static List<String> told(Effort effort, Grown<?> grown, Measure measure) {
        if (effort.isFixed()) {
            return List.of();
        }
        String count = grown.observations().size() + " replications";
        List<String> lines = new ArrayList<>();
        String known = Double.isFinite(grown.width()) ? percent(grown.width()) : "not";
        lines.add(why(effort, grown.stop()) + " after " + count + ": " + measure.fileName() + " is known to " + known
                + ". --replications " + grown.observations().size() + " gives the same.");
        if (grown.stop() == Grown.Stop.PRECISE) {
            lines.add("Stopping by the interval makes it hold a little less often than it says: docs/answers.md");
        }
        return lines;
    }

    private static String why(Effort effort, Grown.Stop stop) {
        String wanted = effort.wantedWidth().isPresent()
                ? ", short of " + percent(effort.wantedWidth().getAsDouble()) + ","
                : "";
        return switch (stop) {
            case PRECISE -> "As precise as " + percent(effort.wantedWidth().getAsDouble());
            case TIME -> "The time was up" + wanted;
            case CAP -> "Stopped at the most there may be" + wanted;
        };
    }

    private static String percent(double part) {
        return String.format(Locale.ROOT, "%.2f %%", PERCENT * part);
    }
}
