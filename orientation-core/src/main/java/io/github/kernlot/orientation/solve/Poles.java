package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/** Holes and planes as unit vectors, and the two ways in which a pole can move. */
final class Poles {

    private Poles() {}

    static Vector axis(HoleDirection hole) {
        return Vector.ofInclination(hole.inclination(), hole.azimuth());
    }

    /** The unit normal that points downwards. */
    static Vector normal(PlaneOrientation plane) {
        return Vector.ofInclination(plane.dip(), plane.dipDirection() + 180);
    }

    static PlaneOrientation plane(Vector normal) {
        return PlaneOrientation.ofNormal(normal.north(), normal.east(), normal.down());
    }

    /** Where the downward normal moves as the dip grows: a unit vector. */
    static Vector withDip(PlaneOrientation plane) {
        return Vector.ofInclination(plane.dip() + 90, plane.dipDirection() + 180);
    }

    /** Where the downward normal moves as the dip direction grows: a horizontal unit vector. */
    static Vector withDipDirection(PlaneOrientation plane) {
        return Vector.ofAzimuth(plane.dipDirection() + 270);
    }

    /** The acute angle between a plane with that unit normal and an axis, degrees in [0, 90]. */
    static double alpha(Vector normal, Vector axis) {
        return Degrees.atan2(Math.abs(normal.dot(axis)), normal.cross(axis).length());
    }
}
