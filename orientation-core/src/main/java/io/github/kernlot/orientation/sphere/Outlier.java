package io.github.kernlot.orientation.sphere;

import java.util.Locale;

/**
 * The direction of a sample that fits the others least.
 *
 * @param index its place in the sample, from 0
 * @param statistic how much the others' sum gains without it, over their own spread
 * @param probability that in a sample of Fisher's distribution some direction stands out so far or farther, an upper bound, in [0, 1]
 */
public record Outlier(int index, double statistic, double probability) {

    /** Its place and probability: {@code number 3 of the sample, E = 12.3, p = 0.004}; the first is number 1. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "number %d of the sample, E = %.3g, p = %.2g", index + 1, statistic, probability);
    }
}
