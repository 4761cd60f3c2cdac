package spoolyard.scenarios;

import java.util.List;
import spoolyard.core.plant.Plant;
import spoolyard.scenarios.check.PurgeInputs;
import spoolyard.scenarios.fault.Warning;

/**
 * A scenario that was read and found sound. Immutable.
 *
 * @param plant all that a run needs to know
 * @param info what reports need beside it
 * @param warnings what a plant engineer would want to know before trusting a result
 * @param purge what a study of its purges needs
 */
public record Scenario(Plant plant, ScenarioInfo info, List<Warning> warnings, PurgeInputs purge) {
    /** Copies the list. */
    public Scenario {
        warnings = List.copyOf(warnings);
    }
}
