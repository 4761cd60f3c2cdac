package spoolyard.core.plant;

import java.util.Optional;

/**
 * What a plant draws and costs. Immutable. It changes nothing in a run: it only values what the run tells.
 *
 * @param energy electric energy; empty if nobody asks for it
 * @param prices money; empty if nobody asks for it
 */
public record Economy(Optional<EnergyUse> energy, Optional<Prices> prices) {
    /** Nothing is valued. */
    public static final Economy NONE = new Economy(Optional.empty(), Optional.empty());
}
