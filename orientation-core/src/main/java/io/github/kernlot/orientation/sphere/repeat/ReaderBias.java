package io.github.kernlot.orientation.sphere.repeat;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import org.apache.commons.math3.distribution.TDistribution;

/**
 * How far one reader reads from another, on the mean of the structures that both read.
 *
 * @param difference the first reader's less the second's, degrees in [-180, 180]
 * @param standardError degrees, 0 or more
 * @param structures how many both read, 2 or more
 */
public record ReaderBias(double difference, double standardError, int structures) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public ReaderBias {
        difference = Require.inRange("difference", difference, -180, 180, "degrees");
        standardError = Require.notNegative("standard error", standardError, "degrees");
        Require.inRange("structures", structures, 2, Integer.MAX_VALUE, "");
    }

    /**
     * How probable a difference at least so far from 0 is where both read alike, by Student's t.
     *
     * @return a probability in [0, 1]
     */
    public double probabilityOfNone() {
        if (standardError == 0) {
            return difference == 0 ? 1 : 0;
        }
        return 2 * student().cumulativeProbability(-Math.abs(difference / standardError));
    }

    /**
     * Half the width of the interval about the difference that holds the true one.
     *
     * @param probability that the interval holds it, in (0, 1), such as 0.95
     * @return degrees
     * @throws IllegalArgumentException if the probability lies outside (0, 1)
     */
    public double radius(double probability) {
        Require.share("probability", probability);
        return standardError * student().inverseCumulativeProbability((1 + probability) / 2);
    }

    private TDistribution student() {
        return new TDistribution(null, structures - 1);
    }

    /** The difference with its interval: {@code 1.8 (0.9 to 2.7 with 95 %) from 12 structures, p = 0.001}. */
    @Override
    public String toString() {
        double radius = radius(0.95);
        return String.format(
                Locale.ROOT,
                "%.1f (%.1f to %.1f with 95 %%) from %d structures, p = %.2g",
                difference,
                difference - radius,
                difference + radius,
                structures,
                probabilityOfNone());
    }
}
