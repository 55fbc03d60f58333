package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The orientation of a line with an arrow in the ground: the side to which a bed faces, the way a block moved, the axis of a
 * turn. {@link LineOrientation} is the same without the arrow.
 *
 * <p>A vertical arrow has no trend and gives 0 where one is computed.
 *
 * @param plunge angle of the arrow below the horizontal, degrees in [-90, 90]; negative where the arrow points upwards
 * @param trend azimuth in which the arrow points, degrees in [0, 360)
 */
public record DirectedLine(double plunge, double trend) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the plunge lies outside [-90, 90] or the trend outside [0, 360]; a trend of 360
     *     becomes 0
     */
    public DirectedLine {
        plunge = Require.inRange("plunge", plunge, -90, 90, "degrees");
        trend = Require.azimuth("trend", trend);
    }

    /**
     * An arrow from plunge and trend.
     *
     * @param plunge degrees in [-90, 90], negative upwards
     * @param trend clockwise from north, degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static DirectedLine ofPlungeAndTrend(double plunge, double trend) {
        return new DirectedLine(plunge, trend);
    }

    /**
     * The arrow along a vector of any length.
     *
     * @param north component towards north
     * @param east component towards east
     * @param down component downwards
     * @return the line
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static DirectedLine ofVector(double north, double east, double down) {
        return ofVector(Directions.checked(north, east, down));
    }

    /**
     * The arrow along a hole, down-hole.
     *
     * @param direction the direction of the hole
     * @return the line; of a vertical hole with its azimuth for a trend
     */
    public static DirectedLine from(HoleDirection direction) {
        return new DirectedLine(direction.plunge(), direction.azimuth());
    }

    static DirectedLine ofVector(Vector vector) {
        double across = vector.horizontal();
        double plunge = Polar.fromPlane(Math.abs(vector.down()), across);
        double trend = across < Polar.ROUNDING ? 0 : Degrees.azimuth(vector.east(), vector.north());
        return new DirectedLine(vector.down() < 0 ? -plunge : plunge, trend);
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
        return Degrees.sin(plunge);
    }

    /**
     * The same line without its arrow.
     *
     * @return the line, named by its end that points downwards; a horizontal one with its trend in [0, 180)
     */
    public LineOrientation withoutArrow() {
        double along = plunge < 0 ? Degrees.wrap360(trend + 180) : trend;
        return new LineOrientation(Math.abs(plunge), plunge == 0 ? along % 180 : along);
    }

    /**
     * The same line with its arrow on the other end.
     *
     * @return the line
     */
    public DirectedLine reversed() {
        return new DirectedLine(-plunge, Degrees.wrap360(trend + 180));
    }

    /**
     * The plane at right angles to the line: the bed that faces in this direction, say.
     *
     * @return the plane
     */
    public PlaneOrientation perpendicularPlane() {
        return PlaneOrientation.ofPole(withoutArrow());
    }

    /**
     * The same line with azimuths counted from another north.
     *
     * @param angle what is added to the trend, degrees, any finite number
     * @return the line with the trend wrapped into [0, 360)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public DirectedLine withAzimuthTurned(double angle) {
        return new DirectedLine(plunge, Degrees.wrap360(trend + Require.finite("angle", angle, "degrees")));
    }

    /**
     * The angle to another arrow.
     *
     * @param other the other line
     * @return degrees in [0, 180]
     */
    public double angleTo(DirectedLine other) {
        Vector mine = vector();
        Vector theirs = other.vector();
        return Degrees.atan2(mine.cross(theirs).length(), mine.dot(theirs));
    }

    Vector vector() {
        return Directions.ofPlunge(plunge, trend);
    }

    /** As a geologist writes it, and that there is an arrow: {@code arrow -30.5/252.3 (plunge/trend)}. */
    @Override
    public String toString() {
        return "arrow " + Degrees.text(plunge) + "/" + Degrees.azimuthText(trend) + " (plunge/trend)";
    }
}
