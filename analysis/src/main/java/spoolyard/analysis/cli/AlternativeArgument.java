package spoolyard.analysis.cli;

import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import spoolyard.scenarios.Scenario;
import spoolyard.scenarios.ScenarioReader;
import spoolyard.scenarios.fault.ScenarioException;

/**
 * An alternative as it is typed: a scenario, or values set over the base, with or without a name before it. Immutable.
 *
 * <pre>
 * scenarios/orrenvale-three-at-night               a scenario; its name is that of the folder
 * new=plants/b/plant.yaml                          a scenario with another name
 * two=/shifts/pattern/N/crew/operator=2            the base with a value set
 * wide=/lines/L3/accumulator=80 m,/lines/L4/accumulator=80 m
 * </pre>
 *
 * @param typed as it was typed
 * @param name its name
 * @param path folder or file of the scenario
 * @param settings values set over it, as {@code pointer=value}
 */
record AlternativeArgument(String typed, String name, Path path, List<String> settings) {
    private static final String BETWEEN_SETTINGS = ",(?=/)";

    /** Copies the list. */
    AlternativeArgument {
        settings = List.copyOf(settings);
    }

    /**
     * Understands what was typed.
     *
     * @param typed the argument
     * @param base the base, over which values are set
     * @return the alternative
     */
    static AlternativeArgument of(String typed, Path base) {
        int equals = typed.indexOf('=');
        if (isSettings(typed)) {
            return new AlternativeArgument(typed, typed, base, split(typed));
        }
        if (equals <= 0 || Files.exists(Path.of(typed))) {
            Path path = Path.of(typed);
            return new AlternativeArgument(typed, ScenarioArgument.nameOf(path), path, List.of());
        }
        String name = typed.substring(0, equals).strip();
        String rest = typed.substring(equals + 1);
        return isSettings(rest)
                ? new AlternativeArgument(typed, name, base, split(rest))
                : new AlternativeArgument(typed, name, Path.of(rest), List.of());
    }

    /**
     * Reads the scenario.
     *
     * @param common values set over the base and all alternatives
     * @return the scenario
     * @throws ScenarioException with all faults, if there are any
     */
    Scenario read(List<String> common) throws ScenarioException {
        List<String> all = new ArrayList<>(common);
        all.addAll(settings);
        return ScenarioReader.read(path, all);
    }

    private static boolean isSettings(String text) {
        return text.startsWith("/") && text.indexOf('=') > 0;
    }

    private static List<String> split(String settings) {
        return List.of(settings.split(BETWEEN_SETTINGS));
    }
}
