package spoolyard.core.plant;

/** How large a sample is taken from a lot of a given size: the inspection levels of ISO 2859-1, smallest samples first. */
public enum InspectionLevel {
    /** Special level S-1: very small samples, for tests that destroy or cost much. */
    S1("S-1"),
    /** Special level S-2. */
    S2("S-2"),
    /** Special level S-3. */
    S3("S-3"),
    /** Special level S-4: the largest samples of the special levels. */
    S4("S-4"),
    /** General level I: less discrimination than II. */
    I("I"),
    /** General level II: the usual one, for looking and measuring. */
    II("II"),
    /** General level III: more discrimination than II. */
    III("III");

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
