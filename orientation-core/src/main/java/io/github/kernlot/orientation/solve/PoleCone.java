package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * What an alpha alone says of a plane, on core that is not oriented: its pole lies on a cone about the hole, 90 - alpha from the
 * axis. A cone is not an orientation; a dip, a strike, a beta or another hole picks planes from it.
 *
 * @param hole the direction of the hole where the core was cut
 * @param alpha acute angle between plane and core axis, degrees in [0, 90]
 */
public record PoleCone(HoleDirection hole, double alpha) {

    /**
     * Checks alpha.
     *
     * @throws IllegalArgumentException if alpha lies outside [0, 90]
     */
    public PoleCone {
        alpha = Require.inRange("alpha", alpha, 0, 90, "degrees");
    }

    /**
     * The cone of an alpha in a hole.
     *
     * @param hole the direction of the hole
     * @param alpha degrees in [0, 90]
     * @return the cone
     * @throws IllegalArgumentException if alpha lies outside [0, 90]
     */
    public static PoleCone of(HoleDirection hole, double alpha) {
        return new PoleCone(hole, alpha);
    }

    /**
     * The angle between the axis of the hole and the poles.
     *
     * @return 90 - alpha, degrees in [0, 90]
     */
    public double halfAngle() {
        return 90 - alpha;
    }

    /**
     * The least dip of a plane of this cone: {@code | |P| - alpha |} with the plunge P of the hole, down or up.
     *
     * @return degrees in [0, 90]
     */
    public double leastDip() {
        return Math.abs(steepness() - alpha);
    }

    /**
     * The greatest dip of a plane of this cone: {@code min(90, 180 - |P| - alpha)} with the plunge P of the hole, down or up.
     *
     * @return degrees in [0, 90]
     */
    public double greatestDip() {
        return Math.min(90, 180 - steepness() - alpha);
    }

    private double steepness() {
        return Math.abs(hole.plunge());
    }

    /**
     * The planes of this cone with a given dip.
     *
     * @param dip degrees in [0, 90]
     * @return up to four planes, in pairs that mirror each other about the vertical plane through the hole; none outside the range
     *     of dips; {@link ConeMeeting.Kind#PARALLEL} in a vertical hole, all of whose planes have one dip
     * @throws IllegalArgumentException if the dip lies outside [0, 90]
     */
    public ConeMeeting atDip(double dip) {
        // a plane of that dip is one that a vertical hole would cut at alpha 90 - dip
        double checked = Require.inRange("dip", dip, 0, 90, "degrees");
        return ConeMeeting.of(Poles.axis(hole), alpha, Vector.DOWN, 90 - checked);
    }

    /**
     * The planes of this cone with a given strike.
     *
     * @param strike either end of the strike line, clockwise from north, degrees in [0, 360]
     * @return up to two planes; {@link ConeMeeting.Kind#PARALLEL} in a horizontal hole along strike, where alpha is 0 for every
     *     dip
     * @throws IllegalArgumentException if the strike lies outside [0, 360]
     */
    public ConeMeeting withStrike(double strike) {
        Vector line = Vector.ofAzimuth(Require.azimuth("strike", strike));
        return ConeMeeting.of(Poles.axis(hole), alpha, line, 0);
    }

    /**
     * The planes of this cone that are on another cone too: the same structure, or one parallel to it, in another hole.
     *
     * @param other the cone of the other hole
     * @return up to four planes
     */
    public ConeMeeting meeting(PoleCone other) {
        return ConeMeeting.of(Poles.axis(hole), alpha, Poles.axis(other.hole), other.alpha);
    }

    /**
     * The plane of this cone at a beta.
     *
     * @param reference the side of the wall that beta is counted from
     * @param beta clockwise looking down-hole from that side to the down-hole end of the ellipse, degrees in [0, 360]
     * @return the plane
     * @throws IllegalArgumentException if the side does not exist in the hole, or beta lies outside [0, 360]
     */
    public PlaneOrientation planeAt(WallReference reference, double beta) {
        return CoreFrame.at(hole, reference, 0).toGeographic(CorePlane.of(alpha, beta));
    }

    /**
     * How far a plane is from this cone.
     *
     * @param plane the plane
     * @return the alpha that the plane has in the hole less that of the cone, degrees in [-90, 90]
     */
    public double misfit(PlaneOrientation plane) {
        return Poles.alpha(Poles.normal(plane), Poles.axis(hole)) - alpha;
    }

    /** The hole, alpha and the dips: {@code alpha 40.0 in -60.0/090.0 (dip/azimuth): dips 20.0 to 80.0}. */
    @Override
    public String toString() {
        return "alpha " + Degrees.text(alpha) + " in " + hole + ": dips " + Degrees.text(leastDip()) + " to "
                + Degrees.text(greatestDip());
    }
}
