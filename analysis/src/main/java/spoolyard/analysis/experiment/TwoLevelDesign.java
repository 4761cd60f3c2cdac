package spoolyard.analysis.experiment;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.stream.IntStream;

/**
 * A two-level factorial design, full or a fraction. Immutable. The first factors run through all combinations of their
 * levels, the first of them fastest (Yates order); each further one is a product of some of these, its generator.
 *
 * <p>Source of the generators: NIST, Dataplot file DEXRES4 (resolution IV with up to 8 factors; read); Box, Hunter and
 * Hunter, Statistics for Experimenters, 2nd ed. 2005, table 6.22, and NIST/SEMATECH e-Handbook, section 5.3.3.4.7 (the
 * others; from memory).
 *
 * @param generators one a factor, as a mask over the basic factors; a basic factor is its own
 * @param basic number of basic factors; there are {@code 2^basic} runs
 */
public record TwoLevelDesign(List<Integer> generators, int basic) {
    /** Most factors for which there is a design. */
    public static final int MOST_FACTORS = 15;

    private static final List<String> EIGHT_RUNS = List.of("AB", "AC", "BC", "ABC");
    private static final List<String> SIXTEEN_RUNS =
            List.of("ABC", "BCD", "ACD", "ABD", "ABCD", "AB", "AC", "AD", "BC", "BD", "CD");

    /** Copies the list. */
    public TwoLevelDesign {
        generators = List.copyOf(generators);
    }

    /**
     * The usual design for a number of factors: full up to three, 8 runs for four, 16 for more. Main effects are clear of
     * each other, and with up to 8 factors of all interactions of two as well.
     *
     * @param factors number of factors, 2 to {@value #MOST_FACTORS}
     * @return the design
     * @throws IllegalArgumentException if there is none for so many
     */
    public static TwoLevelDesign of(int factors) {
        return switch (factors) {
            case 2, 3 -> of(factors, List.of());
            case 4 -> of(3, List.of("ABC"));
            case 5 -> of(4, List.of("ABCD"));
            case 8 -> of(4, List.of("BCD", "ACD", "ABC", "ABD"));
            default -> of(4, sixteen(factors));
        };
    }

    private static List<String> sixteen(int factors) {
        if (factors < 2 || factors > MOST_FACTORS) {
            throw new IllegalArgumentException("factors = " + factors + ". Must be 2 to " + MOST_FACTORS + ".");
        }
        return SIXTEEN_RUNS.subList(0, factors - 4);
    }

    /**
     * The design with the fewest runs: 8 for four to seven factors, main effects clear of each other only.
     *
     * @param factors number of factors, 4 to 7
     * @return the design
     */
    public static TwoLevelDesign ofEightRuns(int factors) {
        return factors == 4 ? of(4) : of(3, EIGHT_RUNS.subList(0, factors - 3));
    }

    private static TwoLevelDesign of(int basic, List<String> words) {
        List<Integer> generators = new ArrayList<>();
        IntStream.range(0, basic).forEach(factor -> generators.add(1 << factor));
        words.forEach(word ->
                generators.add(word.chars().map(letter -> 1 << letter - 'A').sum()));
        return new TwoLevelDesign(generators, basic);
    }

    /**
     * Number of factors.
     *
     * @return at least 2
     */
    public int factors() {
        return generators.size();
    }

    /**
     * Number of runs.
     *
     * @return a power of two
     */
    public int runs() {
        return 1 << basic;
    }

    /**
     * The level of a factor in a run.
     *
     * @param run from 0
     * @param factor from 0
     * @return true if high
     */
    public boolean isHigh(int run, int factor) {
        int generator = generators.get(factor);
        int lows = Integer.bitCount(generator & ~run);
        return lows % 2 == 0;
    }

    /**
     * Main effect of a factor: mean response at its high level less that at its low level.
     *
     * @param factor from 0
     * @param responses one a run
     * @return the effect, in the unit of the response
     */
    public double effect(int factor, double[] responses) {
        double sum = 0;
        for (int run = 0; run < runs(); run++) {
            sum += isHigh(run, factor) ? responses[run] : -responses[run];
        }
        return 2 * sum / runs();
    }

    /**
     * The resolution: length of the shortest product of factors that never changes its sign.
     *
     * @return at least 3; empty for a full design, in which there is none
     */
    public Optional<Integer> resolution() {
        return IntStream.range(1, 1 << factors())
                .filter(word -> product(word) == 0)
                .map(Integer::bitCount)
                .boxed()
                .min(Integer::compare);
    }

    /**
     * Interactions of two factors that this design cannot tell from the main effect of a factor.
     *
     * @param factor from 0
     * @return pairs of factors, the lower first
     */
    public List<List<Integer>> aliases(int factor) {
        List<List<Integer>> pairs = new ArrayList<>();
        for (int i = 0; i < factors(); i++) {
            for (int j = i + 1; j < factors(); j++) {
                if ((generators.get(i) ^ generators.get(j)) == generators.get(factor)) {
                    pairs.add(List.of(i, j));
                }
            }
        }
        return pairs;
    }

    private int product(int word) {
        return IntStream.range(0, factors())
                .filter(factor -> (word >> factor & 1) != 0)
                .map(generators::get)
                .reduce(0, (a, b) -> a ^ b);
    }
}
