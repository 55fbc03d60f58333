package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A plane as it is measured on core, in the house convention; {@link BetaConvention} converts every other reading of beta.
 *
 * <p>At alpha 90 the ellipse is a circle and beta says nothing. At alpha 0 the plane holds the core axis, there is no ellipse,
 * and beta and beta + 180 are the same plane.
 *
 * @param alpha acute angle between the plane and the core axis, degrees in [0, 90]; 90 is perpendicular to the core
 * @param beta clockwise looking down-hole, from the reference line to the down-hole end of the ellipse's long axis, degrees in
 *     [0, 360)
 */
public record CorePlane(double alpha, double beta) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if alpha lies outside [0, 90] or beta outside [0, 360]; a beta of 360 becomes 0
     */
    public CorePlane {
        alpha = Require.inRange("alpha", alpha, 0, 90, "degrees");
        beta = Require.azimuth("beta", beta);
    }

    /**
     * A plane from alpha and beta.
     *
     * @param alpha degrees in [0, 90]
     * @param beta degrees in [0, 360]
     * @return the plane
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static CorePlane of(double alpha, double beta) {
        return new CorePlane(alpha, beta);
    }

    /**
     * A plane from the angle of its pole, for who counts from the pole instead of from the plane (the dip relative to the core).
     *
     * @param poleAngle acute angle between the pole and the core axis, degrees in [0, 90]; alpha is 90 less it
     * @param beta degrees in [0, 360]
     * @return the plane
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static CorePlane ofPoleAngle(double poleAngle, double beta) {
        return new CorePlane(90 - Require.inRange("pole angle", poleAngle, 0, 90, "degrees"), beta);
    }

    /**
     * The plane at right angles to the core, which has no beta.
     *
     * @return alpha 90, with 0 in the place of beta
     */
    public static CorePlane perpendicular() {
        return new CorePlane(90, 0);
    }

    /**
     * The plane whose normal is a vector on core, of any length and of either sign.
     *
     * @param along component along the axis, down-hole
     * @param towardsLine component towards the reference line
     * @param clockwise component towards the wall a quarter clockwise of it, looking down-hole
     * @return the plane
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static CorePlane ofNormal(double along, double towardsLine, double clockwise) {
        return ofNormal(Directions.checked(along, towardsLine, clockwise));
    }

    static CorePlane ofNormal(Vector normal) {
        double along = Math.abs(normal.north());
        double across = CoreVectors.across(normal);
        double upHole = normal.north() < 0 ? 1 : -1;
        return new CorePlane(
                Polar.fromPlane(along, across),
                Polar.round(upHole * normal.down(), upHole * normal.east(), along, across));
    }

    /**
     * Whether beta says something, which it does below alpha 90.
     *
     * @return false at alpha 90
     */
    public boolean hasBeta() {
        return alpha < 90;
    }

    /**
     * A line in this plane.
     *
     * @param gamma in the plane, clockwise looking down-hole, from the down-hole end of the ellipse's long axis, degrees in
     *     [0, 360]
     * @return the line
     * @throws IllegalArgumentException if gamma lies outside [0, 360] or this plane has no long axis (alpha 90)
     */
    public LineInPlane line(double gamma) {
        return new LineInPlane(this, gamma);
    }

    /**
     * A line with an arrow in this plane.
     *
     * @param gamma where the head of the arrow lies, clockwise looking down-hole, from the down-hole end of the ellipse's long axis,
     *     degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if gamma lies outside [0, 360] or this plane has no long axis (alpha 90)
     */
    public DirectedLineInPlane directedLine(double gamma) {
        return new DirectedLineInPlane(this, gamma);
    }

    /**
     * The direction in which this plane faces, at right angles to it: towards the younger side of a bed, say.
     *
     * @param sense the side to which it faces, down-hole or up-hole; at alpha 0, where beta names the plane both ways, down-hole is
     *     the side opposite to beta
     * @return the arrow through the core
     */
    public DirectedCoreLine facing(HoleSense sense) {
        Vector normal = normal();
        return DirectedCoreLine.ofVector(sense == HoleSense.DOWN_HOLE ? normal : normal.negated());
    }

    /** The unit normal on the down-hole side in core coordinates: axis, reference line, 90 clockwise of it. */
    Vector normal() {
        return CoreVectors.normal(alpha, beta);
    }

    /** As it is written in a log: {@code alpha 41.0, beta 213.0}. */
    @Override
    public String toString() {
        return "alpha " + Degrees.text(alpha) + (hasBeta() ? ", beta " + Degrees.azimuthText(beta) : ", no beta");
    }
}
