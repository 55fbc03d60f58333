package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The orientation of a plane in the ground.
 *
 * <p>A horizontal plane has no dip direction and gives 0 where one is computed; a vertical plane has two, and the one in
 * [0, 180) is computed. Planes are compared by {@link #angleTo}, which knows both.
 *
 * @param dip angle from the horizontal, degrees in [0, 90]
 * @param dipDirection azimuth in which the plane falls, where the upward normal leans, degrees in [0, 360)
 */
public record PlaneOrientation(double dip, double dipDirection) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the dip lies outside [0, 90] or the dip direction outside [0, 360]; a dip direction
     *     of 360 becomes 0
     */
    public PlaneOrientation {
        dip = Require.inRange("dip", dip, 0, 90, "degrees");
        dipDirection = Require.azimuth("dip direction", dipDirection);
    }

    /**
     * A plane from dip and dip direction.
     *
     * @param dip degrees in [0, 90]
     * @param dipDirection clockwise from north, degrees in [0, 360]
     * @return the plane
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static PlaneOrientation ofDipAndDirection(double dip, double dipDirection) {
        return new PlaneOrientation(dip, dipDirection);
    }

    /**
     * A plane from strike and dip by the right-hand rule: the plane falls to the right of the strike.
     *
     * @param strike clockwise from north, degrees in [0, 360]
     * @param dip degrees in [0, 90]
     * @return the plane
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static PlaneOrientation ofStrikeRightHand(double strike, double dip) {
        return new PlaneOrientation(dip, Degrees.wrap360(Require.azimuth("strike", strike) + 90));
    }

    /**
     * A plane from strike and dip by the left-hand rule: the plane falls to the left of the strike.
     *
     * @param strike clockwise from north, degrees in [0, 360]
     * @param dip degrees in [0, 90]
     * @return the plane
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static PlaneOrientation ofStrikeLeftHand(double strike, double dip) {
        return new PlaneOrientation(dip, Degrees.wrap360(Require.azimuth("strike", strike) - 90));
    }

    /**
     * The plane whose normal is a vector, of any length and of either sign.
     *
     * @param north component towards north
     * @param east component towards east
     * @param down component downwards
     * @return the plane
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static PlaneOrientation ofNormal(double north, double east, double down) {
        return ofNormal(Directions.checked(north, east, down));
    }

    static PlaneOrientation ofNormal(Vector normal) {
        double along = Math.abs(normal.down());
        double across = normal.horizontal();
        double up = normal.down() < 0 ? 1 : -1;
        return new PlaneOrientation(
                Polar.fromAxis(along, across), Polar.round(up * normal.east(), up * normal.north(), along, across));
    }

    /**
     * The strike by the right-hand rule.
     *
     * @return degrees in [0, 360)
     */
    public double strike() {
        return Degrees.wrap360(dipDirection - 90);
    }

    /**
     * The pole, which is the normal that points downwards.
     *
     * @return the line perpendicular to the plane; of a horizontal plane with trend 0, of a vertical one with the trend in
     *     [0, 180)
     */
    public LineOrientation pole() {
        return new LineOrientation(90 - dip, Polar.poleTrend(dip, dipDirection));
    }

    /**
     * Whether the plane is horizontal, so that its dip direction says nothing.
     *
     * @return true at dip 0
     */
    public boolean isHorizontal() {
        return dip == 0;
    }

    /**
     * Whether the plane is vertical, so that the opposite dip direction names it as well.
     *
     * @return true at dip 90
     */
    public boolean isVertical() {
        return dip == 90;
    }

    /**
     * The same plane with azimuths counted from another north.
     *
     * @param angle what is added to the dip direction, degrees, any finite number
     * @return the plane with the dip direction wrapped into [0, 360)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public PlaneOrientation withAzimuthTurned(double angle) {
        return new PlaneOrientation(dip, Degrees.wrap360(dipDirection + Require.finite("angle", angle, "degrees")));
    }

    /**
     * The acute angle between two planes, which is that between their poles.
     *
     * @param other the other plane
     * @return degrees in [0, 90]
     */
    public double angleTo(PlaneOrientation other) {
        return pole().angleTo(other.pole());
    }

    /** The unit normal that points downwards. */
    Vector normal() {
        double across = -Degrees.sin(dip);
        return new Vector(across * Degrees.cos(dipDirection), across * Degrees.sin(dipDirection), Degrees.cos(dip));
    }

    /** As a geologist writes it: {@code 62.4/118.9 (dip/dip direction)}. */
    @Override
    public String toString() {
        return Degrees.text(dip) + "/" + Degrees.azimuthText(dipDirection) + " (dip/dip direction)";
    }
}
