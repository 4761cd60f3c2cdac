package spoolyard.analysis.experiment;

/**
 * How sure several statements must be each, so that all of them hold at once with a wanted confidence. Immutable.
 *
 * <p>By Bonferroni's inequality: {@code m} statements each at level {@code 1 - (1 - level) / m} hold together with
 * probability {@code >= level}, however they depend on each other. Source: O. J. Dunn, Multiple comparisons among means,
 * Journal of the American Statistical Association 56 (1961) 52-64; A. M. Law, Simulation Modeling and Analysis, 5th ed.
 * 2015, sections 9.7 and 10.3.
 *
 * @param level confidence that all statements hold, in (0, 1)
 * @param statements how many, {@code >= 1}
 */
public record Simultaneous(double level, int statements) {
    /** Checks the ranges. */
    public Simultaneous {
        if (!(level > 0 && level < 1) || statements < 1) {
            throw new IllegalArgumentException("level = " + level + ", statements = " + statements
                    + ". The level must be between 0 and 1, the number of statements >= 1.");
        }
    }

    /**
     * Confidence of each statement for itself.
     *
     * @return a level in [{@code level}, 1)
     */
    public double eachLevel() {
        return 1 - (1 - level) / statements;
    }
}
