package spoolyard.core.plant;

/** How large a sample is taken from a lot of a given size: the inspection levels of ISO 2859-1 that the trade uses. */
public enum InspectionLevel {
    /** Special level S-3: small samples, for tests that destroy. */
    S3("S-3"),
    /** Special level S-4: somewhat larger. */
    S4("S-4"),
    /** General level II: the usual one, for looking and measuring. */
    II("II");

    private final String label;

    InspectionLevel(String label) {
        this.label = label;
    }

    /**
     * Name as the standard writes it.
     *
     * @return for example {@code S-3}
     */
    public String label() {
        return label;
    }
}
