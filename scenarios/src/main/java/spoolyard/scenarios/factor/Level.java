package spoolyard.scenarios.factor;

/**
 * A value that a factor takes. Immutable.
 *
 * @param label what people call it; the value itself unless it was named
 * @param value the value as YAML
 */
public record Level(String label, String value) {
    /**
     * A value that goes by no other name.
     *
     * @param value YAML
     * @return the level
     */
    static Level of(String value) {
        return new Level(value, value);
    }
}
