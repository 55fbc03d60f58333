package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Require;

/**
 * How often a mark is not what it should be.
 *
 * @param flipped the prior probability that the opposite side was marked, in [0, 1]
 * @param wrong the prior probability that the mark says nothing of the side, in [0, 1]; both together at most 1
 */
public record MarkBlunders(double flipped, double wrong) {

    /**
     * Checks the probabilities.
     *
     * @throws IllegalArgumentException if one lies outside [0, 1] or their sum is above 1
     */
    public MarkBlunders {
        flipped = Require.inRange("prior of a flipped mark", flipped, 0, 1, "");
        wrong = Require.inRange("prior of a wrong mark", wrong, 0, 1, "");
        Require.inRange("sum of the priors of flipped and wrong marks", flipped + wrong, 0, 1, "");
    }

    /**
     * Values to begin with, assumed and not measured: 2 in 100 flipped, 5 in 100 wrong.
     *
     * @return the assumed priors
     */
    public static MarkBlunders assumed() {
        return new MarkBlunders(0.02, 0.05);
    }

    /**
     * The prior probability of a mark that is neither.
     *
     * @return a number in [0, 1]
     */
    public double sound() {
        return 1 - flipped - wrong;
    }

    /**
     * The same priors with wrong marks more frequent.
     *
     * @param factor how many times as frequent, 1 or more
     * @return the priors; wrong marks fill at most what flipped ones leave
     * @throws IllegalArgumentException if the factor is not a finite number, 1 or above
     */
    public MarkBlunders withWrongTimes(double factor) {
        double times = Require.inRange("factor on the prior of a wrong mark", factor, 1, Double.MAX_VALUE, "");
        return new MarkBlunders(flipped, Math.min(wrong * times, 1 - flipped));
    }
}
