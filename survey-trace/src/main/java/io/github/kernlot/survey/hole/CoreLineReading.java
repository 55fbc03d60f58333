package io.github.kernlot.survey.hole;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.OptionalDouble;

/**
 * A line through the core by itself, as it was read.
 *
 * @param axisAngle acute angle between the line and the core axis, degrees in [0, 90]
 * @param delta where the down-hole end of the line meets the wall, counted as the log counts beta, degrees in [0, 360); may be empty at
 *     axis angle 0, where the line never meets the wall
 */
public record CoreLineReading(double axisAngle, OptionalDouble delta) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the axis angle lies outside [0, 90] or delta outside [0, 360], or delta is empty above axis
     *     angle 0; 360 becomes 0
     */
    public CoreLineReading {
        axisAngle = Require.inRange("axis angle", axisAngle, 0, 90, "degrees");
        delta = delta.isPresent() ? OptionalDouble.of(Require.azimuth("delta", delta.getAsDouble())) : delta;
        if (delta.isEmpty() && axisAngle > 0) {
            throw new IllegalArgumentException("delta is empty at axis angle " + Degrees.text(axisAngle)
                    + " degrees; expected a number within [0, 360] degrees above axis angle 0");
        }
    }

    /**
     * A line from its angle to the axis and the place where it meets the wall.
     *
     * @param axisAngle degrees in [0, 90]
     * @param delta as it was read, degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static CoreLineReading of(double axisAngle, double delta) {
        return new CoreLineReading(axisAngle, OptionalDouble.of(delta));
    }

    /** As it is written in a log: {@code axis angle 51.1, delta 167.4}. */
    @Override
    public String toString() {
        return "axis angle " + Degrees.text(axisAngle)
                + (delta.isPresent() ? ", delta " + Degrees.azimuthText(delta.getAsDouble()) : "");
    }
}
