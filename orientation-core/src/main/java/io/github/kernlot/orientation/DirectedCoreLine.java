package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A line with an arrow through the core: {@code cos(axisAngle) t + sin(axisAngle) u(delta)}, with t the axis down-hole and u(delta) the
 * wall direction delta clockwise from the reference line. {@link CoreLine} is the same without the arrow.
 *
 * <p>An arrow along the axis never meets the wall and its delta says nothing.
 *
 * @param axisAngle angle between the arrow and the core axis down-hole, degrees in [0, 180]; above 90 the arrow points up-hole
 * @param delta where the head of the arrow meets the wall, clockwise looking down-hole from the reference line, degrees in
 *     [0, 360)
 */
public record DirectedCoreLine(double axisAngle, double delta) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the axis angle lies outside [0, 180] or delta outside [0, 360]; a delta of 360
     *     becomes 0
     */
    public DirectedCoreLine {
        axisAngle = Require.inRange("axis angle", axisAngle, 0, 180, "degrees");
        delta = Require.azimuth("delta", delta);
    }

    /**
     * An arrow from its angle to the axis and the place where its head meets the wall.
     *
     * @param axisAngle from the axis down-hole, degrees in [0, 180]
     * @param delta degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static DirectedCoreLine ofAxisAngleAndDelta(double axisAngle, double delta) {
        return new DirectedCoreLine(axisAngle, delta);
    }

    /**
     * The arrow along a vector on core, of any length.
     *
     * @param along component along the axis, down-hole
     * @param towardsLine component towards the reference line
     * @param clockwise component towards the wall a quarter clockwise of it, looking down-hole
     * @return the line
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static DirectedCoreLine ofVector(double along, double towardsLine, double clockwise) {
        return ofVector(Directions.checked(along, towardsLine, clockwise));
    }

    static DirectedCoreLine ofVector(Vector vector) {
        double across = CoreVectors.across(vector);
        double acute = Polar.fromAxis(Math.abs(vector.north()), across);
        double delta = across < Polar.ROUNDING ? 0 : Degrees.azimuth(vector.down(), vector.east());
        return new DirectedCoreLine(vector.north() < 0 ? 180 - acute : acute, delta);
    }

    /**
     * The same line without its arrow.
     *
     * @return the line through the core; at right angles to the axis with delta in [0, 180)
     */
    public CoreLine withoutArrow() {
        double downHole = axisAngle > 90 ? Degrees.wrap360(delta + 180) : delta;
        return new CoreLine(Math.min(axisAngle, 180 - axisAngle), axisAngle == 90 ? downHole % 180 : downHole);
    }

    /**
     * The same line with its arrow on the other end.
     *
     * @return the line
     */
    public DirectedCoreLine reversed() {
        return new DirectedCoreLine(180 - axisAngle, Degrees.wrap360(delta + 180));
    }

    /** The unit vector of the arrow in core coordinates: axis, reference line, 90 clockwise of it. */
    Vector vector() {
        return CoreVectors.line(axisAngle, delta);
    }

    /** As it is written in a log, and that there is an arrow: {@code arrow with axis angle 128.9, delta 347.4}. */
    @Override
    public String toString() {
        return "arrow with axis angle " + Degrees.text(axisAngle) + ", delta " + Degrees.azimuthText(delta);
    }
}
