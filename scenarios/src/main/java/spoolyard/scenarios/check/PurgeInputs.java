package spoolyard.scenarios.check;

import java.util.List;
import java.util.Optional;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Polymer;
import spoolyard.core.purge.PurgeModel;

/**
 * What a study of a plant's purges needs beside the plant. Immutable.
 *
 * @param polymers the plant's polymers, in file order
 * @param colours the plant's colours, in file order
 * @param log rows of the changeovers file, in file order
 * @param estimate the plant's purge estimate; empty if it has none
 */
public record PurgeInputs(
        List<Polymer> polymers, List<OfferedColour> colours, List<LoggedPurge> log, Optional<Estimate> estimate) {
    /** Copies the lists. */
    public PurgeInputs {
        polymers = List.copyOf(polymers);
        colours = List.copyOf(colours);
        log = List.copyOf(log);
    }

    /**
     * What a purge estimate supposes, and for which colours. Immutable.
     *
     * @param model what is supposed
     * @param leftOut codes of the colours that are not estimated
     */
    public record Estimate(PurgeModel model, List<String> leftOut) {
        /** Copies the list. */
        public Estimate {
            leftOut = List.copyOf(leftOut);
        }
    }

    /**
     * A colour and where it is offered. Immutable.
     *
     * @param colour the colour
     * @param polymers codes of the polymers in which it is offered
     */
    public record OfferedColour(Colour colour, List<String> polymers) {
        /** Copies the list. */
        public OfferedColour {
            polymers = List.copyOf(polymers);
        }
    }
}
