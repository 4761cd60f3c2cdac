package spoolyard.scenarios.choice;

import java.util.List;
import spoolyard.scenarios.fault.Origin;

/**
 * One thing that may be done. Immutable.
 *
 * @param name its name, for people
 * @param values what it changes of the scenario, at least one
 * @param price what it costs
 * @param origin where it is declared
 */
public record Option(String name, List<ChosenValue> values, Price price, Origin origin) {
    /** Copies the list. */
    public Option {
        values = List.copyOf(values);
    }
}
