package io.github.kernlot.survey.docs;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Vector;

/**
 * From where one looks, without perspective, and the library's values as vectors towards north, east and down.
 *
 * @param right what runs to the right on the sheet, a unit vector
 * @param up what runs upwards on the sheet, a unit vector
 */
record Sight(Vector right, Vector up) {

    /** Where the onlooker stands: an azimuth and how high above the horizontal, in degrees. */
    static Sight from(double azimuth, double elevation) {
        Vector look = Vector.ofInclination(90 - elevation, azimuth + 180);
        Vector right = Vector.ofAzimuth(azimuth + 270);
        return new Sight(right, right.cross(look));
    }

    /** From above, north up. */
    static Sight map() {
        return new Sight(Vector.ofAzimuth(90), Vector.ofAzimuth(0));
    }

    /** Looking down-hole along the core, its reference line down the sheet. */
    static Sight alongCore(CoreFrame frame) {
        return new Sight(wall(frame, 270), wall(frame, 180));
    }

    /** Perpendicular to a plane, from above, its strike by the right-hand rule to the right. */
    static Sight ontoPlane(PlaneOrientation plane) {
        return new Sight(
                Vector.ofAzimuth(plane.strike()),
                vector(LineOrientation.ofPlungeAndTrend(plane.dip(), plane.dipDirection()))
                        .negated());
    }

    Vector towardsOnlooker() {
        return right.cross(up);
    }

    static Vector vector(DirectedLine line) {
        return new Vector(line.north(), line.east(), line.down());
    }

    static Vector vector(HoleDirection direction) {
        return new Vector(direction.north(), direction.east(), direction.down());
    }

    /** The end that points downwards. */
    static Vector vector(LineOrientation line) {
        return vector(line.downward());
    }

    /** The wall direction that lies so far clockwise of the reference line. */
    static Vector wall(CoreFrame frame, double angle) {
        double[] cosines = frame.turned(angle).directionCosines();
        return new Vector(cosines[3], cosines[4], cosines[5]);
    }
}
