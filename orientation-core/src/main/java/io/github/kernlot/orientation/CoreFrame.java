package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * Where the core stood in the ground at one depth: the direction of its axis and the side on which its reference line lay. It
 * takes what was measured on the core to the ground and back.
 *
 * <p>With t the axis down-hole, u(b) the wall direction b clockwise from the reference line looking down-hole, a plane's normal on
 * the down-hole side is {@code n = sin(alpha) t - cos(alpha) u(beta)}, its long axis {@code m = cos(alpha) t + sin(alpha) u(beta)}
 * and a line in it {@code cos(gamma) m + sin(gamma) (t x u(beta))}. These are definitions written as vectors; the inverse uses
 * atan2 alone and is within 1e-12 degrees, also beside alpha 0, alpha 90 and vertical holes (there: of the direction in space).
 */
public final class CoreFrame {

    private final Vector axis;
    private final Vector line;
    private final Vector quarter;

    private CoreFrame(Vector axis, Vector line) {
        this.axis = axis;
        this.line = line;
        this.quarter = axis.cross(line);
    }

    /**
     * The frame of core whose reference line is known from the low side.
     *
     * @param direction the direction of the hole at the depth
     * @param lineAngle where the reference line lies, clockwise from the low side looking down-hole, degrees, any finite number
     * @return the frame
     * @throws IllegalArgumentException if the hole is vertical and so has no low side, or the angle is not finite
     */
    public static CoreFrame at(HoleDirection direction, double lineAngle) {
        double sinI = Degrees.sin(direction.inclination());
        if (sinI == 0) {
            return at(direction, WallReference.lowSide(), lineAngle);
        }
        double cosI = Degrees.cos(direction.inclination());
        double sinA = Degrees.sin(direction.azimuth());
        double cosA = Degrees.cos(direction.azimuth());
        double checked = Require.finite("angle", lineAngle, "degrees");
        double cosX = Degrees.cos(checked);
        double sinX = Degrees.sin(checked);
        // u(x) = -cos x h - sin x r, and nothing else: in a steep hole too the low side is as exact as the azimuth
        double north = -cosI * cosA * cosX + sinA * sinX;
        double east = -cosI * sinA * cosX - cosA * sinX;
        return new CoreFrame(new Vector(sinI * cosA, sinI * sinA, cosI), new Vector(north, east, sinI * cosX));
    }

    /**
     * The frame of core whose reference line is known from a side of the wall.
     *
     * @param direction the direction of the hole at the depth
     * @param reference the side that the angle is counted from
     * @param lineAngle where the reference line lies, clockwise from that side looking down-hole, degrees, any finite number
     * @return the frame
     * @throws IllegalArgumentException if that side does not exist in the hole, or the angle is not finite
     */
    public static CoreFrame at(HoleDirection direction, WallReference reference, double lineAngle) {
        if (reference.equals(WallReference.lowSide()) && Degrees.sin(direction.inclination()) > 0) {
            return at(direction, lineAngle);
        }
        Vector axis = direction.vector();
        return new CoreFrame(axis, reference.on(axis)).turned(lineAngle);
    }

    /**
     * The frame from which a hole's carried frame starts: that of a vertical hole whose line lies to the north, carried by the
     * smallest rotation to the direction. It exists in every direction.
     *
     * @param direction the direction of the hole at its collar
     * @return the frame
     */
    public static CoreFrame carriedTo(HoleDirection direction) {
        Vector axis = direction.vector();
        Vector start = direction.inclination() <= 90 ? Vector.DOWN : Vector.DOWN.negated();
        return new CoreFrame(axis, square(Vector.ofAzimuth(0).carried(start, axis), axis));
    }

