package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Require;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * Axes alike on all sides of one axis: density {@code exp(kappa cos^2 theta) / c(kappa)} at the angle theta from it (Watson 1965, from
 * memory). Above 0 they cluster about the axis, below 0 they lie along the girdle across it. It is Bingham's with two equal
 * concentrations, or with one.
 *
 * @param axis the axis of symmetry
 * @param concentration kappa, in [-1e8, 1e8]; 0 is uniform
 */
public record WatsonDistribution(LineOrientation axis, double concentration) {

    private static final double GREATEST = 1e8;

    /**
     * Checks the concentration.
     *
     * @throws IllegalArgumentException if it lies outside [-1e8, 1e8]
     */
    public WatsonDistribution {
        concentration = Require.inRange("concentration", concentration, -GREATEST, GREATEST, "");
    }

    /**
     * The distribution whose expected square of the cosine to the axis is given: with the greatest eigenvalue of a sample's orientation
     * tensor and its axis the cluster of the greatest likelihood, with the least one the girdle.
     *
     * @param axis the axis of symmetry
     * @param square the expected square, in [0, 1]; 1/3 is uniform
     * @return the distribution; empty where the concentration would pass 1e8 on either side
     * @throws IllegalArgumentException if the square lies outside [0, 1]
     */
    public static Optional<WatsonDistribution> ofSquare(LineOrientation axis, double square) {
        Require.inRange("square", square, 0, 1, "");
        double lacking = 1 - square;
        if (lacking < 1 / GREATEST || square < 0.5 / GREATEST) {
            return Optional.empty();
        }
        // E sin^2 lies between 1/k and 1/k + 1/k^2, and E cos^2 of a girdle below 1/2k
        double kappa = square > 1.0 / 3
                ? root(k -> lacking + 2 * BinghamDistribution.point(k, k).s(), 2 / lacking + 2)
                : -root(k -> square + BinghamDistribution.point(0, k).t(), 0.5 / square + 1);
        return Math.abs(kappa) <= GREATEST ? Optional.of(new WatsonDistribution(axis, kappa)) : Optional.empty();
    }

    private static double root(UnivariateFunction function, double high) {
        return Math.abs(function.value(0)) < 1e-15
                ? 0
                : new BrentSolver(1e-14, 1e-300, 1e-16).solve(1000, function, 0, high);
    }

    /**
     * The same distribution as one of Bingham's, with what axes it needs across this one.
     *
     * @return the distribution
     */
    public BinghamDistribution bingham() {
        Frame frame = Frame.about(Frame.vector(axis));
        LineOrientation across = Frame.line(frame.second());
        double sharp = Math.abs(concentration);
        return concentration >= 0
                ? new BinghamDistribution(axis, across, sharp, sharp)
                : new BinghamDistribution(across, Frame.line(frame.third()), 0, sharp);
    }

    /**
     * The density at an axis, counted over the whole sphere, so that each end of an axis has one half.
     *
     * @param other the axis
     * @return probability per steradian
     */
    public double density(LineOrientation other) {
        return bingham().density(other);
    }

    /**
     * Draws axes.
     *
     * @param count how many, 0 or more
     * @param seed any number; the same seed draws the same axes
     * @return the axes
     * @throws IllegalArgumentException if the count is negative
     */
    public List<LineOrientation> draw(int count, long seed) {
        return bingham().draw(count, seed);
    }

    /**
     * Draws axes with a generator of the caller's, which is moved on.
     *
     * @param count how many, 0 or more
     * @param random where the random bits come from
     * @return the axes
     * @throws IllegalArgumentException if the count is negative
     */
    public List<LineOrientation> draw(int count, RandomGenerator random) {
        return bingham().draw(count, random);
    }

    /** Its parameters: {@code Watson about 60.0/090.0 (plunge/trend), kappa -4.15}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "Watson about %s, kappa %.4g", axis, concentration);
    }
}
