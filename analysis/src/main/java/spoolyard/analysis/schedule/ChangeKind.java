package spoolyard.analysis.schedule;

import java.util.ArrayList;
import java.util.List;
import spoolyard.core.plant.Product;

/** What a changeover changes. */
public enum ChangeKind {
    /** The polymer: temperatures, purge compound, often screen and screw. */
    POLYMER("polymer"),
    /** The diameter: the die. */
    DIAMETER("diameter"),
    /** The colour: purged until clean. */
    COLOUR("colour");

    private final String label;

    ChangeKind(String label) {
        this.label = label;
    }

    /**
     * The word for it.
     *
     * @return lower case
     */
    public String label() {
        return label;
    }

    /**
     * All that differs between two products.
     *
     * @param from the product before
     * @param to the product after
     * @return the hardest first; empty if the melt is the same
     */
    static List<ChangeKind> between(Product from, Product to) {
        List<ChangeKind> kinds = new ArrayList<>();
        if (!from.polymer().code().equals(to.polymer().code())) {
            kinds.add(POLYMER);
        }
        if (from.diameterMm() != to.diameterMm()) {
            kinds.add(DIAMETER);
        }
        if (!from.colour().code().equals(to.colour().code())) {
            kinds.add(COLOUR);
        }
        return kinds;
    }
}
