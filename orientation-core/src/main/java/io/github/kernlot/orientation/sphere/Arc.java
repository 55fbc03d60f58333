package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * A part of a circle, clockwise from one angle to another.
 *
 * @param from where it begins, degrees in [0, 360)
 * @param to where it ends, degrees in [0, 360); the same as {@code from} for a single angle
 */
public record Arc(double from, double to) {

    /**
     * Checks the angles.
     *
     * @throws IllegalArgumentException if one lies outside [0, 360]; 360 becomes 0
     */
    public Arc {
        from = Require.azimuth("from", from);
        to = Require.azimuth("to", to);
    }

    /**
     * The angle in the middle.
     *
     * @return degrees in [0, 360)
     */
    public double middle() {
        return Degrees.wrap360(from + width() / 2);
    }

    /**
     * How wide the arc is.
     *
     * @return degrees in [0, 360)
     */
    public double width() {
        return Degrees.wrap360(to - from);
    }

    /** The two ends, or the single angle: {@code 096.0 to 110.0}. */
    @Override
    public String toString() {
        return from == to ? Degrees.azimuthText(from) : Degrees.azimuthText(from) + " to " + Degrees.azimuthText(to);
    }
}
