package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Arrays;
import java.util.Locale;
import org.apache.commons.math3.distribution.TDistribution;
import org.apache.commons.math3.optim.MaxEval;
import org.apache.commons.math3.optim.nonlinear.scalar.GoalType;
import org.apache.commons.math3.optim.univariate.BrentOptimizer;
import org.apache.commons.math3.optim.univariate.SearchInterval;
import org.apache.commons.math3.optim.univariate.UnivariateObjectiveFunction;

/**
 * Angles that turn evenly with something: depth, time. The slope is that of the greatest likelihood under von Mises scatter, {@code
 * sum cos(angle - start - slope x)} (Gould 1969, from memory), among those that turn by half a circle at most over the range of x: a
 * steeper line fits any sample as well.
 *
 * @param middle the mean of x
 * @param atMiddle the angle there, degrees in [0, 360)
 * @param slope degrees per unit of x
 * @param standardError of the slope, for angles that scatter little; degrees per unit of x
 * @param size how many angles there are
 */
public record CircularTrend(double middle, double atMiddle, double slope, double standardError, int size) {

    private static final int COARSE = 90;

    /**
     * The trend of a sample.
     *
     * @param degrees the angles, three or more, finite
     * @param x what they turn with, finite, one for each angle, not all the same
     * @return the trend
     * @throws IllegalArgumentException if there are fewer than three angles, the numbers of angles and of x differ, one is not
     *     finite, or all x are the same
     */
    public static CircularTrend of(double[] degrees, double[] x) {
        if (degrees.length < 3 || degrees.length != x.length) {
            throw new IllegalArgumentException("there are " + degrees.length + " angles with " + x.length
                    + " values to turn with; expected three or more, one for each");
        }
        Arrays.stream(degrees).forEach(angle -> Require.finite("angle", angle, "degrees"));
        Arrays.stream(x).forEach(value -> Require.finite("x", value, ""));
        double middle = Arrays.stream(x).average().orElseThrow();
        double[] from = Arrays.stream(x).map(value -> value - middle).toArray();
        double squares = Arrays.stream(from).map(value -> value * value).sum();
        double range = Arrays.stream(from).max().orElseThrow()
                - Arrays.stream(from).min().orElseThrow();
        if (!(range > 1e-9 * (1 + Math.abs(middle)))) {
            throw new IllegalArgumentException("all x are the same; expected some that differ");
        }
        double slope = slope(degrees, from, 180 / range);
        CircularSample rest = rest(degrees, from, slope);
        // of the likelihood's curvature n - 2 stay free for the spread
        double variance = 2 * (1 - rest.meanLength()) * degrees.length / (degrees.length - 2) / rest.meanLength();
        double error = Math.toDegrees(Math.sqrt(variance / squares));
        return new CircularTrend(middle, rest.mean().orElse(0), slope, error, degrees.length);
    }

    private static double slope(double[] degrees, double[] x, double steepest) {
        double step = steepest / COARSE;
        double best = 0;
        for (int i = -COARSE; i <= COARSE; i++) {
            best = length(degrees, x, i * step) > length(degrees, x, best) ? i * step : best;
        }
        return new BrentOptimizer(1e-10, 1e-12 * steepest)
                .optimize(
                        new MaxEval(1000),
                        GoalType.MAXIMIZE,
                        new UnivariateObjectiveFunction(slope -> length(degrees, x, slope)),
                        new SearchInterval(Math.max(-steepest, best - step), Math.min(steepest, best + step), best))
                .getPoint();
    }

    private static double length(double[] degrees, double[] x, double slope) {
        return rest(degrees, x, slope).meanLength();
    }

    private static CircularSample rest(double[] degrees, double[] x, double slope) {
        double[] rest = new double[degrees.length];
        for (int i = 0; i < rest.length; i++) {
            rest[i] = degrees[i] - slope * x[i];
        }
        return CircularSample.of(rest);
    }

    /**
     * How probable a slope at least so steep is where there is no trend, by Student's t with n - 2 degrees of freedom, for
     * angles that scatter little: of a hundred that scatter all round the circle four samples in ten would be refused at the level 0.05.
     *
     * @return a probability in [0, 1]
     */
    public double probabilityOfNone() {
        if (standardError == 0) {
            return slope == 0 ? 1 : 0;
        }
        return 2 * new TDistribution(null, size - 2).cumulativeProbability(-Math.abs(slope / standardError));
    }

    /** The slope with its standard error: {@code 0.042 +- 0.007 degrees per unit}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.3f +- %.3f degrees per unit", slope, standardError) + ", "
                + Degrees.azimuthText(atMiddle) + " in the middle";
    }
}
