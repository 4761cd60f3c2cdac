package spoolyard.scenarios.factor;

/**
 * A value of a scenario that a study varies. Immutable.
 *
 * @param pointer JSON Pointer of the value
 * @param levels what it may be
 */
public record Variation(String pointer, Levels levels) {
    /**
     * A level as a setting.
     *
     * @param level which
     * @return pointer, equals sign and value
     */
    public String setting(Level level) {
        return pointer + "=" + level.value();
    }
}
