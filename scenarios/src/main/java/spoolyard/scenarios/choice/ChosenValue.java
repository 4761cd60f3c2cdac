package spoolyard.scenarios.choice;

import spoolyard.scenarios.fault.Origin;

/**
 * A value of the scenario as an option has it. Immutable.
 *
 * @param pointer JSON Pointer of the value
 * @param yaml the value as YAML on one line
 * @param origin where it is written
 */
public record ChosenValue(String pointer, String yaml, Origin origin) {
    /**
     * As it is set over a scenario.
     *
     * @return pointer, equals sign and value
     */
    String setting() {
        return pointer + "=" + yaml;
    }

    /**
     * The value in a message.
     *
     * @return without the quotes of a plain text
     */
    public String shown() {
        return isText() ? yaml.substring(1, yaml.length() - 1) : yaml;
    }

    /**
     * Whether it is a text, as numbers and words are.
     *
     * @return false for lists and mappings
     */
    public boolean isText() {
        return yaml.startsWith("'");
    }

    /**
     * Whether a field of the scenario is this value, or a part of it.
     *
     * @param field JSON Pointer of the field
     * @return false for anything else, also what this is a part of
     */
    public boolean covers(String field) {
        return field.equals(pointer) || field.startsWith(pointer + "/");
    }

    /** Whether one of two values is the other, or a part of it. */
    boolean overlaps(ChosenValue other) {
        return covers(other.pointer) || other.covers(pointer);
    }
}
