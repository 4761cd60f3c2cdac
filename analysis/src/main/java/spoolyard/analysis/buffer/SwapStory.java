package spoolyard.analysis.buffer;

import java.util.Comparator;
import java.util.List;
import java.util.Optional;
import spoolyard.analysis.buffer.SwapStudy.SeenSwap;
import spoolyard.core.quantity.Ticks;
import spoolyard.core.record.Swap;

/**
 * A swap and what everybody did meanwhile. Immutable.
 *
 * @param seen the swap
 * @param stints what each person did in the whole run
 */
public record SwapStory(SeenSwap seen, List<Stint> stints) {
    private static final String AT_WORK = "works";
    private static final String AT_HOME = "goes home";

    /** Copies the list. */
    public SwapStory {
        stints = List.copyOf(stints);
    }

    /**
     * The swap.
     *
     * @return what happened
     */
    public Swap swap() {
        return seen.swap();
    }

    /**
     * End of the story.
     *
     * @return when the winder could turn, or the last that is known
     */
    public long endTick() {
        Swap swap = swap();
        if (swap.turnedTick() != Ticks.NEVER) {
            return swap.turnedTick();
        }
        return swap.begunTick() != Ticks.NEVER ? swap.begunTick() : swap.fullTick();
    }

    /**
     * Who began the work that lets the winder turn.
     *
     * @return the stint at the swap; empty if nobody came or a machine did it
     */
    public Optional<Stint> server() {
        String task = "spool swap " + swap().line();
        return stints.stream()
                .filter(stint -> stint.what().equals(AT_WORK)
                        && stint.detail().equals(task)
                        && stint.startTick() == swap().begunTick())
                .findFirst();
    }

    /**
     * What a person did between two instants.
     *
     * @param who the person
     * @param fromTick first instant
     * @param toTick last instant
     * @return by time
     */
    public List<Stint> of(String who, long fromTick, long toTick) {
        return stints.stream()
                .filter(stint -> stint.who().equals(who) && stint.overlaps(fromTick, toTick))
                .sorted(Comparator.comparingLong(Stint::startTick))
                .toList();
    }

    /**
     * Everybody at the plant between two instants.
     *
     * @param fromTick first instant
     * @param toTick last instant
     * @return names, in order
     */
    public List<String> present(long fromTick, long toTick) {
        return stints.stream()
                .filter(stint ->
                        stint.overlaps(fromTick, toTick) && !stint.what().equals(AT_HOME))
                .map(Stint::who)
                .distinct()
                .sorted()
                .toList();
    }
}
