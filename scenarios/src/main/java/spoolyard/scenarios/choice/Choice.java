package spoolyard.scenarios.choice;

import java.util.List;

/**
 * Options of which at most one is taken. Immutable.
 *
 * @param name its name, for people
 * @param now what the scenario has, for people
 * @param options what else there may be, at least one
 */
public record Choice(String name, String now, List<Option> options) {
    /** Copies the list. */
    public Choice {
        options = List.copyOf(options);
    }
}
