package spoolyard.scenarios.factor;

import spoolyard.scenarios.fault.Origin;

/**
 * A value of a scenario that may be low or high. Immutable.
 *
 * @param name its name, for people
 * @param pointer JSON Pointer of the value
 * @param low the low value as YAML
 * @param high the high value as YAML
 * @param origin where it is declared
 */
public record Factor(String name, String pointer, String low, String high, Origin origin) {
    /**
     * A level as a setting.
     *
     * @param isHigh which level
     * @return pointer, equals sign and value
     */
    public String setting(boolean isHigh) {
        return pointer + "=" + (isHigh ? high : low);
    }
}
