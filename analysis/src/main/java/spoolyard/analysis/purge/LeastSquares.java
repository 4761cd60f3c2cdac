package spoolyard.analysis.purge;

import java.util.ArrayList;
import java.util.List;
import java.util.Optional;
import java.util.function.Function;
import org.hipparchus.distribution.continuous.TDistribution;
import org.hipparchus.exception.MathRuntimeException;
import org.hipparchus.linear.Array2DRowRealMatrix;
import org.hipparchus.linear.ArrayRealVector;
import org.hipparchus.linear.RealMatrix;
import org.hipparchus.linear.RealVector;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresBuilder;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LeastSquaresOptimizer.Optimum;
import org.hipparchus.optim.nonlinear.vector.leastsquares.LevenbergMarquardtOptimizer;
import org.hipparchus.optim.nonlinear.vector.leastsquares.MultivariateJacobianFunction;
import org.hipparchus.util.Pair;

/**
 * A curve fitted by nonlinear least squares: parameters, their standard errors and the residuals. Errors are taken as
 * independent, of one spread; standard errors and intervals come from the curve's tangent at the solution. Immutable.
 *
 * <p>Source: the method of Levenberg 1944 and Marquardt 1963; D. M. Bates, D. G. Watts, Nonlinear Regression Analysis and Its
 * Applications, 1988, ch. 2; studentised residuals: R. D. Cook, S. Weisberg, Residuals and Influence in Regression, 1982,
 * ch. 2.
 *
 * @param parameters the solution
 * @param standardErrors of each parameter
 * @param correlation of the first two parameters; 0 for a single one
 * @param spread standard deviation of the residuals, {@code n - p} degrees of freedom
 * @param residuals observed less fitted
 * @param studentised each residual over its standard error as a fit without it would have it
 */
public record LeastSquares(
        List<Double> parameters,
        List<Double> standardErrors,
        double correlation,
        double spread,
        List<Double> residuals,
        List<Double> studentised) {
    private static final int MOST_STEPS = 1000;
    private static final double SINGULAR = 1e-12;
    private static final double STEP = Math.cbrt(Math.ulp(1.0));

    /** Copies the lists. */
    public LeastSquares {
        parameters = List.copyOf(parameters);
        standardErrors = List.copyOf(standardErrors);
        residuals = List.copyOf(residuals);
        studentised = List.copyOf(studentised);
    }

    /**
     * Fits a curve.
     *
     * @param curve fitted values, as many as observed ones, for parameters
     * @param observed observed values, at least two more than parameters
     * @param start where to begin
     * @return the fit; empty if the parameters cannot be told from these values, or no solution is found
     */
    public static Optional<LeastSquares> of(Function<double[], double[]> curve, double[] observed, double[] start) {
        MultivariateJacobianFunction model = point -> new Pair<>(
                new ArrayRealVector(curve.apply(point.toArray()), false), jacobian(curve, point, observed.length));
        try {
            Optimum optimum = new LevenbergMarquardtOptimizer()
                    .optimize(new LeastSquaresBuilder()
                            .start(start)
                            .model(model)
                            .target(observed)
                            .maxEvaluations(MOST_STEPS)
                            .maxIterations(MOST_STEPS)
                            .build());
            return Optional.of(of(optimum, observed.length - start.length))
                    .filter(fit -> fit.spread < Double.POSITIVE_INFINITY);
        } catch (MathRuntimeException singularOrNotConverged) {
            return Optional.empty();
        }
    }

    private static LeastSquares of(Optimum optimum, int freedom) {
        RealMatrix covariances = optimum.getCovariances(SINGULAR);
        double[] residuals = optimum.getResiduals().toArray();
        double sum = optimum.getResiduals().dotProduct(optimum.getResiduals());
        double spread = Math.sqrt(sum / freedom);
        List<Double> errors = new ArrayList<>();
        for (int i = 0; i < covariances.getRowDimension(); i++) {
            errors.add(spread * Math.sqrt(covariances.getEntry(i, i)));
        }
        double correlation = errors.size() < 2
                ? 0
                : covariances.getEntry(0, 1) / Math.sqrt(covariances.getEntry(0, 0) * covariances.getEntry(1, 1));
        List<Double> studentised = new ArrayList<>();
        for (int i = 0; i < residuals.length; i++) {
            RealVector gradient = optimum.getJacobian().getRowVector(i);
            double free = 1 - gradient.dotProduct(covariances.operate(gradient));
            double without = Math.sqrt((sum - residuals[i] * residuals[i] / free) / (freedom - 1));
            studentised.add(residuals[i] / (without * Math.sqrt(free)));
        }
        return new LeastSquares(
                list(optimum.getPoint().toArray()), errors, correlation, spread, list(residuals), studentised);
    }

    /** By central differences, which cost two curves a parameter. */
    private static RealMatrix jacobian(Function<double[], double[]> curve, RealVector point, int rows) {
        RealMatrix jacobian = new Array2DRowRealMatrix(rows, point.getDimension());
        for (int j = 0; j < point.getDimension(); j++) {
            double step = STEP * Math.max(Math.abs(point.getEntry(j)), 1e-6);
            double[] up = moved(curve, point, j, step);
            double[] down = moved(curve, point, j, -step);
            for (int i = 0; i < rows; i++) {
                jacobian.setEntry(i, j, (up[i] - down[i]) / (2 * step));
            }
        }
        return jacobian;
    }

    private static double[] moved(Function<double[], double[]> curve, RealVector point, int j, double step) {
        double[] moved = point.toArray();
        moved[j] += step;
        return curve.apply(moved);
    }

    private static List<Double> list(double[] values) {
        List<Double> list = new ArrayList<>();
        for (double value : values) {
            list.add(value);
        }
        return list;
    }

    /**
     * Half the width of a parameter's interval.
     *
     * @param parameter which, from 0
     * @param confidence for example 0.95
     * @return half-width, by Student's t
     */
    public double halfWidth(int parameter, double confidence) {
        return standardErrors.get(parameter) * quantile(freedom(), confidence);
    }

    /**
     * The studentised residual beyond which a value fits badly, for the number of values (Bonferroni).
     *
     * @param confidence chance, at least, that none is beyond it when all are good
     * @return the limit, {@code > 0}
     */
    public double outlierLimit(double confidence) {
        return quantile(freedom() - 1, 1 - (1 - confidence) / residuals.size());
    }

    private int freedom() {
        return residuals.size() - parameters.size();
    }

    private static double quantile(int freedom, double confidence) {
        return new TDistribution(freedom).inverseCumulativeProbability((1 + confidence) / 2);
    }
}
