package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A line without an arrow in a plane that was measured on core: what gamma means when it is read in the plane. The other angle
 * that the trade calls gamma, between a line and the core axis, belongs to {@link CoreLine}.
 *
 * @param plane the plane, which must have a long axis to read from (alpha below 90)
 * @param gamma in the plane, clockwise looking down-hole, from the down-hole end of the ellipse's long axis, degrees in
 *     [0, 360); gamma and gamma + 180 are the same line
 */
public record LineInPlane(CorePlane plane, double gamma) {

    /**
     * Checks that the line is defined.
     *
     * @throws IllegalArgumentException if gamma lies outside [0, 360] or alpha is 90; a gamma of 360 becomes 0
     */
    public LineInPlane {
        gamma = checked(plane, gamma);
    }

    static double checked(CorePlane plane, double gamma) {
        double checked = Require.azimuth("gamma", gamma);
        if (!plane.hasBeta()) {
            throw new IllegalArgumentException(
                    "alpha is 90 degrees: the plane has no long axis from which gamma could be"
                            + " read; give the line as CoreLine with its delta");
        }
        return checked;
    }

    /**
     * A line from a gamma with a sign, as it is read by who counts both ways from the long axis.
     *
     * @param plane the plane, alpha below 90
     * @param gamma from the down-hole end of the long axis, positive clockwise looking down-hole, degrees in [-180, 180]
     * @return the line with gamma in [0, 360)
     * @throws IllegalArgumentException if gamma lies outside its range or alpha is 90
     */
    public static LineInPlane ofSignedGamma(CorePlane plane, double gamma) {
        return new LineInPlane(plane, Degrees.wrap360(Require.inRange("gamma", gamma, -180, 180, "degrees")));
    }

    /**
     * The line in this plane that lies nearest to a line through the core.
     *
     * @param plane the plane, alpha below 90
     * @param line the line through the core
     * @return the line with gamma in [0, 180); a line at right angles to the plane gives gamma 0
     * @throws IllegalArgumentException if alpha is 90
     */
    public static LineInPlane nearest(CorePlane plane, CoreLine line) {
        return new LineInPlane(plane, nearestGamma(plane, line.vector()) % 180);
    }

    /** The gamma in [0, 360) of the part in the plane of a vector; 0 for one at right angles to it. */
    static double nearestGamma(CorePlane plane, Vector vector) {
        double along = vector.dot(longAxis(plane));
        double across = vector.dot(shortAxis(plane));
        boolean perpendicular = along * along + across * across < Polar.ROUNDING * Polar.ROUNDING;
        return perpendicular ? 0 : Degrees.azimuth(across, along);
    }

    /**
     * The same line by its angle to the core axis and the place where it meets the wall.
     *
     * @return the line through the core
     */
    public CoreLine toCoreLine() {
        return CoreLine.ofVector(vector());
    }

    /**
     * This line with an arrow.
     *
     * @param sense where the arrow points, down-hole or up-hole
     * @return the line
     * @throws IllegalArgumentException if the line stands at right angles to the core axis (gamma 90 or 270, but for rounding), so that
     *     neither end points down-hole; give the gamma of the arrow's head as {@link DirectedLineInPlane} then
     */
    public DirectedLineInPlane pointing(HoleSense sense) {
        double along = Degrees.cos(gamma);
        if (Math.abs(along) < Polar.ROUNDING) {
            throw new IllegalArgumentException("a line at gamma " + Degrees.azimuthText(gamma)
                    + " points neither down-hole nor up-hole; give the gamma"
                    + " of the arrow's head as DirectedLineInPlane");
        }
        DirectedLineInPlane read = new DirectedLineInPlane(plane, gamma);
        return along > 0 == (sense == HoleSense.DOWN_HOLE) ? read : read.reversed();
    }

    Vector vector() {
        return vector(plane, gamma);
    }

    static Vector vector(CorePlane plane, double gamma) {
        // l = cos(gamma) m + sin(gamma) (t x u)
        return longAxis(plane).times(Degrees.cos(gamma)).plus(shortAxis(plane).times(Degrees.sin(gamma)));
    }

    private static Vector longAxis(CorePlane plane) {
        return CoreVectors.line(plane.alpha(), plane.beta());
    }

    private static Vector shortAxis(CorePlane plane) {
        return new Vector(0, -Degrees.sin(plane.beta()), Degrees.cos(plane.beta()));
    }

    /** As it is written in a log: {@code alpha 41.0, beta 213.0, gamma 035.0}. */
    @Override
    public String toString() {
        return plane + ", gamma " + Degrees.azimuthText(gamma);
    }
}
