package spoolyard.scenarios.choice;

import java.util.ArrayList;
import java.util.List;

/**
 * Choices, at what rate of interest. Immutable.
 *
 * @param interest rate a year as a share, {@code >= 0}
 * @param all the choices in file order, at least one
 */
public record Choices(double interest, List<Choice> all) {
    /** Copies the list. */
    public Choices {
        all = List.copyOf(all);
    }

    /**
     * How many mixes they make: the full product, of each choice what the scenario has or one of the options.
     *
     * @return at least 2
     */
    public long mixCount() {
        long count = 1;
        for (Choice choice : all) {
            count = Math.multiplyExact(count, choice.options().size() + 1L);
        }
        return count;
    }

    /**
     * All mixes, the scenario as it is first; the last choice changes fastest.
     *
     * @return as many as are counted
     */
    public List<Mix> mixes() {
        List<Mix> mixes = List.of(new Mix(List.of()));
        for (Choice choice : all) {
            List<Mix> longer = new ArrayList<>();
            for (Mix mix : mixes) {
                for (int taken = 0; taken <= choice.options().size(); taken++) {
                    longer.add(mix.with(choice, taken));
                }
            }
            mixes = longer;
        }
        return List.copyOf(mixes);
    }
}
