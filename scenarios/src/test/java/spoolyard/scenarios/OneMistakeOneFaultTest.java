package spoolyard.scenarios;

import static org.assertj.core.api.Assertions.assertThat;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.Set;
import java.util.regex.Matcher;
import java.util.regex.Pattern;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.ScenarioException;

/**
 * Every single value of the scenario that uses every key, spoilt in four ways: one mistake is told once, and a value that
 * cannot be read on its own line.
 */
final class OneMistakeOneFaultTest {
    private static final Pattern VALUE =
            Pattern.compile("(?<key>[A-Za-z_0-9.]+[A-Za-z_0-9. ]*): (?<value>[^{}\\[\\],\\n]+)");

    /** Any text will do. */
    private static final Set<String> FREE = Set.of("name", "description", "currency");

    /**
     * Mistakes after which two things are wrong, each at its own place: a table that is not there and what names its rows, a
     * clock that is not said and what only makes sense on it, and values of which either one or another must be there.
     */
    private static final Set<String> TOLD_TWICE = Set.of(
            "misspelt orders: orders.csv",
            "misspelt colours: colours.csv",
            "null clock: mass",
            "misspelt clock: mass",
            "null fixed: 32 s",
            "misspelt triangular: null",
            "null heating_rate: 5 K/min",
            "misspelt system: day-shift",
            "null length: 8 h",
            "misspelt order: A-1");

    @TempDir
    private Path parent;

    /** A mistake in the text of the plant, what it is called, and the line it is on. */
    private record Mistake(String name, String kind, String key, int line, String text) {}

    @Test
    void tellsEachMistakeOnce() {
        ScenarioFolder folder = ScenarioFolder.everything(parent);
        List<Mistake> mistakes = mistakes(folder.text("plant.yaml"));
        List<String> toldTwice = new ArrayList<>();

        for (Mistake mistake : mistakes) {
            List<Fault> faults = faults(folder.write("plant.yaml", mistake.text()));
            if (faults.size() > 1) {
                toldTwice.add(mistake.name());
            }
            if (mistake.kind().equals("unreadable") && !FREE.contains(mistake.key())) {
                assertThat(faults).as(mistake.name()).isNotEmpty().allMatch(fault -> fault.line() == mistake.line());
            }
        }

        assertThat(mistakes).hasSizeGreaterThan(1000);
        assertThat(toldTwice).containsExactlyInAnyOrderElementsOf(TOLD_TWICE);
    }

    private static List<Mistake> mistakes(String plant) {
        List<Mistake> mistakes = new ArrayList<>();
        Matcher found = VALUE.matcher(plant);
        while (found.find()) {
            String before = plant.substring(0, found.start());
            String after = plant.substring(found.end());
            int line = 1 + (int) before.chars().filter(c -> c == '\n').count();
            String key = found.group("key");
            String value = found.group("value");
            spoilt(key, value)
                    .map(spoilt -> new Mistake(
                            spoilt[0] + " " + found.group(), spoilt[0], key, line, before + spoilt[1] + after))
                    .filter(mistake -> line > 1)
                    .forEach(mistakes::add);
        }
        return mistakes;
    }

    private static Stream<String[]> spoilt(String key, String value) {
        Optional<String[]> negative = Optional.of(new String[] {"negative", key + ": -" + value})
                .filter(any -> Character.isDigit(value.charAt(0)));
        return Stream.concat(
                negative.stream(),
                Stream.of(
                        new String[] {"unreadable", key + ": 7 parsec"},
                        new String[] {"null", key + ": null"},
                        new String[] {"misspelt", key + "x: " + value}));
    }

    private static List<Fault> faults(ScenarioFolder folder) {
        try {
            ScenarioReader.read(folder.path(), List.of());
            return List.of();
        } catch (ScenarioException e) {
            return e.faults();
        }
    }
}