    /**
     * This frame carried without twist to another direction, by the smallest rotation of the axis: what a straight scribe on the
     * core does along one arc.
     *
     * @param direction the new direction of the axis
     * @return the carried frame, within 1e-12 degrees up to a dogleg of 170 degrees and within 2e-11 degrees beyond
     * @throws IllegalArgumentException if the new direction is opposite to the axis within 0.1 degrees, so that no smallest
     *     rotation can be told
     */
    public CoreFrame carriedAlong(HoleDirection direction) {
        Vector to = direction.vector();
        double dogleg = Math.toDegrees(axis.angleTo(to));
        Require.inRange("dogleg", dogleg, 0, 179.9, "degrees");
        return new CoreFrame(to, square(line.carried(axis, to), to));
    }

    private static Vector square(Vector line, Vector axis) {
        return line.across(axis).unit();
    }

    /**
     * The frame with the reference line drawn elsewhere on the same core.
     *
     * @param angle how far the line is moved, clockwise looking down-hole, degrees, any finite number
     * @return the turned frame
     * @throws IllegalArgumentException if the angle is not finite
     */
    public CoreFrame turned(double angle) {
        return new CoreFrame(axis, wall(Require.finite("angle", angle, "degrees")));
    }

    /** u(angle): the wall direction that lies so far clockwise of the reference line. */
    private Vector wall(double angle) {
        return line.times(Degrees.cos(angle)).plus(quarter.times(Degrees.sin(angle)));
    }

    /**
     * The direction of the core's axis, down-hole.
     *
     * @return the direction
     */
    public HoleDirection direction() {
        return HoleDirection.ofVector(axis.north(), axis.east(), axis.down());
    }

    /**
     * Where the reference line lies.
     *
     * @return clockwise from the low side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the hole is vertical
     */
    public double lineAngle() {
        return lineAngle(WallReference.lowSide());
    }

    /**
     * Where the reference line lies.
     *
     * @param reference the side to count from
     * @return clockwise from that side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if that side does not exist in the hole
     */
    public double lineAngle(WallReference reference) {
        Vector side = reference.on(axis);
        return Degrees.azimuth(-side.dot(quarter), side.dot(line));
    }

    /**
     * How far this frame's reference line lies from that of another frame with the same axis.
     *
     * @param other the frame to count from
     * @return clockwise from the other's line looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the axes lie more than 0.001 degrees apart
     */
    public double turnFrom(CoreFrame other) {
        Require.inRange("angle between the axes", Math.toDegrees(axis.angleTo(other.axis)), 0, 0.001, "degrees");
        return Degrees.azimuth(line.dot(other.quarter), line.dot(other.line));
    }

    /**
     * A measured plane in the ground.
     *
     * @param plane the plane on the core
     * @return its orientation
     */
    public PlaneOrientation toGeographic(CorePlane plane) {
        return PlaneOrientation.ofNormal(fromCore(plane.normal()));
    }

    /**
     * A measured line in a plane in the ground.
     *
     * @param measured the line on the core
     * @return its orientation
     */
    public LineOrientation toGeographic(LineInPlane measured) {
        return LineOrientation.ofVector(fromCore(measured.vector()));
    }

    /**
     * A measured line through the core in the ground.
     *
     * @param measured the line on the core
     * @return its orientation
     */
    public LineOrientation toGeographic(CoreLine measured) {
        return LineOrientation.ofVector(fromCore(measured.vector()));
    }

    /**
     * A measured arrow through the core in the ground.
     *
     * @param measured the line on the core
     * @return its orientation
     */
    public DirectedLine toGeographic(DirectedCoreLine measured) {
        return DirectedLine.ofVector(fromCore(measured.vector()));
    }

    /**
     * A measured arrow in a plane in the ground.
     *
     * @param measured the line on the core
     * @return its orientation
     */
    public DirectedLine toGeographic(DirectedLineInPlane measured) {
        return DirectedLine.ofVector(fromCore(measured.vector()));
    }

