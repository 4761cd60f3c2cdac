package spoolyard.analysis.study;

import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.stream.Collectors;
import spoolyard.core.random.Streams;
import spoolyard.core.random.Uniforms;
import spoolyard.scenarios.factor.Level;
import spoolyard.scenarios.factor.Levels;
import spoolyard.scenarios.factor.Variation;
import umontreal.ssj.hups.PointSetIterator;
import umontreal.ssj.hups.SobolSequence;

/** How the points of a study lie in the space of its factors. */
public enum Design {
    /** Each level of each factor with each of all others. */
    GRID("grid"),
    /**
     * N points of which each factor has one in each Nth of its range, at random within it. Source: M. D. McKay, R. J.
     * Beckman and W. J. Conover, A comparison of three methods for selecting values of input variables in the analysis of
     * output from a computer code, Technometrics 21 (1979) 239-245.
     */
    LATIN_HYPERCUBE("Latin hypercube"),
    /**
     * The first N points of the Sobol sequence, not scrambled, in the order of the Gray code, the first in the corner of
     * all low ends. Direction numbers of the SSJ library, in these dimensions those of P. Bratley and B. L. Fox, Algorithm
     * 659, ACM Transactions on Mathematical Software 14 (1988) 88-100.
     */
    SOBOL("Sobol");

    private static final int BITS = 31;

    private final String label;

    Design(String label) {
        this.label = label;
    }

    /**
     * The design of a name.
     *
     * @param name as on the command line
     * @return the design, if there is one
     */
    public static Optional<Design> named(String name) {
        return Arrays.stream(values())
                .filter(design -> design.fileName().equals(name.toLowerCase(Locale.ROOT)))
                .findFirst();
    }

    /**
     * Name in files and on the command line.
     *
     * @return lower case with hyphens
     */
    public String fileName() {
        return name().toLowerCase(Locale.ROOT).replace('_', '-');
    }

    /**
     * Name for people.
     *
     * @return a word or two
     */
    public String label() {
        return label;
    }

    /**
     * How many points a grid has.
     *
     * @param factors lists of levels
     * @return their product; the greatest number there is if it is beyond it
     * @throws IllegalArgumentException if a factor is no list
     */
    public static long gridSize(List<Variation> factors) {
        long size = 1;
        for (Variation factor : factors) {
            long levels = listed(factor).levels().size();
            size = size > Long.MAX_VALUE / levels ? Long.MAX_VALUE : size * levels;
        }
        return size;
    }

    /**
     * The points.
     *
     * @param factors what is varied; lists in a grid
     * @param count how many points; does not matter in a grid
     * @param seed of the study; moves the Latin hypercube only
     * @return shape {@code [point][factor]}
     */
    public List<List<Level>> points(List<Variation> factors, int count, long seed) {
        return switch (this) {
            case GRID -> grid(factors);
            case LATIN_HYPERCUBE -> levels(factors, latinHypercube(count, factors.size(), seed));
            case SOBOL -> levels(factors, sobol(count, factors.size()));
        };
    }

    private static List<List<Level>> grid(List<Variation> factors) {
        List<List<Level>> points = List.of(List.of());
        for (Variation factor : factors) {
            List<List<Level>> longer = new ArrayList<>();
            for (List<Level> point : points) {
                for (Level level : listed(factor).levels()) {
                    List<Level> extended = new ArrayList<>(point);
                    extended.add(level);
                    longer.add(List.copyOf(extended));
                }
            }
            points = longer;
        }
        return points;
    }

    private static Levels.Listed listed(Variation factor) {
        if (factor.levels() instanceof Levels.Listed list) {
            return list;
        }
        throw new IllegalArgumentException(
                factor.pointer() + " = " + factor.levels().described() + ". Must be a list.");
    }

    private static List<List<Level>> levels(List<Variation> factors, double[][] shares) {
        return Arrays.stream(shares).map(point -> at(factors, point)).collect(Collectors.toList());
    }

    private static List<Level> at(List<Variation> factors, double[] point) {
        List<Level> levels = new ArrayList<>();
        for (int i = 0; i < point.length; i++) {
            levels.add(factors.get(i).levels().at(point[i]));
        }
        return List.copyOf(levels);
    }

    /** Shape {@code [point][factor]}, in [0, 1). */
    static double[][] latinHypercube(int count, int factors, long seed) {
        Uniforms uniforms = new Streams(seed, 0).uniforms("study / latin hypercube");
        double[][] points = new double[count][factors];
        for (int factor = 0; factor < factors; factor++) {
            int[] strata = new int[count];
            for (int i = 0; i < count; i++) {
                int place = (int) (uniforms.next() * (i + 1));
                strata[i] = strata[place];
                strata[place] = i;
            }
            for (int i = 0; i < count; i++) {
                points[i][factor] = (strata[i] + uniforms.next()) / count;
            }
        }
        return points;
    }

    /** Shape {@code [point][factor]}, in [0, 1). */
    static double[][] sobol(int count, int factors) {
        int digits = Math.max(1, 32 - Integer.numberOfLeadingZeros(count - 1));
        PointSetIterator points = new SobolSequence(digits, BITS, factors).iterator();
        double[][] first = new double[count][factors];
        for (double[] point : first) {
            points.nextPoint(point, factors);
        }
        return first;
    }
}
