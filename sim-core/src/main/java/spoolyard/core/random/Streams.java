package spoolyard.core.random;

import java.util.LinkedHashSet;
import java.util.Objects;
import java.util.Set;
import spoolyard.core.plant.Law;
import umontreal.ssj.rng.MRG32k3aL;

/**
 * The random numbers of one replication: one stream per cause, keyed by its name, such as {@code "line L3 / breakdown"}.
 * Belongs to one run and one thread.
 *
 * <p>A stream depends on master seed, replication and name only, never on what else exists or on the order of asking, so
 * two variants of a plant see the same luck in all they share. Each is an MRG32k3a generator with a seed from
 * {@link StreamSeed}; a value costs one uniform of its stream.
 *
 * <p>Source: L'Ecuyer, Good parameters and implementations for combined multiple recursive random number generators,
 * Operations Research 47 (1999) 159-164.
 *
 * @see <a href="../../../../../../../../docs/decisions/0003-streams-are-keyed-by-name.md">decision 0003</a>
 */
public final class Streams {
    private final long masterSeed;
    private final int replication;
    private final InverseTables tables;
    private final Set<String> taken = new LinkedHashSet<>();

    /**
     * Streams that build a table for each gamma law asked for (some milliseconds each). For many replications of one
     * plant share the tables instead.
     *
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @throws IllegalArgumentException if {@code replication} is negative
     */
    public Streams(long masterSeed, int replication) {
        this(masterSeed, replication, InverseTables.NONE);
    }

    /**
     * Streams with tables built once.
     *
     * @param masterSeed seed of the experiment, any value
     * @param replication number of the replication, {@code >= 0}
     * @param tables tables for the gamma laws of the plant; a missing one is built when asked for
     * @throws IllegalArgumentException if {@code replication} is negative
     */
    public Streams(long masterSeed, int replication, InverseTables tables) {
        if (replication < 0) {
            throw new IllegalArgumentException("replication = " + replication + ". Must be >= 0.");
        }
        this.masterSeed = masterSeed;
        this.replication = replication;
        this.tables = Objects.requireNonNull(tables, "tables");
    }

    /**
     * The stream of a name.
     *
     * @param name the cause, not blank, for example {@code "line L3 / gauge"}
     * @return its uniforms, from the first
     * @throws IllegalArgumentException if the name is blank
     * @throws IllegalStateException if the name was asked for before: one stream per cause
     */
    public Uniforms uniforms(String name) {
        claim(name);
        MRG32k3aL generator = new MRG32k3aL();
        // At once: SSJ hands out its own seeds from a shared counter, which is neither ours nor safe among threads.
        generator.setSeed(StreamSeed.of(masterSeed, replication, name));
        return generator::nextDouble;
    }

    /**
     * A law with the stream of a name. {@link Law.Fixed} takes its name and draws nothing.
     *
     * @param law what to draw
     * @param name the cause, as in {@link #uniforms}
     * @return the law, drawn by inversion: non-decreasing in the uniform, one uniform a value
     * @throws IllegalArgumentException if the name is blank
     * @throws IllegalStateException if the name was asked for before
     */
    public Variate variate(Law law, String name) {
        if (law instanceof Law.Fixed fixed) {
            claim(name);
            double value = fixed.value();
            return () -> value;
        }
        Quantile quantile = Quantiles.of(law, tables);
        Uniforms uniforms = uniforms(name);
        return () -> quantile.at(uniforms.next());
    }

    private void claim(String name) {
        if (name.isBlank()) {
            throw new IllegalArgumentException("stream name = \"" + name + "\". Must not be blank.");
        }
        if (!taken.add(name)) {
            throw new IllegalStateException("stream name = \"" + name + "\". Must be asked for once: one per cause.");
        }
    }
}