    /**
     * A measured slip in the ground. The block that lies above the plane, on the side of the dip direction, is the hanging wall,
     * whichever of the two was meant on the core.
     *
     * @param measured the slip on the core
     * @return the slip
     */
    public Slip toGeographic(CoreSlip measured) {
        Vector normal = fromCore(measured.plane().normal());
        PlaneOrientation plane = PlaneOrientation.ofNormal(normal);
        Vector movement = fromCore(measured.movementDownHole());
        boolean hangingWallDownHole = normal.dot(plane.normal()) < 0;
        return Slip.of(plane, hangingWallDownHole ? movement : movement.negated());
    }

    /**
     * How a plane in the ground shows on this core.
     *
     * @param plane the orientation of the plane
     * @return the plane on the core; at alpha 90 with 0 in the place of beta, at alpha 0 with beta in [0, 180)
     */
    public CorePlane toCore(PlaneOrientation plane) {
        return CorePlane.ofNormal(toCore(plane.normal()));
    }

    /**
     * How a line in the ground shows on this core.
     *
     * @param orientation the orientation of the line
     * @return the line through the core; along the axis with delta 0, at right angles to it with delta in [0, 180)
     */
    public CoreLine toCore(LineOrientation orientation) {
        return CoreLine.ofVector(toCore(orientation.vector()));
    }

    /**
     * How an arrow in the ground shows on this core.
     *
     * @param orientation the orientation of the line
     * @return the line through the core; along the axis with delta 0
     */
    public DirectedCoreLine toCore(DirectedLine orientation) {
        return DirectedCoreLine.ofVector(toCore(orientation.vector()));
    }

    /**
     * How a slip in the ground shows on this core.
     *
     * @param slip the slip
     * @return the plane on the core with the movement of the hanging wall, which lies on its down-hole or on its up-hole side
     */
    public CoreSlip toCore(Slip slip) {
        CorePlane plane = toCore(slip.plane());
        boolean hangingWallDownHole = fromCore(plane.normal()).dot(slip.plane().normal()) < 0;
        return new CoreSlip(
                plane, toCore(slip.hangingWall()), hangingWallDownHole ? HoleSense.DOWN_HOLE : HoleSense.UP_HOLE);
    }

    /**
     * What puts right the orientations that were read on this core while it lay in a cradle at another attitude, or that were computed
     * before a survey or a line was corrected: the rotation from the frame that was used to this one.
     *
     * @param used the frame that the readings were made in
     * @return the rotation that takes what was read to what is
     */
    public Rotation rebase(CoreFrame used) {
        return Rotation.carrying(new Vector[] {used.axis, used.line, used.quarter}, new Vector[] {axis, line, quarter});
    }

    /**
     * The frame as a matrix, row by row: the axis down-hole, the reference line, and the wall direction a quarter clockwise of it, each by
     * its components towards north, east and down. Its product with a vector in the ground is that vector on core.
     *
     * @return nine numbers in [-1, 1], a new array
     */
    public double[] directionCosines() {
        return new double[] {
            axis.north(), axis.east(), axis.down(),
            line.north(), line.east(), line.down(),
            quarter.north(), quarter.east(), quarter.down()
        };
    }

    private Vector fromCore(Vector core) {
        return axis.times(core.north()).plus(line.times(core.east())).plus(quarter.times(core.down()));
    }

    private Vector toCore(Vector ground) {
        return new Vector(ground.dot(axis), ground.dot(line), ground.dot(quarter));
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof CoreFrame that && axis.equals(that.axis) && line.equals(that.line);
    }

    @Override
    public int hashCode() {
        return 31 * axis.hashCode() + line.hashCode();
    }

    /** The hole and the line: {@code -60.0/090.0 (dip/azimuth), line 025.0 from low side}. */
    @Override
    public String toString() {
        WallReference reference = axis.horizontal() > 0 ? WallReference.lowSide() : WallReference.north();
        return direction() + ", line " + Degrees.azimuthText(lineAngle(reference)) + " from " + reference;
    }
}
