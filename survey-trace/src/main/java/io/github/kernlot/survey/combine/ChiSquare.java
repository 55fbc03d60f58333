package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import java.util.Locale;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/**
 * A difference held against its covariance: {@code d' C^-1 d}, which by chance alone follows the chi-square distribution.
 *
 * @param statistic the number, 0 or more; infinite where the covariance leaves no room for a difference that is there
 * @param degreesOfFreedom the rank of the covariance, 1 or more
 */
public record ChiSquare(double statistic, int degreesOfFreedom) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public ChiSquare {
        statistic = Require.inRange("chi-square", statistic, 0, Double.POSITIVE_INFINITY, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 1, Integer.MAX_VALUE, "");
    }

    /**
     * How often chance alone makes a number as great as this or greater.
     *
     * @return a probability in [0, 1]
     */
    public double probability() {
        return UpperTail.ofChiSquare(statistic, degreesOfFreedom);
    }

    /**
     * The number that chance alone exceeds with the probability 1 - confidence.
     *
     * @param confidence within [0, 1), such as 0.95
     * @return the limit; 7.815 for three degrees of freedom at 0.95
     * @throws IllegalArgumentException if the confidence lies outside [0, 1)
     */
    public double limit(double confidence) {
        if (!(confidence >= 0 && confidence < 1)) {
            throw new IllegalArgumentException("confidence is " + confidence + "; expected within [0, 1)");
        }
        return new ChiSquaredDistribution(null, degreesOfFreedom).inverseCumulativeProbability(confidence);
    }

    /** All of it: {@code chi-square 9.21 with 3 degrees of freedom, probability 0.027}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "chi-square %.2f with %d degrees of freedom, probability %.3f",
                statistic,
                degreesOfFreedom,
                probability());
    }
}
