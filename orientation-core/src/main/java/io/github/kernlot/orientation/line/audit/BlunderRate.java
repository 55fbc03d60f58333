package io.github.kernlot.orientation.line.audit;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import org.apache.commons.math3.distribution.BetaDistribution;

/**
 * How often something goes wrong.
 *
 * @param expected how many went wrong, or the sum of the probabilities that they did, 0 or more
 * @param of among how many, 1 or more
 */
public record BlunderRate(double expected, int of) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if {@code of} is below 1 or {@code expected} outside [0, of]
     */
    public BlunderRate {
        if (of < 1) {
            throw new IllegalArgumentException("number of cases is " + of + "; expected 1 or more");
        }
        expected = Require.inRange("number that went wrong", expected, 0, of, "");
    }

    /**
     * The share that went wrong.
     *
     * @return a number in [0, 1]
     */
    public double rate() {
        return expected / of;
    }

    /**
     * The lower end of the 95 % interval of Clopper and Pearson 1934 by the beta distribution (from memory), which takes a number
     * that is not whole too.
     *
     * @return a number in [0, 1]
     */
    public double low95() {
        return expected == 0
                ? 0
                : new BetaDistribution(null, expected, of - expected + 1).inverseCumulativeProbability(0.025);
    }

    /**
     * The upper end of the interval.
     *
     * @return a number in [0, 1]
     */
    public double high95() {
        return expected == of
                ? 1
                : new BetaDistribution(null, expected + 1, of - expected).inverseCumulativeProbability(0.975);
    }

    /** The rate with its interval: {@code 4.0 % (0.5 to 13.7 %) of 50}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.1f %% (%.1f to %.1f %%) of %d", 100 * rate(), 100 * low95(), 100 * high95(), of);
    }
}
