package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;

/**
 * What one unit of an error does to a station: to its depth, and to the unit vector along the hole. The vector and not the two
 * angles, so that nothing becomes infinite where a hole is vertical; {@link SurveyedPoint} makes shifts of angles into it.
 *
 * @param depth metres along the hole
 * @param north towards north, radians for small angles; what lies along the hole is of no effect
 * @param east towards east
 * @param down downwards
 */
public record UnitShift(double depth, double north, double east, double down) {

    /** No effect. */
    public static final UnitShift NONE = new UnitShift(0, 0, 0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public UnitShift {
        depth = Require.finite("shift of the depth", depth, "m per unit");
        north = Require.finite("shift of the direction towards north", north, "per unit");
        east = Require.finite("shift of the direction towards east", east, "per unit");
        down = Require.finite("shift of the direction downwards", down, "per unit");
    }

    /**
     * A shift of the depth alone.
     *
     * @param metres along the hole
     * @return the shift
     * @throws IllegalArgumentException if the number is not finite
     */
    public static UnitShift ofDepth(double metres) {
        return new UnitShift(metres, 0, 0, 0);
    }

    /**
     * Both shifts together.
     *
     * @param other another shift of the same station
     * @return the sum
     */
    public UnitShift plus(UnitShift other) {
        return new UnitShift(depth + other.depth, north + other.north, east + other.east, down + other.down);
    }

    /**
     * The shift by so many units.
     *
     * @param factor any finite number
     * @return the shift
     * @throws IllegalArgumentException if the result is not finite
     */
    public UnitShift times(double factor) {
        return new UnitShift(depth * factor, north * factor, east * factor, down * factor);
    }
}
