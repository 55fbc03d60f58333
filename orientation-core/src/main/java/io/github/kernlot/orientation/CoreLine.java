package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.CoreVectors;
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

    /**
     * The line along a vector on core, of any length and of either sign.
     *
     * @param along component along the axis, down-hole
     * @param towardsLine component towards the reference line
     * @param clockwise component towards the wall a quarter clockwise of it, looking down-hole
     * @return the line
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static CoreLine ofVector(double along, double towardsLine, double clockwise) {
        return ofVector(Directions.checked(along, towardsLine, clockwise));
    }

    static CoreLine ofVector(Vector vector) {
        double along = Math.abs(vector.north());
        double across = CoreVectors.across(vector);
        double downHole = vector.north() < 0 ? -1 : 1;
        return new CoreLine(
                Polar.fromAxis(along, across),
                Polar.round(downHole * vector.down(), downHole * vector.east(), along, across));
    }

    /**
     * This line with an arrow.
     *
     * @param sense where the arrow points, down-hole or up-hole
     * @return the line
     * @throws IllegalArgumentException if the line stands at right angles to the axis, so that neither end points down-hole; give the
     *     delta of the arrow's head as {@link DirectedCoreLine} then
     */
    public DirectedCoreLine pointing(HoleSense sense) {
        if (axisAngle == 90) {
            throw new IllegalArgumentException(
                    "a line at right angles to the core axis points neither down-hole nor up-hole; give the delta of the"
                            + " arrow's head as DirectedCoreLine");
        }
        DirectedCoreLine downHole = new DirectedCoreLine(axisAngle, delta);
        return sense == HoleSense.DOWN_HOLE ? downHole : downHole.reversed();
    }

    /** The unit vector of the down-hole end in core coordinates: axis, reference line, 90 clockwise of it. */
    Vector vector() {
        return CoreVectors.line(axisAngle, delta);
    }

    /** As it is written in a log: {@code axis angle 51.1, delta 167.4}. */
    @Override
    public String toString() {
        return "axis angle " + Degrees.text(axisAngle) + ", delta " + Degrees.azimuthText(delta);
    }
}
