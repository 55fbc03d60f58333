package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The orientation of a line without an arrow in the ground, named by its end that points downwards.
 *
 * <p>A horizontal line has two trends, and the one in [0, 180) is computed; a vertical line has none and gives 0 where one is
 * computed.
 *
 * @param plunge angle below the horizontal, degrees in [0, 90]
 * @param trend azimuth of the end that points downwards, degrees in [0, 360)
 */
public record LineOrientation(double plunge, double trend) {

    /**
     * Checks both angles.
     *
     * @throws IllegalArgumentException if the plunge lies outside [0, 90] or the trend outside [0, 360]; a trend of 360
     *     becomes 0
     */
    public LineOrientation {
        plunge = Require.inRange("plunge", plunge, 0, 90, "degrees");
        trend = Require.azimuth("trend", trend);
    }

    /**
     * A line from plunge and trend.
     *
     * @param plunge degrees in [0, 90]
     * @param trend clockwise from north, degrees in [0, 360]
     * @return the line
     * @throws IllegalArgumentException if an angle lies outside its range
     */
    public static LineOrientation ofPlungeAndTrend(double plunge, double trend) {
        return new LineOrientation(plunge, trend);
    }

    /**
     * The line along a vector, of any length and of either sign.
     *
     * @param north component towards north
     * @param east component towards east
     * @param down component downwards
     * @return the line
     * @throws IllegalArgumentException if a component is not finite or all are zero
     */
    public static LineOrientation ofVector(double north, double east, double down) {
        return ofVector(Directions.checked(north, east, down));
    }

    static LineOrientation ofVector(Vector vector) {
        double along = Math.abs(vector.down());
        double across = vector.horizontal();
        double down = vector.down() < 0 ? -1 : 1;
        return new LineOrientation(
                Polar.fromPlane(along, across),
                Polar.round(down * vector.east(), down * vector.north(), along, across));
    }

    /**
     * The same line with azimuths counted from another north.
     *
     * @param angle what is added to the trend, degrees, any finite number
     * @return the line with the trend wrapped into [0, 360)
     * @throws IllegalArgumentException if the angle is not finite
     */
    public LineOrientation withAzimuthTurned(double angle) {
        return new LineOrientation(plunge, Degrees.wrap360(trend + Require.finite("angle", angle, "degrees")));
    }

    /**
     * The acute angle between two lines.
     *
     * @param other the other line
     * @return degrees in [0, 90]
     */
    public double angleTo(LineOrientation other) {
        Vector mine = vector();
        Vector theirs = other.vector();
        return Degrees.atan2(mine.cross(theirs).length(), Math.abs(mine.dot(theirs)));
    }

    /**
     * The acute angle between this line and a plane.
     *
     * @param plane the plane
     * @return degrees in [0, 90]; 0 for a line in the plane
     */
    public double angleTo(PlaneOrientation plane) {
        return plane.angleTo(this);
    }

    /**
     * The plunge that this line shows when it is projected square onto a vertical section: {@code tan(apparent) = tan(plunge) / cos(c)}
     * with c the angle between its trend and the section.
     *
     * @param sectionTrend azimuth of the section, degrees in [0, 360]
     * @return degrees in [-90, 90], negative where the line falls against the section's trend; 90 for a vertical line and for any that
     *     falls square to it
     * @throws IllegalArgumentException if the trend lies outside its range, or the line is horizontal and square to the section, where
     *     it shows as a point
     */
    public double apparentPlunge(double sectionTrend) {
        double aside = Degrees.cos(trend - Require.azimuth("section trend", sectionTrend));
        if (plunge == 0 && Math.abs(aside) < Polar.ROUNDING) {
            throw new IllegalArgumentException(this + " is square to a section along "
                    + Degrees.azimuthText(sectionTrend) + " and shows as a point");
        }
        if (plunge == 90) {
            return 90;
        }
        double apparent = Degrees.atan2(Degrees.sin(plunge), Degrees.cos(plunge) * Math.abs(aside));
        return (aside < 0 ? -apparent : apparent) + 0.0;
    }

    /**
     * This line with an arrow on the end that points downwards.
     *
     * @return the line; {@link DirectedLine#reversed()} puts the arrow on the other end
     */
    public DirectedLine downward() {
        return new DirectedLine(plunge, trend);
    }

    /** The unit vector of the end that points downwards. */
    Vector vector() {
        return Directions.ofPlunge(plunge, trend);
    }

    /** As a geologist writes it: {@code 30.2/049.9 (plunge/trend)}. */
    @Override
    public String toString() {
        return Degrees.text(plunge) + "/" + Degrees.azimuthText(trend) + " (plunge/trend)";
    }
}
