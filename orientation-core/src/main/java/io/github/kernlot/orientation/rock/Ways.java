package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;

/** Holes, planes, lines and ways as vectors. */
final class Ways {

    /** Sines and cosines below this are rounding. */
    static final double ROUNDING = 1e-12;

    private Ways() {}

    static Vector axis(HoleDirection hole) {
        return Vector.ofInclination(hole.inclination(), hole.azimuth());
    }

    /** The unit normal that points downwards. */
    static Vector normal(PlaneOrientation plane) {
        return Vector.ofInclination(plane.dip(), plane.dipDirection() + 180);
    }

    static Vector line(LineOrientation line) {
        return Vector.ofInclination(90 - line.plunge(), line.trend());
    }

    static Vector between(Displacement from, Displacement to) {
        return new Vector(to.north() - from.north(), to.east() - from.east(), to.down() - from.down());
    }

    /** The acute angle between a hole and a plane, degrees in [0, 90]. */
    static double alpha(HoleDirection hole, PlaneOrientation plane) {
        Vector normal = normal(plane);
        Vector axis = axis(hole);
        return Degrees.atan2(Math.abs(normal.dot(axis)), normal.cross(axis).length());
    }
}
