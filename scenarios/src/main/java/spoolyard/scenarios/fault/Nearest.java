package spoolyard.scenarios.fault;

import java.util.Collection;
import java.util.Comparator;
import java.util.Locale;
import java.util.Optional;

/** Finds the name a person may have meant. */
public final class Nearest {
    private static final int LONGEST_NAME = 80;

    private Nearest() {}

    /**
     * The candidate with the fewest single-letter edits, if few enough to be a slip.
     *
     * <p>Source of the distance: optimal string alignment (restricted Damerau-Levenshtein: insert, delete, replace,
     * swap neighbours); case is ignored.
     *
     * @param name what was written
     * @param candidates what is known
     * @return the nearest within a third of the longer length plus one; the first of several; empty if none is near or
     *     the name is too long to be one
     */
    public static Optional<String> to(String name, Collection<String> candidates) {
        return within(3, name, candidates);
    }

    /**
     * The candidate so near that it is almost surely meant.
     *
     * @param name what was written
     * @param candidates what is known
     * @return the nearest within a fifth of the longer length plus one; empty if none is
     */
    public static Optional<String> slipOf(String name, Collection<String> candidates) {
        return within(5, name, candidates);
    }

    private static Optional<String> within(int part, String name, Collection<String> candidates) {
        if (name.length() > LONGEST_NAME) {
            return Optional.empty();
        }
        return candidates.stream()
                .filter(c -> distance(name, c) <= longer(name, c) / part + 1 && distance(name, c) < longer(name, c))
                .min(Comparator.comparingInt(c -> distance(name, c)));
    }

    private static int longer(String a, String b) {
        return Math.max(a.length(), b.length());
    }

    /**
     * Number of edits between two names.
     *
     * @param first one name
     * @param second the other
     * @return optimal string alignment distance, case ignored; O(length * length)
     */
    static int distance(String first, String second) {
        String a = first.toLowerCase(Locale.ROOT);
        String b = second.toLowerCase(Locale.ROOT);
        int[][] d = new int[a.length() + 1][b.length() + 1];
        for (int i = 0; i <= a.length(); i++) {
            for (int j = 0; j <= b.length(); j++) {
                d[i][j] = i == 0 || j == 0 ? i + j : cheapest(d, a, b, i, j);
            }
        }
        return d[a.length()][b.length()];
    }

    private static int cheapest(int[][] d, String a, String b, int i, int j) {
        int replace = d[i - 1][j - 1] + (a.charAt(i - 1) == b.charAt(j - 1) ? 0 : 1);
        int best = Math.min(replace, Math.min(d[i - 1][j], d[i][j - 1]) + 1);
        boolean swapped = i > 1 && j > 1 && a.charAt(i - 1) == b.charAt(j - 2) && a.charAt(i - 2) == b.charAt(j - 1);
        return swapped ? Math.min(best, d[i - 2][j - 2] + 1) : best;
    }
}
