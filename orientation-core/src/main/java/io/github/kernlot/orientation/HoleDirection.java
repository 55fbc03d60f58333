package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The direction of a hole, pointing down-hole.
 *
 * <p>A vertical hole keeps the azimuth that it was given, which then says nothing about its direction.
 *
 * @param inclination angle from vertically down, degrees in [0, 180]: 0 down, 90 horizontal, 180 up
 * @param azimuth clockwise from the north in use, degrees in [0, 360)
 */
public record HoleDirection(double inclination, double azimuth) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the inclination lies outside [0, 180] or the azimuth outside [0, 360]; an azimuth
     *     of 360 becomes 0
     */
    public HoleDirection {
        inclination = Require.inRange("inclination", inclination, 0, 180, "degrees");
        azimuth = Require.azimuth("azimuth", azimuth);
    }

    /**
     * A direction from its inclination.
     *
     * @param inclination angle from vertically down, degrees in [0, 180]
     * @param azimuth clockwise from north, degrees in [0, 360]
     * @return the direction
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static HoleDirection ofInclination(double inclination, double azimuth) {
        return new HoleDirection(inclination, azimuth);
    }

    /**
     * A direction from the dip of the hole, negative down.
     *
     * @param dip angle from the horizontal, degrees in [-90, 90]: -90 vertically down, 90 vertically up
     * @param azimuth clockwise from north, degrees in [0, 360]
     * @return the direction
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static HoleDirection ofDip(double dip, double azimuth) {
        return new HoleDirection(90 + Require.inRange("dip", dip, -90, 90, "degrees"), azimuth);
    }

    /**
     * A direction from the plunge of the hole, positive down.
     *
     * @param plunge angle from the horizontal, degrees in [-90, 90]: 90 vertically down, -90 vertically up
     * @param azimuth clockwise from north, degrees in [0, 360]
     * @return the direction
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static HoleDirection ofPlunge(double plunge, double azimuth) {
        return new HoleDirection(90 - Require.inRange("plunge", plunge, -90, 90, "degrees"), azimuth);
    }

    /**
     * The direction of a vector of any length.
     *
     * @param north component towards north
     * @param east component towards east
     * @param down component downwards
     * @return the direction; a vertical vector has azimuth 0
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static HoleDirection ofVector(double north, double east, double down) {
        Vector vector = Directions.checked(north, east, down);
        return new HoleDirection(
                Degrees.atan2(vector.horizontal(), vector.down()), Degrees.azimuth(vector.east(), vector.north()));
    }

    /**
     * The dip of the hole, negative down.
     *
     * @return degrees in [-90, 90]
     */
    public double dip() {
        return inclination - 90;
    }

    /**
     * The plunge of the hole, positive down.
     *
     * @return degrees in [-90, 90]
     */
    public double plunge() {
        return 90 - inclination;
    }

    /**
     * The component of the unit vector towards north.
     *
     * @return a number in [-1, 1]
     */
    public double north() {
        return vector().north();
    }

    /**
     * The component of the unit vector towards east.
     *
     * @return a number in [-1, 1]
     */
    public double east() {
        return vector().east();
    }

    /**
     * The component of the unit vector downwards.
     *
     * @return a number in [-1, 1]
     */
    public double down() {
        return vector().down();
    }

    /**
     * Whether the hole is exactly vertical, down or up, so that it has no low side and its azimuth says nothing.
     *
     * @return true at inclination 0 and 180
     */
    public boolean isVertical() {
        return inclination == 0 || inclination == 180;
    }

    /**
     * The same direction with every azimuth counted from another north.
     *
     * @param angle what is added to the azimuth, degrees, any finite number
     * @return the direction with the azimuth wrapped into [0, 360)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public HoleDirection withAzimuthTurned(double angle) {
        return new HoleDirection(inclination, Degrees.wrap360(azimuth + Require.finite("angle", angle, "degrees")));
    }

    /**
     * The angle to another direction.
     *
     * @param other the other direction
     * @return degrees in [0, 180]
     */
    public double angleTo(HoleDirection other) {
        return Math.toDegrees(vector().angleTo(other.vector()));
    }

    Vector vector() {
        return Vector.ofInclination(inclination, azimuth);
    }

    /** As a driller writes it: {@code -60.0/090.0 (dip/azimuth)}. */
    @Override
    public String toString() {
        return Degrees.text(dip()) + "/" + Degrees.azimuthText(azimuth) + " (dip/azimuth)";
    }
}
