package spoolyard.analysis.buffer;

import java.util.Comparator;
import java.util.EnumMap;
import java.util.List;
import java.util.Locale;
import java.util.Map;
import java.util.stream.Collectors;
import spoolyard.core.plant.Line;
import spoolyard.core.record.OverflowCause;

/** Why no capacity meets a target: what the largest one still overflows for. */
public final class Limits {
    private Limits() {}

    /**
     * Overflows by cause.
     *
     * @param seen what replications lost
     * @return % of the swaps, every cause a key; not numbers without a swap
     */
    public static Map<OverflowCause, Double> pctOfSwaps(List<Loss> seen) {
        double swaps = seen.stream().mapToDouble(Loss::swaps).sum();
        Map<OverflowCause, Double> causes = new EnumMap<>(OverflowCause.class);
        for (OverflowCause cause : OverflowCause.values()) {
            double count = seen.stream()
                    .mapToDouble(loss -> loss.overflowsByCause().get(cause))
                    .sum();
            causes.put(cause, 100 * count / swaps);
        }
        return causes;
    }

    /**
     * In one or two sentences.
     *
     * @param largest the curve at the largest capacity
     * @param line the line
     * @return what limits it
     */
    public static String of(CapacityCurve.Point largest, Line line) {
        Map.Entry<OverflowCause, Double> most = largest.pctOfSwaps().entrySet().stream()
                .max(Map.Entry.comparingByValue(Comparator.naturalOrder()))
                .orElseThrow();
        double allPct = largest.pctOfSwaps().values().stream()
                .mapToDouble(Double::doubleValue)
                .sum();
        String metres = Double.toString(largest.capacityM()).replaceAll("\\.0$", "");
        if (allPct == 0) {
            return "At " + metres + " m none was seen, but so few swaps do not rule it out: more replications may, with"
                    + " --most.";
        }
        return String.format(
                Locale.ROOT,
                "At %s m %.2f %% of the swaps still overflow, %s; mostly, %s",
                metres,
                allPct,
                shares(largest.pctOfSwaps()),
                why(most.getKey(), line));
    }

    /** The largest first. */
    private static String shares(Map<OverflowCause, Double> pctOfSwaps) {
        return pctOfSwaps.entrySet().stream()
                .filter(each -> each.getValue() > 0)
                .sorted(Map.Entry.comparingByValue(Comparator.reverseOrder()))
                .map(each -> String.format(
                        Locale.ROOT,
                        "%.2f %% for %s",
                        each.getValue(),
                        each.getKey().label()))
                .collect(Collectors.joining(", "));
    }

    private static String why(OverflowCause cause, Line line) {
        return switch (cause) {
            case NO_CREW -> "nobody comes in time, so people, zones and priorities limit it, not metres.";
            case SWAP_TOO_SLOW -> "the swap itself outlasts the room, so its time limits it.";
            case RACK_FULL -> "full spools find no place, so what follows the rack limits it.";
            case CARRIED_OVER ->
                String.format(
                        Locale.ROOT,
                        "the winder, at %.0f m/min at most, does not catch up before the next spool is full, so the level"
                                + " climbs from swap to swap and its speed or the size of the spool limits it.",
                        60 * line.winder().maxSpeedMPerS());
        };
    }
}
