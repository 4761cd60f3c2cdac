package spoolyard.analysis.experiment;

import org.hipparchus.analysis.integration.gauss.GaussIntegrator;
import org.hipparchus.analysis.integration.gauss.GaussIntegratorFactory;
import org.hipparchus.analysis.solvers.BrentSolver;
import org.hipparchus.special.Erf;
import org.hipparchus.special.Gamma;

/**
 * Rinott's constant h: the root of
 *
 * <pre>
 * integral over y of [ integral over x of Phi(h / sqrt(v (1/x + 1/y))) f(x) dx ]^(k - 1) f(y) dy = P
 * </pre>
 *
 * where f is the density of chi-square with v = firstStage - 1 degrees of freedom. Both integrals are by Gauss-Legendre
 * over the roots of x and y, whose density is smooth for every v. Source: Y. Rinott 1978; R. E. Bechhofer, T. J. Santner
 * and D. M. Goldsman, Design and Analysis of Experiments for Statistical Selection, 1995.
 */
public final class RinottConstant {
    private static final GaussIntegratorFactory GAUSS = new GaussIntegratorFactory();
    private static final int PANELS = 2;
    private static final int NODES = 40;
    private static final double SPREAD = 9;
    private static final double ACCURACY = 1e-10;
    private static final int MOST_STEPS = 200;

    private final double[] roots = new double[PANELS * NODES];
    private final double[] weights = new double[PANELS * NODES];
    private final int freedom;
    private final int systems;

    private RinottConstant(int freedom, int systems) {
        this.freedom = freedom;
        this.systems = systems;
        double centre = Math.sqrt(freedom);
        double from = Math.max(0, centre - SPREAD);
        double width = (centre + SPREAD - from) / PANELS;
        for (int panel = 0; panel < PANELS; panel++) {
            fill(panel, GAUSS.legendre(NODES, from + panel * width, from + (panel + 1) * width));
        }
    }

    /**
     * The constant.
     *
     * @param confidence probability of a correct selection, in (1/systems, 1)
     * @param firstStage observations of each system in the first stage, {@code >= 2}
     * @param systems number of systems, {@code >= 2}
     * @return h, {@code > 0}
     * @throws IllegalArgumentException if the confidence is no more than guessing gives
     */
    public static double h(double confidence, int firstStage, int systems) {
        if (confidence <= 1.0 / systems) {
            throw new IllegalArgumentException("confidence = " + confidence + ". Must be above " + 1.0 / systems + ".");
        }
        RinottConstant constant = new RinottConstant(firstStage - 1, systems);
        double high = 1;
        while (constant.probability(high) < confidence) {
            high *= 2;
        }
        return new BrentSolver(ACCURACY).solve(MOST_STEPS, h -> constant.probability(h) - confidence, 0, high);
    }

    private void fill(int panel, GaussIntegrator rule) {
        for (int i = 0; i < NODES; i++) {
            int place = panel * NODES + i;
            roots[place] = rule.getPoint(i);
            weights[place] = rule.getWeight(i) * rootDensity(roots[place]);
        }
    }

    /** Density of the root of a chi-square variable. */
    private double rootDensity(double root) {
        double half = freedom / 2.0;
        return Math.exp(
                (1 - half) * Math.log(2) + (freedom - 1) * Math.log(root) - root * root / 2 - Gamma.logGamma(half));
    }

    private double probability(double h) {
        double[] notBeaten = notBeaten(h);
        double sum = 0;
        for (int i = 0; i < roots.length; i++) {
            sum += weights[i] * Math.pow(notBeaten[i], systems - 1);
        }
        return sum;
    }

    /** The inner integral at each root of y. What is integrated is the same with x and y exchanged. */
    private double[] notBeaten(double h) {
        double[] sums = new double[roots.length];
        for (int i = 0; i < roots.length; i++) {
            for (int j = 0; j <= i; j++) {
                double spread = freedom * (1 / (roots[i] * roots[i]) + 1 / (roots[j] * roots[j]));
                double below = Erf.erfc(-h / Math.sqrt(2 * spread)) / 2;
                sums[i] += weights[j] * below;
                sums[j] += i == j ? 0 : weights[i] * below;
            }
        }
        return sums;
    }
}
