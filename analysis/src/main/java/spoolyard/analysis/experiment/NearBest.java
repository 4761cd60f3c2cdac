package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.Comparator;
import java.util.List;
import java.util.OptionalDouble;
import org.hipparchus.distribution.continuous.TDistribution;

/**
 * Selects a system that is surely little below the best, and says how far below it may be. Looks at all systems after laid
 * down numbers of observations; drops those that others surely make up for, and stops when one makes up for all. Immutable.
 *
 * <p>Promise: observations of different numbers are independent and differences of two systems normal; systems may be
 * correlated within a number (common random numbers). At each look each pair has Student's one-sided bound on the
 * difference of the means. Only the bound on a better system less a worse one can do harm, so with {@code m} pairs and
 * {@code l} looks all that may do harm hold together with probability {@code >= 1 - alpha}, if each is taken at {@code alpha
 * / (m l)} (Bonferroni's inequality). Then the selected system is at most {@link Choice#atMostBelow} below the best. No
 * bound depends on what is wanted, so that may be chosen from the data, and the promise holds wherever it stops.
 *
 * <p>A system that is dropped hands over how far the best may be above it: if {@code j} stands for systems at most {@code
 * d} above it, and {@code j} is at most {@code u} above {@code i}, then {@code i} stands for systems at most {@code d +
 * max(0, u)} above it.
 */
public final class NearBest {
    private static final double SHARE_OF_SPREAD = 0.05;

    private final double alphaEach;
    private final List<Integer> looks;

    /**
     * The procedure.
     *
     * @param alpha chance that the promise fails, in (0, 1)
     * @param pairs pairs of systems that may be held against each other, {@code >= 1}
     * @param looks observations of a system at each look, ascending, from 2
     */
    public NearBest(double alpha, int pairs, List<Integer> looks) {
        if (!(alpha > 0 && alpha < 1) || pairs < 1 || looks.isEmpty() || looks.get(0) < 2) {
            throw new IllegalArgumentException("alpha = " + alpha + ", pairs = " + pairs + ", looks = " + looks
                    + ". Must be between 0 and 1, >= 1, and >= 2.");
        }
        this.alphaEach = alpha / (pairs * (double) looks.size());
        this.looks = List.copyOf(looks);
    }

    /**
     * What was selected. Immutable.
     *
     * @param best number of the system with the best mean of those left
     * @param atMostBelow how far the best of all may be above it, {@code >= 0}
     * @param within how far it might be, as wanted or as chosen
     * @param count observations of it
     * @param mayBeat systems that may be further above it than wanted; empty if decided
     * @param wouldTake observations that would decide, if means and variances are as seen; infinite where none would
     */
    public record Choice(
            int best, double atMostBelow, double within, int count, List<Integer> mayBeat, double wouldTake) {
        /** Copies the list. */
        public Choice {
            mayBeat = List.copyOf(mayBeat);
        }

        /**
         * Whether it is as near the best as wanted.
         *
         * @return false if it stopped before
         */
        public boolean isDecided() {
            return atMostBelow <= within;
        }
    }

    /** Whether there is time for a further look. */
    @FunctionalInterface
    public interface Effort {
        /**
         * Asked before it.
         *
         * @param systems that are left
         * @param count observations of each that there would be
         * @return whether it may begin
         */
        boolean allows(List<Integer> systems, int count);
    }

    /**
     * Selects.
     *
     * @param observations of the systems; larger is better
     * @param wanted how far the selected system may be below the best; empty for a twentieth of the spread of the means at
     *     the first look
     * @param effort asked before each further look
     * @return the selection
     */
    public Choice select(Observations observations, OptionalDouble wanted, Effort effort) {
        Tally tally = new Tally(observations);
        tally.take(looks.get(0));
        Field field = new Field(tally, wanted.orElseGet(() -> SHARE_OF_SPREAD * spread(tally)));
        Choice choice = field.choice();
        for (int next = 1; next < looks.size() && !choice.isDecided(); next++) {
            field.dropMadeUpFor();
            if (!effort.allows(tally.remaining(), looks.get(next))) {
                break;
            }
            tally.take(looks.get(next));
            choice = field.choice();
        }
        return choice;
    }

    private static double spread(Tally tally) {
        List<Integer> all = tally.remaining();
        return all.stream().mapToDouble(tally::mean).max().orElseThrow()
                - all.stream().mapToDouble(tally::mean).min().orElseThrow();
    }

    /** The systems still in it, and how far the best may be above each of them by those that it made up for. */
    private final class Field {
        private final Tally tally;
        private final double within;
        private final double[] standsFor;

        Field(Tally tally, double within) {
            this.tally = tally;
            this.within = within;
            this.standsFor = new double[tally.remaining().size()];
        }

        /** A half of what is wanted may be handed over, the other half is left for the end. */
        void dropMadeUpFor() {
            List<Integer> kept = new ArrayList<>();
            for (int system : byMean()) {
                int by = kept.stream()
                        .min(Comparator.comparingDouble(other -> above(system, other)))
                        .orElse(system);
                if (by != system && above(system, by) <= within / 2) {
                    standsFor[by] = Math.max(standsFor[by], above(system, by));
                } else {
                    kept.add(system);
                }
            }
            tally.keep(kept.stream().sorted().toList());
        }

        Choice choice() {
            List<Integer> byMean = byMean();
            int best = byMean.get(0);
            List<Integer> others = byMean.subList(1, byMean.size());
            double below = standsFor[best];
            double wouldTake = tally.count();
            List<Integer> mayBeat = new ArrayList<>();
            for (int other : others) {
                double its = above(other, best);
                below = Math.max(below, its);
                if (its > within) {
                    mayBeat.add(other);
                    wouldTake = Math.max(wouldTake, wouldTake(other, best));
                }
            }
            return new Choice(best, below, within, tally.count(), mayBeat, wouldTake);
        }

        private List<Integer> byMean() {
            return tally.remaining().stream()
                    .sorted(Comparator.comparingDouble(system -> -tally.mean(system)))
                    .toList();
        }

        /** How far the best of those that a system stands for may be above another. */
        private double above(int system, int other) {
            return standsFor[system]
                    + Math.max(0, tally.mean(system) - tally.mean(other) + halfWidth(system, other, tally.count()));
        }

        private double halfWidth(int system, int other, int count) {
            return new TDistribution(tally.count() - 1).inverseCumulativeProbability(1 - alphaEach)
                    * Math.sqrt(tally.varianceOfDifference(system, other) / count);
        }

        private double wouldTake(int system, int best) {
            double room = within - standsFor[system] - (tally.mean(system) - tally.mean(best));
            double ratio = halfWidth(system, best, 1) / room;
            return room > 0 ? Math.ceil(ratio * ratio) : Double.POSITIVE_INFINITY;
        }
    }
}
