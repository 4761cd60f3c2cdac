package spoolyard.core.random;

import java.util.Collection;
import java.util.Collections;
import java.util.SortedMap;
import java.util.TreeMap;
import spoolyard.core.plant.Law;

/**
 * Inverse gamma distributions, tabled once for a plant and shared by its replications. Immutable, safe among threads.
 *
 * <p>Example: {@code new Streams(seed, replication, InverseTables.of(laws))}.
 */
public final class InverseTables {
    /** No table: each gamma law builds its own when it is asked for. */
    public static final InverseTables NONE = of(Collections.emptyList());

    private final SortedMap<Double, Quantile> byCv;

    private InverseTables(SortedMap<Double, Quantile> byCv) {
        this.byCv = Collections.unmodifiableSortedMap(byCv);
    }

    /**
     * Tables for every gamma law of a collection; one for each coefficient of variation, whatever the means. Cost: some
     * milliseconds for each.
     *
     * @param laws any laws, repeated or not
     * @return the tables
     */
    public static InverseTables of(Collection<? extends Law> laws) {
        SortedMap<Double, Quantile> byCv = new TreeMap<>();
        for (Law law : laws) {
            if (law instanceof Law.Gamma gamma) {
                byCv.computeIfAbsent(gamma.cv(), InverseTables::gammaOfMeanOne);
            }
        }
        return new InverseTables(byCv);
    }

    Quantile quantile(Law.Gamma gamma) {
        Quantile known = byCv.get(gamma.cv());
        Quantile ofMeanOne = known == null ? gammaOfMeanOne(gamma.cv()) : known;
        double mean = gamma.mean();
        return u -> mean * ofMeanOne.at(u);
    }

    private static Quantile gammaOfMeanOne(double cv) {
        return cv <= NarrowGamma.LARGEST_CV ? new NarrowGamma(cv) : new GammaTable(cv);
    }
}
