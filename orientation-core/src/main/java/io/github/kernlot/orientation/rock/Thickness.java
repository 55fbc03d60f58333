package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A thickness with its standard deviation to first order.
 *
 * @param metres the thickness, 0 or more
 * @param sigma its standard deviation, metres, 0 or more; 0 where no uncertainty was given
 */
public record Thickness(double metres, double sigma) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public Thickness {
        metres = Require.notNegative("thickness", metres, "m");
        sigma = Require.notNegative("thickness sigma", sigma, "m");
    }

    /** The thickness with its unit: {@code 18.92 +- 0.40 m}. */
    @Override
    public String toString() {
        return sigma == 0
                ? String.format(Locale.ROOT, "%.2f m", metres)
                : String.format(Locale.ROOT, "%.2f +- %.2f m", metres, sigma);
    }
}
