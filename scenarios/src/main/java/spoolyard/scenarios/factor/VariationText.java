package spoolyard.scenarios.factor;

import java.math.BigDecimal;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;
import spoolyard.scenarios.format.Pointer;
import spoolyard.scenarios.format.Quantity;

/**
 * Reads what to vary from the command line: {@code POINTER=A,B,C} for a list, {@code POINTER=LOW..HIGH} for a range,
 * {@code POINTER=LOW..HIGH:N} for N values at equal distances. Commas inside brackets and quotes part nothing; a value in
 * brackets may be given a name, {@code fast={type: two-position, ...}}.
 */
public final class VariationText {
    private static final int MOST_STEPS = 1000;
    private static final int MOST_WHOLE = 100;
    private static final Pattern RANGE =
            Pattern.compile("\\s*([+-]?\\d.*?)\\s*\\.\\.\\s*(.*?)\\s*(?::\\s*(\\d{1,9})\\s*)?");
    private static final Pattern NAMED = Pattern.compile("([^=\\[{\"']+)=\\s*([\\[{].*)", Pattern.DOTALL);
    private static final String EXAMPLE =
            "write for example --vary \"/lines/L3/accumulator=40 m..200 m:9\" or --vary \"/lines/L3/overflow=stop,waste\"";

    private final Faults faults;
    private final String text;
    private final Origin origin;

    private VariationText(String text, Faults faults) {
        this.faults = faults;
        this.text = text;
        this.origin = new Origin("--vary", 0, text.contains("=") ? text.substring(0, text.indexOf('=')) : "factor");
    }

    /**
     * Reads all factors.
     *
     * @param texts as they were typed
     * @param most most factors there may be
     * @return the factors in order
     * @throws ScenarioException with every fault
     */
    public static List<Variation> read(List<String> texts, int most) throws ScenarioException {
        Faults faults = new Faults();
        List<Variation> variations = new ArrayList<>();
        for (String text : texts) {
            VariationText one = new VariationText(text, faults);
            one.variation().ifPresent(variation -> {
                one.refuseOverlap(variation, variations);
                variations.add(variation);
            });
        }
        if (texts.size() > most) {
            faults.add(new Fault(
                    FaultKind.OUT_OF_RANGE,
                    new Origin("--vary", 0, "factors"),
                    String.valueOf(texts.size()),
                    "Must be at most " + most + ".",
                    "leave some out; spoolyard screen tells which of many matter"));
        }
        faults.throwIfAny();
        return variations;
    }

    private Optional<Variation> variation() {
        int sign = text.indexOf('=');
        if (sign < 0 || !Pointer.isOfValue(text.substring(0, sign))) {
            return fault(FaultKind.BAD_POINTER, text, "Must be a JSON Pointer, an equals sign and values.");
        }
        String values = text.substring(sign + 1);
        Matcher range = RANGE.matcher(values);
        boolean isRange = range.matches() && split(values).size() == 1;
        return (isRange ? range(range, values) : list(values))
                .map(levels -> new Variation(text.substring(0, sign), levels));
    }

    private Optional<Levels> list(String values) {
        List<Level> levels = split(values).stream()
                .map(String::strip)
                .map(VariationText::level)
                .toList();
        if (levels.size() < 2) {
            return fault(FaultKind.OUT_OF_RANGE, values, "Must be two values or more, or a range such as 40 m..200 m.");
        }
        if (levels.stream().map(Level::label).distinct().count() < levels.size()) {
            return fault(FaultKind.DUPLICATE_NAME, values, "Must be values that differ.");
        }
        return Optional.of(new Levels.Listed(levels));
    }

    private static Level level(String typed) {
        Matcher named = NAMED.matcher(typed);
        return named.matches() ? new Level(named.group(1).strip(), named.group(2)) : Level.of(typed);
    }

    private Optional<Levels> range(Matcher range, String values) {
        Optional<Quantity> low = Quantity.parse(range.group(1));
        Optional<Quantity> high = Quantity.parse(range.group(2));
        if (low.isEmpty() || high.isEmpty()) {
            return fault(FaultKind.NOT_A_VALUE, values, "Must have a number, with its unit, at both ends.");
        }
        String unit = high.get().unit();
        if (!low.get().unit().isEmpty() && !low.get().unit().equals(unit)) {
            return fault(FaultKind.WRONG_UNIT, values, "Must have the same unit at both ends.");
        }
        BigDecimal first = low.get().number();
        BigDecimal last = high.get().number();
        if (first.compareTo(last) >= 0) {
            return fault(FaultKind.OUT_OF_RANGE, values, "Must begin below its end.");
        }
        return levels(new Levels.Range(first, last, unit), range.group(3), values);
    }

    /** Whole numbers of no unit are counts: every whole number between them is meant, and nothing else. */
    private Optional<Levels> levels(Levels.Range range, String steps, String values) {
        if (steps != null) {
            int count = Integer.parseInt(steps);
            return count >= 2 && count <= MOST_STEPS
                    ? Optional.of(range.steps(count))
                    : fault(FaultKind.OUT_OF_RANGE, values, "Must have 2 to " + MOST_STEPS + " steps.");
        }
        boolean isCount = range.unit().isEmpty()
                && range.low().scale() == 0
                && range.high().scale() == 0;
        if (!isCount) {
            return Optional.of(range);
        }
        BigDecimal count = range.high().subtract(range.low()).add(BigDecimal.ONE);
        return count.compareTo(BigDecimal.valueOf(MOST_WHOLE)) <= 0
                ? Optional.of(range.steps(count.intValueExact()))
                : fault(FaultKind.OUT_OF_RANGE, values, "Must say how many steps, for it has over " + MOST_WHOLE + ".");
    }

    private void refuseOverlap(Variation variation, List<Variation> before) {
        String place = variation.pointer() + "/";
        before.stream()
                .map(other -> other.pointer() + "/")
                .filter(other -> place.startsWith(other) || other.startsWith(place))
                .findFirst()
                .ifPresent(other -> faults.add(new Fault(
                        FaultKind.DUPLICATE_NAME,
                        origin,
                        variation.levels().described(),
                        "Must not be varied twice, nor within what another factor replaces.",
                        "leave out one of the two")));
    }

    private <T> Optional<T> fault(FaultKind kind, String value, String allowed) {
        faults.add(new Fault(kind, origin, value, allowed, EXAMPLE));
        return Optional.empty();
    }

    /** Parts at commas outside brackets and quotes. */
    private static List<String> split(String values) {
        List<String> parts = new ArrayList<>();
        int depth = 0;
        int begin = 0;
        char quote = 0;
        for (int i = 0; i < values.length(); i++) {
            char c = values.charAt(i);
            if (quote != 0) {
                quote = c == quote ? 0 : quote;
            } else if (c == '"' || c == '\'') {
                quote = c;
            } else if (c == ',' && depth == 0) {
                parts.add(values.substring(begin, i));
                begin = i + 1;
            } else {
                depth += "[{".indexOf(c) >= 0 ? 1 : "]}".indexOf(c) >= 0 ? -1 : 0;
            }
        }
        parts.add(values.substring(begin));
        return parts;
    }
}
