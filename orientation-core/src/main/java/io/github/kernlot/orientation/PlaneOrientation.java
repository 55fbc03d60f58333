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
     * The plane at right angles to a line.
     *
     * @param pole the line
     * @return the plane
     */
    public static PlaneOrientation ofPole(LineOrientation pole) {
        return ofNormal(pole.vector());
    }

    /**
     * The plane that holds two lines: two apparent dips, the strike and one apparent dip, two traces on an exposure.
     *
     * @param one a line in the plane
     * @param other another
     * @return the plane
     * @throws IllegalArgumentException if the two are one line
     */
    public static PlaneOrientation ofLines(LineOrientation one, LineOrientation other) {
        Vector first = one.vector();
        Vector second = other.vector();
        if (Directions.isAlong(first, second)) {
            throw new IllegalArgumentException(one + " and " + other + " are one line, which lies in many planes");
        }
        return ofNormal(first.cross(second).unit());
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

    /**
     * The acute angle between this plane and a line: alpha, where the line is the axis of the core.
     *
     * @param line the line
     * @return degrees in [0, 90]; 0 for a line in the plane
     */
    public double angleTo(LineOrientation line) {
        Vector normal = normal();
        Vector vector = line.vector();
        return Degrees.atan2(Math.abs(normal.dot(vector)), normal.cross(vector).length());
    }

    /**
     * The line in which two planes meet: of the limbs of a fold its axis, of two joints the edge of a wedge.
     *
     * @param other the other plane
     * @return the line
     * @throws IllegalArgumentException if the planes are parallel
     */
    public LineOrientation intersection(PlaneOrientation other) {
        Vector mine = normal();
        Vector theirs = other.normal();
        if (Directions.isAlong(mine, theirs)) {
            throw new IllegalArgumentException(this + " and " + other + " are parallel and do not meet in a line");
        }
        return LineOrientation.ofVector(mine.cross(theirs).unit());
    }

    /**
     * The dip that this plane shows on a vertical section: {@code tan(apparent) = tan(dip) cos(dip direction - section)}.
     *
     * @param sectionTrend azimuth of the section, degrees in [0, 360]
     * @return degrees in [-90, 90], negative where the trace falls against the section's trend; 90 for any trace of a vertical plane
     * @throws IllegalArgumentException if the trend lies outside its range, or the plane is the section itself
     */
    public double apparentDip(double sectionTrend) {
        double along = Degrees.cos(dipDirection - Require.azimuth("section trend", sectionTrend));
        if (isVertical() && Math.abs(along) < Polar.ROUNDING) {
            throw new IllegalArgumentException(
                    this + " is the section along " + Degrees.azimuthText(sectionTrend) + " itself and shows no trace");
        }
        return isVertical() ? 90 : Degrees.atan2(Degrees.sin(dip) * along, Degrees.cos(dip));
    }

    /**
     * The rake of a line: its angle in this plane from the strike of the right-hand rule, counted downwards.
     *
     * @param line a line; one beside the plane is taken to the nearest line in it
     * @return degrees in [0, 180)
     * @throws IllegalArgumentException if the line stands at right angles to the plane
     */
    public double rake(LineOrientation line) {
        double signed = signedRake(line.vector());
        double rake = signed < 0 ? signed + 180 : signed;
        return rake < 180 ? rake : 0;
    }

    /**
     * The rake of a line from an end of the strike, counted downwards.
     *
     * @param strikeEnd azimuth that names the end, degrees in [0, 360]; it may lie up to 45 degrees beside the strike
     * @param line a line; one beside the plane is taken to the nearest line in it
     * @return degrees in [0, 180)
     * @throws IllegalArgumentException if the azimuth is no end of the strike, or the line stands at right angles to the plane
     */
    public double rakeFrom(double strikeEnd, LineOrientation line) {
        double rake = rake(line);
        double fromEnd = isRightHandEnd(strikeEnd) ? rake : 180 - rake;
        return fromEnd < 180 ? fromEnd : 0;
    }

    /**
     * The line in this plane with a rake.
     *
     * @param rake in the plane from the strike of the right-hand rule, counted downwards, degrees in [0, 180]
     * @return the line
     * @throws IllegalArgumentException if the rake lies outside its range
     */
    public LineOrientation lineAtRake(double rake) {
        return LineOrientation.ofVector(vectorAtRake(Require.inRange("rake", rake, 0, 180, "degrees")));
    }

    /**
     * The line in this plane with a rake from an end of the strike.
     *
     * @param strikeEnd azimuth that names the end, degrees in [0, 360]; it may lie up to 45 degrees beside the strike
     * @param rake in the plane from that end, counted downwards, degrees in [0, 180]
     * @return the line
     * @throws IllegalArgumentException if the azimuth is no end of the strike, or the rake lies outside its range
     */
    public LineOrientation lineAtRakeFrom(double strikeEnd, double rake) {
        double checked = Require.inRange("rake", rake, 0, 180, "degrees");
        return lineAtRake(isRightHandEnd(strikeEnd) ? checked : 180 - checked);
    }

    private boolean isRightHandEnd(double strikeEnd) {
        double aside = Degrees.wrap180(Require.azimuth("end of the strike", strikeEnd) - strike());
        if (Math.abs(aside) > 45 && Math.abs(aside) < 135) {
            throw new IllegalArgumentException("azimuth " + Degrees.azimuthText(strikeEnd) + " is no end of the strike "
                    + Degrees.azimuthText(strike()) + "; expected one within 45 degrees of it");
        }
        return Math.abs(aside) <= 45;
    }

    /** The angle in this plane from the strike towards the fall, in (-180, 180]. */
    double signedRake(Vector vector) {
        if (Directions.isAlong(vector, normal())) {
            throw new IllegalArgumentException("a line at right angles to " + this + " has no rake");
        }
        return Degrees.wrap180(Degrees.atan2(vector.dot(fall()), vector.dot(Vector.ofAzimuth(strike()))));
    }

    Vector vectorAtRake(double rake) {
        return Vector.ofAzimuth(strike()).times(Degrees.cos(rake)).plus(fall().times(Degrees.sin(rake)));
    }

    /** The unit vector down the dip. */
    private Vector fall() {
        return Directions.ofPlunge(dip, dipDirection);
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
