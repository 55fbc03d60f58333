package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A line with an arrow in a plane that was measured on core. {@link LineInPlane} is the same without the arrow.
 *
 * @param plane the plane, which must have a long axis to read from (alpha below 90)
 * @param gamma where the head of the arrow lies: in the plane, clockwise looking down-hole, from the down-hole end of the
 *     ellipse's long axis, degrees in [0, 360)
 */
public record DirectedLineInPlane(CorePlane plane, double gamma) {

    /**
     * Checks that the line is defined.
     *
     * @throws IllegalArgumentException if gamma lies outside [0, 360] or alpha is 90; a gamma of 360 becomes 0
     */
    public DirectedLineInPlane {
        gamma = LineInPlane.checked(plane, gamma);
    }

    /**
     * An arrow from a gamma with a sign, as it is read by who counts both ways from the long axis.
     *
     * @param plane the plane, alpha below 90
     * @param gamma where the head of the arrow lies, from the down-hole end of the long axis, positive clockwise looking down-hole,
     *     degrees in [-180, 180]
     * @return the line with gamma in [0, 360)
     * @throws IllegalArgumentException if gamma lies outside its range or alpha is 90
     */
    public static DirectedLineInPlane ofSignedGamma(CorePlane plane, double gamma) {
        return new DirectedLineInPlane(plane, Degrees.wrap360(Require.inRange("gamma", gamma, -180, 180, "degrees")));
    }

    /**
     * The arrow in this plane that lies nearest to an arrow through the core.
     *
     * @param plane the plane, alpha below 90
     * @param line the arrow through the core
     * @return the line; an arrow at right angles to the plane gives gamma 0
     * @throws IllegalArgumentException if alpha is 90
     */
    public static DirectedLineInPlane nearest(CorePlane plane, DirectedCoreLine line) {
        return new DirectedLineInPlane(plane, LineInPlane.nearestGamma(plane, line.vector()));
    }

    /**
     * The same line without its arrow.
     *
     * @return the line with gamma in [0, 180)
     */
    public LineInPlane withoutArrow() {
        return new LineInPlane(plane, gamma % 180);
    }

    /**
     * The same line with its arrow on the other end.
     *
     * @return the line
     */
    public DirectedLineInPlane reversed() {
        return new DirectedLineInPlane(plane, Degrees.wrap360(gamma + 180));
    }

    /**
     * The same arrow by its angle to the core axis and the place where its head meets the wall.
     *
     * @return the line through the core
     */
    public DirectedCoreLine toCoreLine() {
        return DirectedCoreLine.ofVector(vector());
    }

    /**
     * The slip of which this arrow is the movement.
     *
     * @param block the block that moved this way, seen from the other: the one on the down-hole or on the up-hole side of the plane
     * @return the slip as read on the core
     */
    public CoreSlip slipOf(HoleSense block) {
        return new CoreSlip(plane, toCoreLine(), block);
    }

    Vector vector() {
        return LineInPlane.vector(plane, gamma);
    }

    /** As it is written in a log: {@code alpha 41.0, beta 213.0, arrow at gamma 215.0}. */
    @Override
    public String toString() {
        return plane + ", arrow at gamma " + Degrees.azimuthText(gamma);
    }
}
