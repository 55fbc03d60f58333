package io.github.kernlot.orientation.line.fit;

import java.util.Locale;

/**
 * Two fitted parameters of which one can do much of the other's work.
 *
 * @param one a parameter
 * @param other another
 * @param correlation of their estimates, in [-1, 1]
 */
public record ParameterCorrelation(LineParameter one, LineParameter other, double correlation) {

    /** The pair and its number: {@code wander and locked join: -0.91}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%s and %s: %.2f", one, other, correlation);
    }
}
