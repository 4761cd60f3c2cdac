package spoolyard.scenarios.check;

import java.util.List;
import spoolyard.scenarios.read.Node;

/**
 * The names that a scenario declares, found before anything is read, so that each part can refer to every other.
 * Immutable.
 *
 * @param lines names of the lines
 * @param roles names of the roles
 * @param polymers codes of the polymers
 * @param shifts names of the shifts of the pattern
 */
record PlantNames(List<String> lines, List<String> roles, List<String> polymers, List<String> shifts) {
    static PlantNames of(Node.Mapping tree) {
        return new PlantNames(
                Trees.keys(Trees.at(tree, "lines")),
                Trees.keys(Trees.at(tree, "crew", "roles")),
                Trees.keys(Trees.at(tree, "polymers")),
                Trees.keys(Trees.at(tree, "shifts", "pattern")));
    }
}
