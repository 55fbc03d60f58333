package io.github.kernlot.orientation.sphere.repeat;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * A standard deviation from the scatter within several groups.
 *
 * @param sigma degrees, 0 or more
 * @param degreesOfFreedom above 0; not a whole number where groups have different weights
 */
public record PooledSigma(double sigma, double degreesOfFreedom) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if sigma is negative, there are no degrees of freedom, or one is not finite
     */
    public PooledSigma {
        sigma = Require.notNegative("sigma", sigma, "degrees");
        Require.positive("degrees of freedom", degreesOfFreedom, "");
    }

    /**
     * The lower end of the interval that holds the true sigma, by chi-square, for readings that scatter normally.
     *
     * @param probability that the interval holds it, in (0, 1), such as 0.95
     * @return degrees
     * @throws IllegalArgumentException if the probability lies outside (0, 1)
     */
    public double low(double probability) {
        return end((1 + inside(probability)) / 2);
    }

    /**
     * The upper end of that interval.
     *
     * @param probability that the interval holds it, in (0, 1), such as 0.95
     * @return degrees
     * @throws IllegalArgumentException if the probability lies outside (0, 1)
     */
    public double high(double probability) {
        return end((1 - inside(probability)) / 2);
    }

    private static double inside(double probability) {
        return Require.share("probability", probability);
    }

    private double end(double below) {
        double quantile = new ChiSquaredDistribution(null, degreesOfFreedom).inverseCumulativeProbability(below);
        return sigma * Math.sqrt(degreesOfFreedom / quantile);
    }

    /** Sigma with its interval: {@code 1.9 (1.4 to 2.9 with 95 %), 18.0 degrees of freedom}. */
    @Override
    public String toString() {
        return Degrees.text(sigma) + " (" + Degrees.text(low(0.95)) + " to " + Degrees.text(high(0.95))
                + " with 95 %), " + String.format(Locale.ROOT, "%.1f degrees of freedom", degreesOfFreedom);
    }
}
