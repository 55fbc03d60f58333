package io.github.kernlot.survey.check;

import io.github.kernlot.orientation.internal.Require;

/**
 * A number that was held against a limit.
 *
 * @param quantity what was measured
 * @param value the number, in the unit of the limit
 * @param limit what it was held against
 */
public record Measurement(String quantity, double value, Limit limit) {

    /**
     * Checks the value.
     *
     * @throws IllegalArgumentException if the value is not finite
     */
    public Measurement {
        value = Require.finite(quantity, value, limit.unit());
    }

    /** Both: {@code dogleg 4.20 degrees per 10 m, limit 3.00 (common practice, no source)}. */
    @Override
    public String toString() {
        return quantity + " " + Limit.number(value, limit.unit()) + " " + limit.unit() + ", limit "
                + Limit.number(limit.value(), limit.unit()) + " (" + limit.standing() + ")";
    }
}
