package spoolyard.core.plant;

import java.util.List;

/**
 * A station after the line: vacuum sealing, packing. Immutable.
 *
 * @param name name used in files and reports
 * @param kind {@link TaskKind#SEALING} or {@link TaskKind#PACKING}
 * @param servers work places, {@code >= 1}
 * @param cycles time and batch by spool mass, by ascending mass; the last covers all heavier spools
 * @param crew who works there, one person a place; nobody means machine-paced
 * @param open when machine-paced places may start a cycle, disjoint, by start; crew-paced places follow the crew within it
 * @param waitingPlaces spools that can wait before it, {@code >= 0}; for the first station this is the finished-spool
 *     rack; {@link Integer#MAX_VALUE} means no limit
 * @param repeatProbability chance that a cycle must be done again, in [0, 1)
 * @param stoppages causes that interrupt a place
 * @param place where it stands
 */
public record FinishingStation(
        String name,
        TaskKind kind,
        int servers,
        List<Cycle> cycles,
        CrewNeed crew,
        List<Window> open,
        int waitingPlaces,
        double repeatProbability,
        List<Stoppage> stoppages,
        Place place) {
    /** Copies the lists. */
    public FinishingStation {
        cycles = List.copyOf(cycles);
        open = List.copyOf(open);
        stoppages = List.copyOf(stoppages);
    }

    /**
     * One cycle of a work place.
     *
     * @param upToSpoolKg heaviest spool it applies to, kg; infinity for all
     * @param batch spools done at once, {@code >= 1}; a cycle starts with what is there, up to this many
     * @param timeS time of a cycle, seconds
     */
    public record Cycle(double upToSpoolKg, int batch, Law timeS) {}
}
