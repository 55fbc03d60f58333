package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A line without an arrow through the core, by itself and not by a plane that holds it.
 *
 * <p>A line along the axis never meets the wall and its delta says nothing; a line at right angles to the axis meets it at delta
 * and delta + 180.
 *
 * @param axisAngle acute angle between the line and the core axis, degrees in [0, 90]
 * @param delta where the down-hole end of the line meets the wall, clockwise looking down-hole from the reference line, degrees
 *     in [0, 360)
 */
public record CoreLine(double axisAngle, double delta) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the axis angle lies outside [0, 90] or delta outside [0, 360]; a delta of 360
     *     becomes 0
     */
    public CoreLine {
        axisAngle = Require.inRange("axis angle", axisAngle, 0, 90, "degrees");
        delta = Require.azimuth("delta", delta);
    }

    /**
     * A line from its angle to the axis and the place where it meets the wall.
     *
     * @param axisAngle degrees in [0, 90]
     * @param delta degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static CoreLine ofAxisAngleAndDelta(double axisAngle, double delta) {
        return new CoreLine(axisAngle, delta);
    }

    static CoreLine ofVector(Vector vector) {
        double along = Math.abs(vector.north());
        double across = Math.sqrt(vector.east() * vector.east() + vector.down() * vector.down());
        double downHole = vector.north() < 0 ? -1 : 1;
        return new CoreLine(
                Polar.fromAxis(along, across),
                Polar.round(downHole * vector.down(), downHole * vector.east(), along, across));
    }

    /** The unit vector of the down-hole end in core coordinates: axis, reference line, 90 clockwise of it. */
    Vector vector() {
        double across = Degrees.sin(axisAngle);
        return new Vector(Degrees.cos(axisAngle), across * Degrees.cos(delta), across * Degrees.sin(delta));
    }

    /** As it is written in a log: {@code axis angle 51.1, delta 167.4}. */
    @Override
    public String toString() {
        return "axis angle " + Degrees.text(axisAngle) + ", delta " + Degrees.azimuthText(delta);
    }
}
