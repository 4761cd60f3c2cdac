package spoolyard.scenarios;

import java.nio.file.Path;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.LinkedHashSet;
import java.util.List;
import java.util.Map;
import java.util.Set;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.Variation;
import spoolyard.scenarios.fault.Fault;
import spoolyard.scenarios.fault.FaultKind;
import spoolyard.scenarios.fault.Origin;
import spoolyard.scenarios.fault.ScenarioException;

/** A scenario at the points of a study. Immutable. */
public final class PointScenarios {
    private final Path scenario;
    private final List<String> sets;
    private final List<Variation> variations;

    /**
     * For a scenario.
     *
     * @param scenario folder or file
     * @param sets values that are set in any case
     * @param variations what is varied
     */
    public PointScenarios(Path scenario, List<String> sets, List<Variation> variations) {
        this.scenario = scenario;
        this.sets = List.copyOf(sets);
        this.variations = List.copyOf(variations);
    }

    /**
     * Reads the scenario of every point and forgets it.
     *
     * @param points a level of each factor
     * @return content hash of each, in order
     * @throws ScenarioException with every fault of all points, each once, with the points that have it
     */
    public List<String> check(List<List<Level>> points) throws ScenarioException {
        List<String> hashes = new ArrayList<>();
        Map<Fault, List<Integer>> faults = new LinkedHashMap<>();
        for (int number = 0; number < points.size(); number++) {
            try {
                hashes.add(read(points.get(number)).info().contentHash());
            } catch (ScenarioException wrong) {
                for (Fault fault : told(wrong, points.get(number))) {
                    faults.computeIfAbsent(fault, any -> new ArrayList<>()).add(number);
                }
            }
        }
        throwIfAny(faults, points);
        return hashes;
    }

    /**
     * The scenario of a point.
     *
     * @param point a level of each factor
     * @return the scenario
     * @throws ScenarioException if the levels are wrong or contradict each other
     */
    public Scenario read(List<Level> point) throws ScenarioException {
        List<String> all = new ArrayList<>(sets);
        for (int i = 0; i < variations.size(); i++) {
            all.add(variations.get(i).setting(point.get(i)));
        }
        return ScenarioReader.read(scenario, all);
    }

    /** What a pointer into nothing makes anew lacks much; that is told as one fault, of the pointer. */
    private Set<Fault> told(ScenarioException wrong, List<Level> point) {
        Set<Fault> told = new LinkedHashSet<>();
        for (Fault fault : wrong.faults()) {
            told.add(IntStream.range(0, variations.size())
                    .filter(i -> !point.get(i).value().startsWith("{"))
                    .mapToObj(variations::get)
                    .filter(varied -> fault.kind() == FaultKind.MISSING_VALUE
                            && fault.field().startsWith(varied.pointer() + "/"))
                    .findFirst()
                    .map(PointScenarios::leadsToNothing)
                    .orElse(fault));
        }
        return told;
    }

    private static Fault leadsToNothing(Variation varied) {
        return new Fault(
                FaultKind.BAD_POINTER,
                new Origin("--vary", 0, varied.pointer()),
                varied.levels().described(),
                "Must lead to a value of the scenario; there is nothing on the way to it.",
                "look for a misspelt name in the pointer");
    }

    /** What several values of a factor have in common is one fault. */
    private void throwIfAny(Map<Fault, List<Integer>> byFault, List<List<Level>> points) throws ScenarioException {
        Map<List<Object>, List<Fault>> alike = byFault.keySet().stream()
                .collect(Collectors.groupingBy(
                        fault -> List.of(fault.kind(), origin(fault), fault.allowed()),
                        LinkedHashMap::new,
                        Collectors.toList()));
        Set<Fault> told = new LinkedHashSet<>();
        alike.values().forEach(same -> {
            List<Integer> numbers = same.stream()
                    .flatMap(fault -> byFault.get(fault).stream())
                    .distinct()
                    .sorted()
                    .toList();
            Fault first = same.get(0);
            String values = same.stream().map(Fault::value).distinct().collect(Collectors.joining(", "));
            told.add(new Fault(
                    first.kind(), origin(first), values, where(numbers, points) + first.allowed(), first.mend()));
        });
        ScenarioException.throwIfAny(told);
    }

    private static String where(List<Integer> numbers, List<List<Level>> points) {
        int more = numbers.size() - 1;
        int first = numbers.get(0);
        return "At point " + (first + 1) + " ("
                + points.get(first).stream().map(Level::label).collect(Collectors.joining("; ")) + ")"
                + (more > 0 ? " and " + more + " more: " : ": ");
    }

    private Origin origin(Fault fault) {
        boolean isVaried = variations.stream()
                .anyMatch(each ->
                        fault.field().equals(each.pointer()) || fault.field().startsWith(each.pointer() + "/"));
        return isVaried ? new Origin("--vary", 0, fault.field()) : fault.origin();
    }
}
