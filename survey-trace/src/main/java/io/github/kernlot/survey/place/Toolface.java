package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * Where a hole bends to: the side of the wall that the bend turns towards.
 *
 * @param angle clockwise from the reference looking down-hole, degrees in [0, 360)
 * @param from what it is counted from: the high side (gravity toolface), which a vertical hole has not; or north, the side of the
 *     wall nearest to grid north, which in a hole that goes vertically down makes the toolface the azimuth of the bend
 */
public record Toolface(double angle, WallReference from) {

    /**
     * Checks both.
     *
     * @throws IllegalArgumentException if the angle lies outside [0, 360], 360 becoming 0, or the reference is neither the high side
     *     nor north
     */
    public Toolface {
        angle = Require.azimuth("toolface", angle);
        if (!from.equals(WallReference.highSide()) && !from.equals(WallReference.north())) {
            throw new IllegalArgumentException(
                    "a toolface from " + from + "; expected one from the high side or north");
        }
    }

    /**
     * A toolface from the high side: 0 builds, 90 turns right, 180 drops, 270 turns left.
     *
     * @param angle clockwise from the high side looking down-hole, degrees in [0, 360]
     * @return the toolface
     * @throws IllegalArgumentException if the angle lies outside its range
     */
    public static Toolface fromHighSide(double angle) {
        return new Toolface(angle, WallReference.highSide());
    }

    /**
     * A toolface from north, for a hole that is vertical or nearly so.
     *
     * @param angle clockwise from the side nearest to grid north looking down-hole, degrees in [0, 360]
     * @return the toolface
     * @throws IllegalArgumentException if the angle lies outside its range
     */
    public static Toolface fromNorth(double angle) {
        return new Toolface(angle, WallReference.north());
    }

    /** The toolface of a bend towards a side: from the high side, or from north where the hole is vertical. */
    static Toolface of(Vector side, HoleDirection direction) {
        WallReference from = direction.isVertical() ? WallReference.north() : WallReference.highSide();
        Vector zero = zero(from, direction);
        Vector quarter = Legs.vector(direction).cross(zero);
        return new Toolface(Degrees.azimuth(side.dot(quarter), side.dot(zero)), from);
    }

    /** The unit vector of the side that the bend turns towards. */
    Vector side(HoleDirection direction) {
        Vector zero = zero(from, direction);
        Vector quarter = Legs.vector(direction).cross(zero);
        return zero.times(Degrees.cos(angle)).plus(quarter.times(Degrees.sin(angle)));
    }

    private static Vector zero(WallReference from, HoleDirection direction) {
        if (!from.existsIn(direction)) {
            throw new IllegalArgumentException(String.format(
                    Locale.ROOT,
                    "a hole of %s has no %s; use a toolface from %s",
                    direction,
                    from,
                    direction.isVertical() ? "north (Toolface.fromNorth)" : "the high side (Toolface.fromHighSide)"));
        }
        if (from.equals(WallReference.north())) {
            return new Vector(1, 0, 0).across(Legs.vector(direction)).unit();
        }
        // h = (cos I cos A, cos I sin A, -sin I)
        return Vector.ofInclination(direction.inclination() + 90, direction.azimuth());
    }

    /** The angle and what it is counted from: {@code 069.6 from high side}. */
    @Override
    public String toString() {
        return Degrees.azimuthText(angle) + " from " + from;
    }
}
