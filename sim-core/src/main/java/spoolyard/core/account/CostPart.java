package spoolyard.core.account;

/** What money goes into; a credit is a negative cost. */
public enum CostPart {
    /** Natural resin, by polymer. */
    RESIN("resin"),
    /** Colour concentrate, by colour. */
    CONCENTRATE("concentrate"),
    /** Purge compound. */
    COMPOUND("purge compound"),
    /** Empty spool, bag, carton and label of the spools packed. */
    PACK_OUT("pack-out"),
    /** Paid hours, by role. */
    LABOUR("labour"),
    /** Electric energy, by what it goes into. */
    ENERGY("energy"),
    /** What scrap and spools of second quality bring in. */
    CREDIT("credit");

    private final String label;

    CostPart(String label) {
        this.label = label;
    }

    /**
     * Name for people and files.
     *
     * @return lower-case words
     */
    public String label() {
        return label;
    }
}
