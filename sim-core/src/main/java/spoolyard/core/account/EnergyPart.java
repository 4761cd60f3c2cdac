package spoolyard.core.account;

/** What electric energy goes into. */
public enum EnergyPart {
    /** Base load of the plant while any line is hot. */
    BASE_HOT("base load, a line hot"),
    /** Base load of the plant while all lines are cold. */
    BASE_COLD("base load, all cold"),
    /** What each kilogram through a die draws on top. */
    MASS("by mass"),
    /** From cold to set point. */
    HEAT_UP("heat-ups"),
    /** Hot with the screw standing. */
    STANDBY("hot standby"),
    /** Grinding of scrap. */
    GRINDING("grinding");

    private final String label;

    EnergyPart(String label) {
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
