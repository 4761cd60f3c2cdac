package spoolyard.scenarios.check;

import java.util.LinkedHashMap;
import java.util.Map;
import spoolyard.scenarios.field.Kind;
import spoolyard.scenarios.field.Words;

/**
 * What a plant's priority letter or number means. Immutable.
 *
 * @param priority 1 is served first
 * @param weight relative penalty of lateness
 */
record Urgency(int priority, double weight) {
    /** For orders without a priority. */
    static final Urgency USUAL = new Urgency(2, 1);

    /** A, B or C, or 1 to 9. Only A weighs more: three times. */
    static final Kind<Urgency> KIND = Words.oneOf(meanings());

    private static Map<String, Urgency> meanings() {
        Map<String, Urgency> meanings = new LinkedHashMap<>();
        meanings.put("a", new Urgency(1, 3));
        meanings.put("b", USUAL);
        meanings.put("c", new Urgency(3, 1));
        for (int priority = 1; priority <= 9; priority++) {
            meanings.put(Integer.toString(priority), new Urgency(priority, 1));
        }
        return meanings;
    }
}
