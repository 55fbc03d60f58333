package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * A direction on the wall of the hole that can be found again in the ground: the side from which a line angle is counted, or the
 * side that an orientation mark stands for.
 */
public final class WallReference {

    private static final WallReference LOW_SIDE = new WallReference(Kind.LOW_SIDE, 0);
    private static final WallReference HIGH_SIDE = new WallReference(Kind.HIGH_SIDE, 0);
    private static final WallReference NORTH = new WallReference(Kind.AZIMUTH, 0);

    private static final Vector NOWHERE = new Vector(0, 0, 0);

    private enum Kind {
        LOW_SIDE,
        HIGH_SIDE,
        AZIMUTH
    }

    private final Kind kind;
    private final double azimuth;

    private WallReference(Kind kind, double azimuth) {
        this.kind = kind;
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
        return new WallReference(Kind.AZIMUTH, checked);
    }

    /**
     * The same side with every azimuth counted from another north.
     *
     * @param angle what is added to the azimuth, degrees, any finite number
     * @return the side with its azimuth wrapped into [0, 360); the low and the high side as they are
     * @throws IllegalArgumentException if the angle is not finite
     */
    public WallReference withAzimuthTurned(double angle) {
        double checked = Require.finite("angle", angle, "degrees");
        return kind == Kind.AZIMUTH ? azimuth(Degrees.wrap360(azimuth + checked)) : this;
    }

    /**
     * The side from which the angle of a line is counted whose marks stand for this side: the low side for marks of the high side,
     * else this side itself.
     *
     * @return the side
     */
    public WallReference countedFrom() {
        return kind == Kind.HIGH_SIDE ? LOW_SIDE : this;
    }

    /**
     * How sharply this side is defined in a hole: the sine of the angle between the hole and the direction that names the side.
     * A small error across the hole turns the side by the error divided by this number.
     *
     * @param direction the direction of the hole
     * @return a number in [0, 1]: for the low and high side the sine of the inclination; 0 where the side does not exist
     */
    public double sharpness(HoleDirection direction) {
        if (kind != Kind.AZIMUTH) {
            return Degrees.sin(direction.inclination());
        }
        double sine = direction.vector().cross(towards()).length();
        return sine < Polar.ROUNDING ? 0 : sine;
    }

    /**
     * Whether this side exists in a hole of that direction.
     *
     * @param direction the direction of the hole
     * @return false for the low and high side of a vertical hole, and for a horizontal hole along the azimuth
     */
    public boolean existsIn(HoleDirection direction) {
        return !across(direction.vector()).equals(NOWHERE);
    }

    /** The unit wall direction of this side in a hole with that axis. */
    Vector on(Vector axis) {
        Vector across = across(axis);
        if (across.equals(NOWHERE)) {
            throw new IllegalArgumentException(
                    kind == Kind.AZIMUTH
                            ? "a horizontal hole along " + this + " has no side nearest to it; use the low side"
                            : "a vertical hole has no " + this
                                    + "; use a mark referred to north (WallReference.north())");
        }
        return Directions.checked(across.north(), across.east(), across.down());
    }

    private Vector across(Vector axis) {
        // (t x d) x t is the part of d across t; both products vanish exactly where d points straight down or up, and
        // but for rounding where it is an azimuth and the opposite one
        Vector product = axis.cross(towards());
        boolean along = kind == Kind.AZIMUTH && product.length() < Polar.ROUNDING;
        return along ? NOWHERE : product.cross(axis);
    }

    private Vector towards() {
        return switch (kind) {
            case LOW_SIDE -> Vector.DOWN;
            case HIGH_SIDE -> Vector.DOWN.negated();
            case AZIMUTH -> Vector.ofAzimuth(azimuth);
        };
    }

    @Override
    public boolean equals(Object other) {
        return other instanceof WallReference that
                && kind == that.kind
                && Double.doubleToLongBits(azimuth) == Double.doubleToLongBits(that.azimuth);
    }

    @Override
    public int hashCode() {
        return 31 * kind.hashCode() + Double.hashCode(azimuth);
    }

    /** The side by its name: {@code low side}, {@code north}, {@code azimuth 012.5}. */
    @Override
    public String toString() {
        return switch (kind) {
            case LOW_SIDE -> "low side";
            case HIGH_SIDE -> "high side";
            case AZIMUTH -> azimuth == 0 ? "north" : "azimuth " + Degrees.azimuthText(azimuth);
        };
    }
}
