package spoolyard.scenarios.format;

import java.time.LocalTime;
import java.time.format.DateTimeParseException;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.stream.Stream;
import spoolyard.scenarios.fault.Faults;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.read.Node;
import spoolyard.scenarios.shiftsystem.ShiftSystem;

/**
 * Merges the parts {@code shifts} of a scenario's files. Where one names a shift system, the system's {@code cycle},
 * {@code pattern} and {@code crews} take the place of those of the files below it; its own keys and those of the files
 * above it come over the system's.
 *
 * @param faults takes what is wrong with values from the command line, and each {@code null} that takes out nothing
 */
record ShiftLayers(Faults faults) {
    private static final String SHIFTS = ScenarioTree.SHIFTS;
    private static final String SYSTEM = "system";
    private static final String FIRST_START = "first_start";
    private static final String EVERY_SHIFT = "every_shift";
    private static final String[] OF_SYSTEM = {"cycle", "cycle_start", "pattern", "crews", SYSTEM, FIRST_START};

    /**
     * Whether a value from the command line is set here, before the shifts are made.
     *
     * @param set pointer, equals sign and value
     * @return true for all that this takes in
     */
    static boolean comesFirst(String set) {
        return isWhole(set) || namesSystem(set) || isIn(set, FIRST_START) || isIn(set, EVERY_SHIFT);
    }

    private static boolean isWhole(String set) {
        return set.startsWith("/" + SHIFTS + "=");
    }

    private static boolean namesSystem(String set) {
        return isIn(set, SYSTEM);
    }

    private static boolean isIn(String set, String key) {
        return Pointer.isIn(set, "/" + SHIFTS + "/" + key);
    }

    /**
     * Merges.
     *
     * @param layers one a file, the lowest first, each with the key {@code shifts} or none
     * @param sets all values from the command line
     * @return with the key {@code shifts}, each shift whole; with none if no layer has it. A value of the wrong shape or a
     *     system that is unknown is kept as a fault to be found
     */
    Node.Mapping merge(List<Node.Mapping> layers, List<String> sets) {
        List<Node.Mapping> stack = new ArrayList<>();
        layers.forEach(layer -> lay(layer, stack));
        for (String set : sets.stream().filter(ShiftLayers::isWhole).toList()) {
            stack.clear();
            stack.add(SetValue.apply(set, nothing(), faults));
        }
        List<String> first =
                sets.stream().filter(set -> comesFirst(set) && !isWhole(set)).toList();
        if (stack.isEmpty() && !first.isEmpty()) {
            stack.add(Keys.with(nothing(), SHIFTS, nothing()));
        }
        if (first.stream().anyMatch(ShiftLayers::namesSystem)) {
            stack.replaceAll(ShiftLayers::withoutSystem);
        }
        return stack.isEmpty() || !stack.stream().allMatch(ShiftLayers::isSound)
                ? stack.stream().reduce((low, high) -> high).orElse(nothing())
                : merged(stack, first);
    }

    private static Node.Mapping nothing() {
        return new Node.Mapping(new Origin("--set", 0, ""), Map.of());
    }

    private static boolean isSound(Node.Mapping layer) {
        return layer.entries().get(SHIFTS) instanceof Node.Mapping;
    }

    /** Lays a file's part over those below; one that is no mapping takes their place, as a merge patch does. */
    private void lay(Node.Mapping layer, List<Node.Mapping> stack) {
        Node part = layer.entries().get(SHIFTS);
        if (part == null) {
            return;
        }
        boolean isTakenOut = part instanceof Node.Nothing && !stack.isEmpty();
        boolean namesSystem =
                part instanceof Node.Mapping mapping && mapping.entries().containsKey(SYSTEM);
        if (namesSystem) {
            stack.replaceAll(ShiftLayers::withoutSystem);
        } else if (!(part instanceof Node.Mapping) || stack.stream().anyMatch(below -> !isSound(below))) {
            stack.clear();
        }
        if (!isTakenOut) {
            stack.add(layer);
        }
    }

    private static Node.Mapping withoutSystem(Node.Mapping layer) {
        return layer.entries().get(SHIFTS) instanceof Node.Mapping part
                ? Keys.with(layer, SHIFTS, Keys.without(part, OF_SYSTEM))
                : layer;
    }

    private Node.Mapping merged(List<Node.Mapping> stack, List<String> first) {
        Node.Mapping named = stack.get(0);
        for (Node.Mapping layer : stack) {
            named = MergePatch.apply(named, layer);
        }
        List<Node.Mapping> parts = Stream.concat(
                        system(part(set(named, first))).stream(), stack.stream().map(ShiftLayers::part))
                .toList();
        Node.Mapping shifts = new SharedKeys(EVERY_SHIFT, "pattern", faults)
                .merge(parts, shared -> part(set(Keys.with(nothing(), SHIFTS, shared), first)));
        return Keys.with(nothing(), SHIFTS, shifts);
    }

    private Node.Mapping set(Node.Mapping tree, List<String> sets) {
        Node.Mapping changed = tree;
        for (String set : sets) {
            changed = SetValue.apply(set, changed, faults);
        }
        return changed;
    }

    private static Node.Mapping part(Node.Mapping layer) {
        return (Node.Mapping) layer.entries().get(SHIFTS);
    }

    private static Optional<Node.Mapping> system(Node.Mapping shifts) {
        Optional<ShiftSystem> system = text(shifts, SYSTEM).flatMap(ShiftSystem::of);
        Optional<LocalTime> start = text(shifts, FIRST_START).flatMap(ShiftLayers::time);
        return system.map(found -> start.filter(time -> !time.isAfter(found.latestFirstStart()))
                .map(found::shifts)
                .orElseGet(found::shifts));
    }

    private static Optional<String> text(Node.Mapping shifts, String key) {
        return shifts.entries().get(key) instanceof Node.Text text
                ? Optional.of(text.text().strip())
                : Optional.empty();
    }

    /** A time that cannot be read is a fault for the reader to find. */
    private static Optional<LocalTime> time(String text) {
        try {
            return Optional.of(LocalTime.parse(text));
        } catch (DateTimeParseException foundLater) {
            return Optional.empty();
        }
    }
}
