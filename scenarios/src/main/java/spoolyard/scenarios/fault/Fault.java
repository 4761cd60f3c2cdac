package spoolyard.scenarios.fault;

/**
 * One thing that is wrong with a scenario. Immutable.
 *
 * @param kind what sort of fault
 * @param origin where it stands
 * @param value what stands there, short enough for a line
 * @param allowed what may stand there, as sentences
 * @param mend how to put it right, one imperative clause without a full stop
 */
public record Fault(FaultKind kind, Origin origin, String value, String allowed, String mend) {
    private static final int LONGEST_VALUE = 72;

    /** Shortens the value and keeps it on one line. */
    public Fault {
        value = value.replaceAll("\\p{Cntrl}+", " ");
        if (value.length() > LONGEST_VALUE) {
            value = value.substring(0, LONGEST_VALUE - 3) + "...";
        }
    }

    /**
     * Name of the file, or of the command-line option.
     *
     * @return as a person would type it
     */
    public String file() {
        return origin.file();
    }

    /**
     * Line in the file.
     *
     * @return from 1; 0 where a line means nothing
     */
    public int line() {
        return origin.line();
    }

    /**
     * JSON Pointer or column name.
     *
     * @return the field
     */
    public String field() {
        return origin.field();
    }

    /**
     * The fault as it is shown to people: place, field, value, what is allowed; on a second line how to mend it.
     *
     * @return two lines without a final line break
     */
    public String text() {
        return origin.where() + ": " + origin.shownField() + " = " + value + ". " + allowed + "\n  Mend: " + mend + ".";
    }
}
