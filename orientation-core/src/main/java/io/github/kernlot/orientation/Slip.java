package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The slip on a plane in the ground: how the hanging wall moved, seen from the footwall. The hanging wall lies on the side of the dip
 * direction, of a vertical plane too.
 *
 * <p>The rake is counted from the strike of the right-hand rule towards the up-dip direction, so that its sign tells reverse from
 * normal (Aki and Richards, Quantitative Seismology, 1980, from memory): 0 is sinistral, 90 reverse, 180 dextral, -90 normal. The
 * rake of a line without an arrow, {@link PlaneOrientation#rake}, is counted downwards.
 *
 * @param plane the plane of the slip
 * @param rake of the movement of the hanging wall, in the plane from the strike of the right-hand rule, positive up-dip, degrees in
 *     (-180, 180]
 */
public record Slip(PlaneOrientation plane, double rake) {

    /**
     * Checks the rake.
     *
     * @throws IllegalArgumentException if the rake lies outside [-180, 180]; -180 becomes 180
     */
    public Slip {
        rake = Degrees.wrap180(Require.inRange("rake", rake, -180, 180, "degrees"));
    }

    /**
     * The slip of a hanging wall that moved along an arrow.
     *
     * @param plane the plane of the slip
     * @param movement the movement of the hanging wall; the part of it that lies in the plane counts
     * @return the slip
     * @throws IllegalArgumentException if the movement stands at right angles to the plane
     */
    public static Slip ofHangingWall(PlaneOrientation plane, DirectedLine movement) {
        return of(plane, movement.vector());
    }

    /**
     * The slip of a footwall that moved along an arrow.
     *
     * @param plane the plane of the slip
     * @param movement the movement of the footwall; the part of it that lies in the plane counts
     * @return the slip
     * @throws IllegalArgumentException if the movement stands at right angles to the plane
     */
    public static Slip ofFootwall(PlaneOrientation plane, DirectedLine movement) {
        return of(plane, movement.vector().negated());
    }

    static Slip of(PlaneOrientation plane, Vector hangingWall) {
        return new Slip(plane, -plane.signedRake(hangingWall));
    }

    /**
     * The movement of the hanging wall.
     *
     * @return the arrow, in the plane
     */
    public DirectedLine hangingWall() {
        return DirectedLine.ofVector(plane.vectorAtRake(-rake));
    }

    /**
     * The movement of the footwall, opposite to that of the hanging wall.
     *
     * @return the arrow, in the plane
     */
    public DirectedLine footwall() {
        return hangingWall().reversed();
    }

    /**
     * Whether the hanging wall moved down the dip.
     *
     * @return true for a rake in (-180, 0)
     */
    public boolean isNormal() {
        return rake < 0;
    }

    /**
     * Whether the hanging wall moved up the dip.
     *
     * @return true for a rake in (0, 180)
     */
    public boolean isReverse() {
        return rake > 0 && rake < 180;
    }

    /**
     * Whether the far block moved to the left along the strike.
     *
     * @return true for a rake in (-90, 90)
     */
    public boolean isSinistral() {
        return Math.abs(rake) < 90;
    }

    /**
     * Whether the far block moved to the right along the strike.
     *
     * @return true for a rake below -90 or above 90
     */
    public boolean isDextral() {
        return Math.abs(rake) > 90;
    }

    /** The plane, the rake and what it means: {@code 60.0/090.0 (dip/dip direction), slip rake -80.0, normal, sinistral}. */
    @Override
    public String toString() {
        String along = isNormal() ? ", normal" : isReverse() ? ", reverse" : "";
        String strike = isSinistral() ? ", sinistral" : isDextral() ? ", dextral" : "";
        return plane + ", slip rake " + Degrees.text(rake) + along + strike;
    }
}
