package spoolyard.scenarios.field;

import java.util.Arrays;
import java.util.Collection;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.Optional;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Nearest;
import spoolyard.scenarios.read.Node;

/** Texts: free, one of a few words, or the name of a thing. */
public final class Words {
    private static final int LONGEST_TEXT = 2000;

    private Words() {}

    /**
     * Any text that is not empty.
     *
     * @return the kind
     */
    public static Kind<String> text() {
        return new TextKind<>(
                text -> Optional.of(text).filter(t -> !t.isEmpty() && t.length() <= LONGEST_TEXT),
                FaultKind.NOT_A_VALUE,
                "Must be a text of 1 to " + LONGEST_TEXT + " characters.",
                "enter a text",
                "nothing");
    }

    /**
     * {@code yes} or {@code no}; {@code true} and {@code false} mean the same.
     *
     * @return the kind
     */
    public static Kind<Boolean> yesOrNo() {
        Map<String, Boolean> meanings = new LinkedHashMap<>();
        meanings.put("yes", true);
        meanings.put("no", false);
        meanings.put("true", true);
        meanings.put("false", false);
        return new TextKind<>(
                text -> Optional.ofNullable(meanings.get(text.toLowerCase(Locale.ROOT))),
                FaultKind.NOT_A_VALUE,
                "Must be yes or no.",
                "enter yes or no",
                false);
    }

    /**
     * One of the constants of an enum, written in lower case with spaces.
     *
     * @param type the enum
     * @param <E> the enum
     * @return the kind
     */
    public static <E extends Enum<E>> Kind<E> oneOf(Class<E> type) {
        Map<String, E> meanings = new LinkedHashMap<>();
        for (E constant : type.getEnumConstants()) {
            meanings.put(written(constant), constant);
        }
        return oneOf(meanings);
    }

    /**
     * One of a few words. Case does not matter.
     *
     * @param meanings meaning of each word; at least one
     * @param <T> type of the meanings
     * @return the kind
     */
    public static <T> Kind<T> oneOf(Map<String, T> meanings) {
        Map<String, T> byLowerCase = new LinkedHashMap<>();
        meanings.forEach((word, meaning) -> byLowerCase.put(word.toLowerCase(Locale.ROOT), meaning));
        return new TextKind<>(
                text -> Optional.ofNullable(byLowerCase.get(text.toLowerCase(Locale.ROOT))),
                FaultKind.NOT_A_VALUE,
                "Must be one of: " + String.join(", ", meanings.keySet()) + ".",
                "enter one of these words",
                meanings.values().iterator().next());
    }

    /**
     * A constant as files write it.
     *
     * @param constant for example {@code FINISH_TASK}
     * @return for example {@code finish task}
     */
    public static String written(Enum<?> constant) {
        return constant.name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }

    /**
     * The name of something that stands elsewhere in the scenario.
     *
     * @param what what it names, for example {@code line}
     * @param known all names there are
     * @return the kind
     */
    public static Kind<String> name(String what, Collection<String> known) {
        return new NameKind(what, List.copyOf(known));
    }

    private record NameKind(String what, List<String> known) implements Kind<String> {
        @Override
        public String read(Node node, Reading reading) {
            if (node instanceof Node.Text text && known.contains(text.text().strip())) {
                return text.text().strip();
            }
            FaultKind kind = node instanceof Node.Text
                    ? FaultKind.UNKNOWN_NAME
                    : node instanceof Node.Nothing ? FaultKind.MISSING_VALUE : FaultKind.WRONG_SHAPE;
            String list = known.isEmpty() ? "(there is none)" : String.join(", ", known);
            String mend = Nearest.to(node.shown(), known)
                    .map(near -> "write " + near + ", or add the " + what)
                    .orElse("write one of these, or add the " + what);
            String article = "aeiou".indexOf(what.charAt(0)) >= 0 ? "an " : "a ";
            Fault fault = new Fault(
                    kind,
                    node.origin(),
                    node.shown(),
                    "Must be " + article + what + " of this plant: " + list + ".",
                    mend);
            if (known.isEmpty()) {
                reading.faults().addOnce("no " + what, fault);
            } else {
                reading.faults().add(fault);
            }
            return standIn();
        }

        @Override
        public String standIn() {
            return known.isEmpty() ? "nothing" : known.get(0);
        }
    }

    /**
     * One of a few words.
     *
     * @param words the words
     * @return the kind
     */
    public static Kind<String> oneOf(String... words) {
        Map<String, String> meanings = new LinkedHashMap<>();
        Arrays.stream(words).forEach(word -> meanings.put(word, word));
        return oneOf(meanings);
    }
}
