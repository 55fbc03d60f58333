package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.internal.Degrees;

/**
 * One of the angles at which a line may stand.
 *
 * @param angle the angle, degrees in [0, 360)
 * @param weight the probability of the line being near it, in [0, 1]
 */
public record LineMode(double angle, double weight) {

    /** The angle and its weight: {@code 025.0 (97 %)}. */
    @Override
    public String toString() {
        return Degrees.azimuthText(angle) + " (" + Math.round(100 * weight) + " %)";
    }
}
