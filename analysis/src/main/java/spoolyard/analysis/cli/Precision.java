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
        int count = grown.observations().size();
        List<String> lines = new ArrayList<>();
        lines.add(why(effort, grown.stop()) + " after " + count + " replications: " + measure.fileName() + " "
                + (Double.isFinite(grown.width()) ? "+/- " + percent(grown.width()) : "not known") + ".");
        lines.add("--replications " + count + " gives the same again."
                + (grown.stop() == Grown.Stop.PRECISE
                        ? " Stopping by the interval costs a little of its level: docs/answers.md"
                        : ""));
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
