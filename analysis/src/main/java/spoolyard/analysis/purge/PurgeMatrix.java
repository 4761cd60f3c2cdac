package spoolyard.analysis.purge;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.function.Predicate;
import java.util.function.ToDoubleFunction;
import org.hipparchus.stat.correlation.SpearmansCorrelation;
import spoolyard.core.plant.Colour;
import spoolyard.core.plant.Line;
import spoolyard.core.plant.Polymer;
import spoolyard.scenarios.check.PurgeBasis;

/**
 * The purges of all pairs of colours that a line makes in one polymer. The order of the colours comes out of the purges: by
 * what it costs to leave a colour less what it costs to come to it, on average, so that the cheap changes go down the list.
 * Immutable.
 */
public final class PurgeMatrix {
    private final Line line;
    private final Polymer polymer;
    private final List<Colour> colours;
    private final Map<String, Map<String, PurgeEntry>> entries = new LinkedHashMap<>();

    /**
     * Orders the colours by their purges.
     *
     * @param line the line
     * @param polymer the polymer
     * @param offered the colours, in any order
     * @param entries purge of each pair that is known
     */
    PurgeMatrix(Line line, Polymer polymer, List<Colour> offered, List<PurgeEntry> entries) {
        this.line = line;
        this.polymer = polymer;
        entries.forEach(entry -> this.entries
                .computeIfAbsent(entry.from(), from -> new LinkedHashMap<>())
                .put(entry.to(), entry));
        this.colours = offered.stream()
                .sorted(Comparator.comparingDouble(this::dearerToLeave))
                .toList();
    }

    private double dearerToLeave(Colour colour) {
        double leaving = mean(entry -> entry.from().equals(colour.code()));
        double coming = mean(entry -> entry.to().equals(colour.code()));
        return leaving - coming;
    }

    private double mean(Predicate<PurgeEntry> which) {
        return entries().stream()
                .filter(which)
                .mapToDouble(PurgeEntry::kg)
                .average()
                .orElse(0);
    }

    /**
     * Where it holds.
     *
     * @return the line
     */
    public Line line() {
        return line;
    }

    /**
     * In what it holds.
     *
     * @return the polymer
     */
    public Polymer polymer() {
        return polymer;
    }

    /**
     * The colours, those first that are cheap to leave and dear to come to.
     *
     * @return at least one
     */
    public List<Colour> colours() {
        return colours;
    }

    /**
     * The purge of a pair.
     *
     * @param from colour code before
     * @param to colour code after
     * @return what is known; empty for a colour to itself, and if nothing tells of the pair
     */
    public Optional<PurgeEntry> entry(String from, String to) {
        return Optional.ofNullable(entries.getOrDefault(from, Map.of()).get(to));
    }

    /**
     * All that is known.
     *
     * @return the purges, by colour before, then after
     */
    public List<PurgeEntry> entries() {
        List<PurgeEntry> all = new ArrayList<>();
        entries.values().forEach(row -> all.addAll(row.values()));
        return all;
    }

    /**
     * How many of the figures rest on what.
     *
     * @param basis a basis
     * @return pairs
     */
    public long count(PurgeBasis basis) {
        return entries().stream().filter(entry -> entry.basis() == basis).count();
    }

    /**
     * How far the order of the colours is that of their lightness. Source: C. Spearman, American Journal of Psychology 15
     * (1904) 72-101.
     *
     * @return rank correlation of place and L*, from -1 (light to dark) to 1; not a number for fewer than two colours
     */
    public double correlationWithLightness() {
        if (colours.size() < 2) {
            return Double.NaN;
        }
        double[] places = new double[colours.size()];
        double[] lightness = new double[colours.size()];
        for (int i = 0; i < places.length; i++) {
            places[i] = i;
            lightness[i] = colours.get(i).lightness();
        }
        return new SpearmansCorrelation().correlation(places, lightness);
    }

    /**
     * The largest figure.
     *
     * @param of kilograms, minutes or metres
     * @return 0 if nothing is known
     */
    public double largest(ToDoubleFunction<PurgeEntry> of) {
        return entries().stream().mapToDouble(of).max().orElse(0);
    }
}
