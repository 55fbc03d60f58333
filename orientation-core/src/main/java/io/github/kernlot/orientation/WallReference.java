package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A direction on the wall of the hole that can be found again in the ground: the side from which a line angle is counted, or the
 * side that an orientation mark stands for.
 */
public final class WallReference {

    private static final WallReference LOW_SIDE = new WallReference("low side", Double.NaN);
    private static final WallReference HIGH_SIDE = new WallReference("high side", Double.NaN);
    private static final WallReference NORTH = new WallReference("north", 0);

    private final String name;
    private final double azimuth;

    private WallReference(String name, double azimuth) {
        this.name = name;
        this.azimuth = azimuth;
    }

    /**
     * The side of the wall nearest the ground, the bottom of the hole. A vertical hole has none.
     *
     * @return the low side
     */
    public static WallReference lowSide() {
        return LOW_SIDE;
    }

    /**
     * The side of the wall opposite the low side. A vertical hole has none.
     *
     * @return the high side
     */
    public static WallReference highSide() {
        return HIGH_SIDE;
    }

    /**
     * The side of the wall nearest to horizontal north. A horizontal hole that points north or south has none.
     *
     * @return the side nearest to azimuth 0
     */
    public static WallReference north() {
        return NORTH;
    }

    /**
     * The side of the wall nearest to a horizontal direction. A horizontal hole along that direction has none.
     *
     * @param azimuth clockwise from the north in use, degrees in [0, 360]
     * @return the side nearest to that azimuth
     * @throws IllegalArgumentException if the azimuth lies outside its range
     */
    public static WallReference azimuth(double azimuth) {
        double checked = Require.azimuth("azimuth", azimuth);
        return checked == 0 ? NORTH : new WallReference("azimuth " + Degrees.azimuthText(checked), checked);
    }

    /**
     * How sharply this side is defined in a hole: the sine of the angle between the hole and the direction that names the side.
     * A small error across the hole turns the side by the error divided by this number.
     *
     * @param direction the direction of the hole
     * @return a number in [0, 1]: for the low and high side the sine of the inclination; 0 where the side does not exist
     */
    public double sharpness(HoleDirection direction) {
        return isGravity()
                ? Degrees.sin(direction.inclination())
                : direction.vector().cross(towards()).length();
    }

    /**
     * Whether this side exists in a hole of that direction.
     *
     * @param direction the direction of the hole
     * @return false for the low and high side of a vertical hole, and for a horizontal hole along the azimuth
     */
    public boolean existsIn(HoleDirection direction) {
        return sharpness(direction) > 0;
    }

    /** The unit wall direction of this side in a hole with that axis. */
    Vector on(Vector axis) {
        // (t x d) x t is the part of d across t; both products vanish exactly where d lies along t
        Vector across = axis.cross(towards()).cross(axis);
        double length = across.length();
        if (!(length > 0)) {
            throw new IllegalArgumentException(
                    isGravity()
                            ? "a vertical hole has no " + name + "; use a mark referred to north (WallReference.north())"
                            : "a horizontal hole along the " + name + " has no side nearest to it; use the low side");
        }
        return across.times(1 / length);
    }

    private boolean isGravity() {
        return this == LOW_SIDE || this == HIGH_SIDE;
    }

    private Vector towards() {
        if (isGravity()) {
            return this == LOW_SIDE ? Vector.DOWN : Vector.DOWN.negated();
        }
        return Vector.ofAzimuth(azimuth);
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WallReference that
                && name.equals(that.name)
                && Double.doubleToLongBits(azimuth) == Double.doubleToLongBits(that.azimuth);
    }

    @Override
    public int hashCode() {
        return 31 * name.hashCode() + Double.hashCode(azimuth);
    }

    /** The side by its name: {@code low side}, {@code azimuth 012.5}. */
    @Override
    public String toString() {
        return name;
    }
}
