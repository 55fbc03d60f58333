package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * The half of the wall that is kept when core is cut along its axis.
 *
 * @param edge where the kept wall begins, from there 180 degrees clockwise looking down-hole: clockwise from the reference line, degrees in
 *     [0, 360)
 */
public record HalfCore(double edge) {

    /**
     * Checks the edge.
     *
     * @throws IllegalArgumentException if it lies outside [0, 360]; 360 becomes 0
     */
    public HalfCore {
        edge = Require.azimuth("edge of the cut", edge);
    }

    /**
     * The half whose wall begins at an edge of the cut and goes on clockwise looking down-hole.
     *
     * @param edge degrees in [0, 360]
     * @return the half
     * @throws IllegalArgumentException if the edge lies outside its range
     */
    public static HalfCore clockwiseFrom(double edge) {
        return new HalfCore(edge);
    }

    /**
     * The half whose wall lies to both sides of an angle.
     *
     * @param middle clockwise from the reference line looking down-hole, degrees in [0, 360]; 0 where the line lies in the middle of what is
     *     kept
     * @return the half
     * @throws IllegalArgumentException if the middle lies outside its range
     */
    public static HalfCore about(double middle) {
        return new HalfCore(Degrees.wrap360(Require.azimuth("middle of the kept wall", middle) - 90));
    }

    /**
     * The middle of the kept wall.
     *
     * @return clockwise from the reference line looking down-hole, degrees in [0, 360)
     */
    public double middle() {
        return Degrees.wrap360(edge + 90);
    }

    /**
     * Whether a place on the wall was kept.
     *
     * @param angle clockwise from the reference line looking down-hole, degrees in [0, 360]
     * @return true on the kept wall and on both edges
     * @throws IllegalArgumentException if the angle lies outside its range
     */
    public boolean holds(double angle) {
        return Degrees.wrap360(Require.azimuth("angle on the wall", angle) - edge) <= 180;
    }

    /**
     * Whether the down-hole end of a plane's ellipse lies on the kept wall, so that beta can be read there.
     *
     * @param plane the plane
     * @return false also at alpha 0 and 90, where there is no such end
     */
    public boolean holdsDownHoleEnd(CorePlane plane) {
        return plane.alpha() > 0 && plane.hasBeta() && holds(plane.beta());
    }

    /**
     * Whether the up-hole end of a plane's ellipse lies on the kept wall.
     *
     * @param plane the plane
     * @return false also at alpha 0 and 90, where there is no such end
     */
    public boolean holdsUpHoleEnd(CorePlane plane) {
        return plane.alpha() > 0 && plane.hasBeta() && holds(Degrees.wrap360(plane.beta() + 180));
    }

    /** The kept wall: {@code wall from 300.0 to 120.0}. */
    @Override
    public String toString() {
        return "wall from " + Degrees.azimuthText(edge) + " to " + Degrees.azimuthText(Degrees.wrap360(edge + 180));
    }
}
