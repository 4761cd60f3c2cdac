package spoolyard.scenarios.check;

import java.util.List;
import java.util.Map;
import java.util.Optional;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.check.PurgeInputs.OfferedColour;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Words;

/**
 * The polymers and colours of a plant, by code. After a fault a code may be asked for that is not there; then a stand-in
 * is given, which never reaches a plant. Immutable.
 *
 * @param polymers by code
 * @param colours by code
 * @param offered by colour code, the polymers in which it is offered; empty means all
 * @param rows by colour code, where it is described
 * @param isComplete false: the colours could not all be read, so that an unknown code is no fault of its own
 */
record Products(
        Map<String, Polymer> polymers,
        Map<String, Colour> colours,
        Map<String, List<String>> offered,
        Map<String, Origin> rows,
        boolean isComplete) {
    private static final Polymer NO_POLYMER = new Polymer("nothing", 1000, 1, 200, 0);
    private static final Colour NO_COLOUR = new Colour("nothing", "nothing", 50, 0, 0, 1, 1, 0);

    Polymer polymer(String code) {
        return polymers.getOrDefault(code, NO_POLYMER);
    }

    Colour colour(String code) {
        return colours.getOrDefault(code, NO_COLOUR);
    }

    List<String> polymerCodes() {
        return List.copyOf(polymers.keySet());
    }

    /** Code of a colour of this plant. */
    Kind<String> colourCode() {
        return isComplete ? Words.name("colour", colours.keySet()) : Words.text();
    }

    boolean isOffered(String polymer, String colour) {
        List<String> in = offered.getOrDefault(colour, List.of());
        return in.isEmpty() || in.contains(polymer);
    }

    /** What a study of purges needs. */
    PurgeInputs purgeInputs(List<LoggedPurge> log, Optional<PurgeInputs.Estimate> estimate) {
        List<OfferedColour> all = colours.values().stream()
                .map(colour -> new OfferedColour(
                        colour,
                        polymerCodes().stream()
                                .filter(polymer -> isOffered(polymer, colour.code()))
                                .toList()))
                .toList();
        return new PurgeInputs(List.copyOf(polymers.values()), all, log, estimate);
    }
}
