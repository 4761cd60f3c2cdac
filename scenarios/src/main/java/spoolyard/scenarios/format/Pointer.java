package spoolyard.scenarios.format;

import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import java.util.regex.Pattern;

/**
 * A JSON Pointer. Source: RFC 6901. Immutable.
 *
 * @param tokens reference tokens, unescaped
 */
public record Pointer(List<String> tokens) {
    private static final Pattern FORM = Pattern.compile("(/([^~/]|~[01])*)*");

    /** Copies the tokens. */
    public Pointer {
        tokens = List.copyOf(tokens);
    }

    /**
     * Reads a pointer.
     *
     * @param text for example {@code /lines/L3/accumulator}; {@code ~0} stands for a tilde and {@code ~1} for a slash
     * @return the pointer; empty if the text is not one
     */
    public static Optional<Pointer> parse(String text) {
        if (!FORM.matcher(text).matches()) {
            return Optional.empty();
        }
        List<String> tokens = Arrays.stream(text.split("/", -1))
                .skip(1)
                .map(token -> token.replace("~1", "/").replace("~0", "~"))
                .toList();
        return Optional.of(new Pointer(tokens));
    }

    /**
     * Whether a text is the pointer of a value that can be set.
     *
     * @param text any text
     * @return false for the whole document, and for a key with an equals sign, which a setting could not tell from its own
     */
    public static boolean isOfValue(String text) {
        return !text.contains("=")
                && parse(text).filter(parsed -> !parsed.isRoot()).isPresent();
    }

    /**
     * Whether a setting is about a value or what is in it.
     *
     * @param set pointer, equals sign and value
     * @param pointer the value's pointer
     * @return false if it is about something else
     */
    static boolean isIn(String set, String pointer) {
        return set.startsWith(pointer + "/") || set.startsWith(pointer + "=");
    }

    /**
     * Whether it points at the whole document.
     *
     * @return true if there are no tokens
     */
    public boolean isRoot() {
        return tokens.isEmpty();
    }

    String first() {
        return tokens.get(0);
    }

    Pointer rest() {
        return new Pointer(tokens.subList(1, tokens.size()));
    }
}
