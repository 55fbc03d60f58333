package io.github.kernlot.orientation.sphere;

import java.util.Locale;

/**
 * What a test found.
 *
 * @param statistic the name of the number that was computed
 * @param value that number
 * @param distribution what it was held against
 * @param probability of a number at least so great where what is tested holds, in [0, 1]
 */
public record TestOutcome(String statistic, double value, String distribution, double probability) {

    /**
     * Whether what was tested is refused.
     *
     * @param level how often it may be refused wrongly, such as 0.05
     * @return true if the probability is below the level
     */
    public boolean refusedAt(double level) {
        return probability < level;
    }

    /** The number and its probability: {@code F = 1.359, p = 0.289 (F with 2 and 14 degrees of freedom)}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s = %.4g, p = %.3g (%s)", statistic, value, probability, distribution);
    }
}
