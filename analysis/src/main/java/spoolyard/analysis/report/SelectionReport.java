package spoolyard.analysis.report;

import java.util.List;
import java.util.OptionalInt;
import spoolyard.analysis.experiment.Selection;
import spoolyard.analysis.experiment.Standing;
import spoolyard.analysis.experiment.Zone;

/**
 * A selection with what was asked for. Immutable.
 *
 * @param plants what was selected from
 * @param measure what the best is best in
 * @param zone what was promised
 * @param isTwoStage true: Rinott's procedure; false: Kim and Nelson's
 * @param selection with means of which larger is better
 */
public record SelectionReport(
        List<Alternative> plants, Measure measure, Zone zone, boolean isTwoStage, Selection selection) {
    /** Copies the list. */
    public SelectionReport {
        plants = List.copyOf(plants);
    }

    /**
     * A number of the selection as the measure gives it.
     *
     * @param value of which larger is better
     * @return in the unit of the measure
     */
    double shown(double value) {
        return measure.isMoreBetter() ? value : -value;
    }

    /**
     * How a plant stood at each look.
     *
     * @param plant its number
     * @return by the number of replications
     */
    List<Standing> course(int plant) {
        return selection.course().stream()
                .filter(standing -> standing.system() == plant)
                .toList();
    }

    /**
     * When a plant was dropped.
     *
     * @param plant its number
     * @return replications; empty if it stayed in to the end
     */
    OptionalInt droppedAfter(int plant) {
        return course(plant).stream()
                .filter(Standing::isDropped)
                .mapToInt(Standing::count)
                .findFirst();
    }

    /**
     * Name of the procedure.
     *
     * @return author and year
     */
    String procedure() {
        return isTwoStage ? "Rinott 1978" : "Kim and Nelson 2001";
    }
}
