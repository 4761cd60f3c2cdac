package spoolyard.scenarios.shiftsystem;

import java.io.IOException;
import java.io.InputStream;
import java.io.UncheckedIOException;
import java.nio.charset.StandardCharsets;
import java.time.LocalTime;
import java.util.Arrays;
import java.util.List;
import java.util.Optional;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.read.SourceText;
import spoolyard.scenarios.read.YamlTree;

/**
 * A common way to share the hours of a week among crews. Each is a part of a scenario with {@code cycle}, {@code pattern}
 * and {@code crews}, without people: those are the plant's own. Names are made of the shifts a day, their hours, and the
 * days.
 */
public enum ShiftSystem {
    /** Days from Monday to Friday. */
    DAY_SHIFT("day-shift", "one crew, 8 h by day, Monday to Friday"),
    /** Days and evenings from Monday to Friday. */
    TWO_BY_EIGHT("2x8-5-days", "two crews, 8 h, Monday to Friday, in turn by day and in the evening"),
    /** Round the clock from Monday to Friday. */
    THREE_BY_EIGHT("3x8-5-days", "three crews, 8 h, Monday to Friday, a week each of days, evenings, nights"),
    /** Round the clock, the weekend by crews of its own. */
    WEEKEND_CREWS("3x8-5-days-weekend-crews", "three crews of 8 h in the week, two of 12 h at the weekend"),
    /** Round the clock by four crews of eight hours. */
    FOUR_CREWS("3x8-7-days-4-crews", "four crews, 8 h, every day: two days, two evenings, two nights, two off"),
    /** Round the clock by five crews of eight hours. */
    FIVE_CREWS("3x8-7-days-5-crews", "five crews, 8 h, every day: two days, two evenings, two nights, four off"),
    /** Round the clock by four crews of twelve hours, every other weekend off. */
    TWO_TWO_THREE(
            "2x12-2-2-3", "four crews, 12 h, every day: two on, two off, three on; each other fortnight by night"),
    /** Round the clock by four crews of twelve hours in turns of eight days. */
    FOUR_ON_FOUR_OFF("2x12-4-on-4-off", "four crews, 12 h, every day: four days, four off, four nights, four off");

    private static final String FOLDER = "/spoolyard/scenarios/shiftsystem/";

    private final String label;
    private final String title;

    ShiftSystem(String label, String title) {
        this.label = label;
        this.title = title;
    }

    /**
     * Its name in a scenario.
     *
     * @return for example {@code 2x12-2-2-3}
     */
    public String label() {
        return label;
    }

    /**
     * What it is, for people.
     *
     * @return a few words
     */
    public String title() {
        return title;
    }

    /**
     * All names.
     *
     * @return in the order in which they are listed
     */
    public static List<String> labels() {
        return Arrays.stream(values()).map(ShiftSystem::label).toList();
    }

    /**
     * Finds a system.
     *
     * @param label its name; case does not matter
     * @return the system; empty if there is none of that name
     */
    public static Optional<ShiftSystem> of(String label) {
        return Arrays.stream(values())
                .filter(system -> system.label.equalsIgnoreCase(label))
                .findFirst();
    }

    /**
     * The part of a scenario that it stands for, to read or to copy.
     *
     * @return YAML with the key {@code shifts}
     */
    public String text() {
        try (InputStream in = ShiftSystem.class.getResourceAsStream(FOLDER + label + ".yaml")) {
            if (in == null) {
                throw new IllegalStateException(label + ".yaml = (missing). Must be on the class path.");
            }
            return new String(in.readAllBytes(), StandardCharsets.UTF_8);
        } catch (IOException e) {
            throw new UncheckedIOException(e);
        }
    }

    /**
     * What stands under {@code shifts}.
     *
     * @return keys that a scenario may override
     */
    public Node.Mapping shifts() {
        Faults none = new Faults();
        Node tree = YamlTree.parse(new SourceText("shift system " + label, text()), none)
                .orElseThrow();
        return (Node.Mapping) ((Node.Mapping) tree).entries().get("shifts");
    }

    /**
     * What stands under {@code shifts}, all times moved alike.
     *
     * @param firstStart when the first shift of the pattern starts, at most {@link #latestFirstStart()}
     * @return keys that a scenario may override
     */
    public Node.Mapping shifts(LocalTime firstStart) {
        return new MovedShifts(shifts()).to(firstStart);
    }

    /**
     * How late the first shift may start so that the last one still starts on the same day.
     *
     * @return time of day
     */
    public LocalTime latestFirstStart() {
        return new MovedShifts(shifts()).latest();
    }
}
