package spoolyard.analysis.buffer;

/** What replications say of a target. */
public enum Verdict {
    /** It is met. */
    MEETS("meets it"),
    /** It is missed. */
    MISSES("misses it"),
    /** They cannot tell. */
    OPEN("cannot tell");

    private final String words;

    Verdict(String words) {
        this.words = words;
    }

    /**
     * In words.
     *
     * @return for a sentence whose subject is a capacity
     */
    public String words() {
        return words;
    }
}
