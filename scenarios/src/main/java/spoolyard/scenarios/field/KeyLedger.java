package spoolyard.scenarios.field;

import java.util.Collections;
import java.util.Map;
import java.util.Set;
import java.util.TreeMap;
import java.util.TreeSet;

/** Remembers which keys were asked for in which type of mapping, so that a test can hold the schema against them. */
public final class KeyLedger {
    private final Map<String, Set<String>> keysByType = new TreeMap<>();

    void note(String type, String key) {
        keysByType.computeIfAbsent(type, t -> new TreeSet<>()).add(key);
    }

    /**
     * The keys asked for so far.
     *
     * @return keys by type of mapping, both sorted
     */
    public Map<String, Set<String>> keysByType() {
        return Collections.unmodifiableMap(keysByType);
    }
}
