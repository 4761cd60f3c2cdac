package spoolyard.scenarios.choice;

import java.util.ArrayList;
import java.util.List;
import java.util.stream.Collectors;

/**
 * One option, or none, of each choice. Immutable.
 *
 * @param taken those that were taken, in the order of the choices; none for the scenario as it is
 */
public record Mix(List<Taken> taken) {
    /** Copies the list. */
    public Mix {
        taken = List.copyOf(taken);
    }

    /**
     * An option of a choice.
     *
     * @param choice the choice
     * @param option the option
     */
    public record Taken(Choice choice, Option option) {
        /**
         * In words.
         *
         * @return name of the choice and of the option
         */
        public String label() {
            return choice.name() + " " + option.name();
        }
    }

    /** With one choice more; 0 takes none of its options, 1 the first. */
    Mix with(Choice choice, int number) {
        if (number == 0) {
            return this;
        }
        List<Taken> more = new ArrayList<>(taken);
        more.add(new Taken(choice, choice.options().get(number - 1)));
        return new Mix(more);
    }

    /**
     * In words.
     *
     * @return for example {@code accumulator of L3 100 m, winder of L3 two-position}
     */
    public String label() {
        return taken.isEmpty() ? "as it is" : taken.stream().map(Taken::label).collect(Collectors.joining(", "));
    }

    /**
     * The values that are set over the scenario.
     *
     * @return each a pointer, an equals sign and YAML
     */
    public List<String> settings() {
        return taken.stream()
                .flatMap(each -> each.option().values().stream())
                .map(ChosenValue::setting)
                .toList();
    }
}
