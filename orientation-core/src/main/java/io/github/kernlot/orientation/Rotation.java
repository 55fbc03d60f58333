package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A rotation of things in the ground: planes and lines are turned, north stays. It undoes a fold or a tilt, and it puts right what was
 * read in a cradle that stood at a wrong attitude ({@link CoreFrame#rebase}).
 */
public final class Rotation {

    private final Vector north;
    private final Vector east;
    private final Vector down;

    /** The three are what the rotation makes of the unit vectors towards north, east and down. */
    private Rotation(Vector north, Vector east, Vector down) {
        this.north = north;
        this.east = east;
        this.down = down;
    }

    /**
     * A rotation about an axis.
     *
     * @param axis the axis, with the arrow along which one looks
     * @param clockwise how far things are turned, clockwise looking along the arrow, degrees, any finite number
     * @return the rotation
     * @throws IllegalArgumentException if the angle is not finite
     */
    public static Rotation about(DirectedLine axis, double clockwise) {
        double angle = Require.finite("angle", clockwise, "degrees");
        Vector along = axis.vector();
        return new Rotation(
                turned(new Vector(1, 0, 0), along, angle),
                turned(new Vector(0, 1, 0), along, angle),
                turned(Vector.DOWN, along, angle));
    }

    private static Vector turned(Vector vector, Vector axis, double angle) {
        // Rodrigues: v' = (a . v) a + cos x (v across a) + sin x (a x v)
        return axis.times(axis.dot(vector))
                .plus(vector.across(axis).times(Degrees.cos(angle)))
                .plus(axis.cross(vector).times(Degrees.sin(angle)));
    }

    /**
     * The smallest rotation that takes one arrow to another. It lays a bed flat, right way up, when it takes the direction in which the
     * bed faces to vertically up.
     *
     * @param from the arrow as it is
     * @param to the arrow as it shall be
     * @return the rotation
     * @throws IllegalArgumentException if the two are opposite within 0.1 degrees, so that no smallest rotation can be told
     */
    public static Rotation carrying(DirectedLine from, DirectedLine to) {
        Require.inRange("angle between the arrows", from.angleTo(to), 0, 179.9, "degrees");
        Vector start = from.vector();
        Vector end = to.vector();
        return new Rotation(
                new Vector(1, 0, 0).carried(start, end),
                new Vector(0, 1, 0).carried(start, end),
                Vector.DOWN.carried(start, end));
    }

    /** The rotation that takes three perpendicular unit vectors to three others. */
    static Rotation carrying(Vector[] from, Vector[] to) {
        return new Rotation(
                sum(to, from[0].north(), from[1].north(), from[2].north()),
                sum(to, from[0].east(), from[1].east(), from[2].east()),
                sum(to, from[0].down(), from[1].down(), from[2].down()));
    }

    private static Vector sum(Vector[] vectors, double first, double second, double third) {
        return vectors[0].times(first).plus(vectors[1].times(second)).plus(vectors[2].times(third));
    }

    /**
     * A plane, turned.
     *
     * @param plane the plane
     * @return the plane where the rotation takes it
     */
    public PlaneOrientation apply(PlaneOrientation plane) {
        return PlaneOrientation.ofNormal(apply(plane.normal()));
    }

    /**
     * A line, turned.
     *
     * @param line the line
     * @return the line where the rotation takes it
     */
    public LineOrientation apply(LineOrientation line) {
        return LineOrientation.ofVector(apply(line.vector()));
    }

    /**
     * A line with an arrow, turned.
     *
     * @param line the line
     * @return the line where the rotation takes it
     */
    public DirectedLine apply(DirectedLine line) {
        return DirectedLine.ofVector(apply(line.vector()));
    }

    private Vector apply(Vector vector) {
        return sum(new Vector[] {north, east, down}, vector.north(), vector.east(), vector.down());
    }

    /**
     * This rotation and then another.
     *
     * @param next the rotation that follows
     * @return the two in one
     */
    public Rotation andThen(Rotation next) {
        return new Rotation(next.apply(north), next.apply(east), next.apply(down));
    }

    /**
     * The rotation that undoes this one.
     *
     * @return the inverse
     */
    public Rotation inverse() {
        return new Rotation(
                new Vector(north.north(), east.north(), down.north()),
                new Vector(north.east(), east.east(), down.east()),
                new Vector(north.down(), east.down(), down.down()));
    }

    /**
     * How far things are turned about {@link #axis()}.
     *
     * @return degrees in [0, 180]
     */
    public double angle() {
        // v = 2 sin x a and the trace is 1 + 2 cos x
        return Degrees.atan2(twist().length(), north.north() + east.east() + down.down() - 1);
    }

    /**
     * The axis, with the arrow along which the turn looks clockwise.
     *
     * @return the axis; that of a half turn with either arrow, and vertically down for a rotation that turns nothing
     */
    public DirectedLine axis() {
        Vector twist = twist();
        if (angle() <= 90) {
            return twist.length() == 0 ? new DirectedLine(90, 0) : DirectedLine.ofVector(twist.unit());
        }
        // towards a half turn the twist vanishes, and R + R' + (1 - trace) 1 = 2 (1 - cos x) a a' does not
        double rest = 1 - north.north() - east.east() - down.down();
        Vector along = longest(
                new Vector(2 * north.north() + rest, north.east() + east.north(), north.down() + down.north()),
                new Vector(east.north() + north.east(), 2 * east.east() + rest, east.down() + down.east()),
                new Vector(down.north() + north.down(), down.east() + east.down(), 2 * down.down() + rest));
        return DirectedLine.ofVector((along.dot(twist) < 0 ? along.negated() : along).unit());
    }

    private Vector twist() {
        return new Vector(east.down() - down.east(), down.north() - north.down(), north.east() - east.north());
    }

    private static Vector longest(Vector a, Vector b, Vector c) {
        Vector longer = a.length() >= b.length() ? a : b;
        return longer.length() >= c.length() ? longer : c;
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof Rotation that
                && north.equals(that.north)
                && east.equals(that.east)
                && down.equals(that.down);
    }

    @Override
    public int hashCode() {
        return 31 * (31 * north.hashCode() + east.hashCode()) + down.hashCode();
    }

    /** The turn and its axis: {@code 124.0 clockwise along arrow -37.0/056.0 (plunge/trend)}. */
    @Override
    public String toString() {
        return Degrees.text(angle()) + " clockwise along " + axis();
    }
}
