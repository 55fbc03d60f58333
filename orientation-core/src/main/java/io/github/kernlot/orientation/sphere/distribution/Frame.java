package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Vector;

/** Three perpendicular unit vectors. */
record Frame(Vector first, Vector second, Vector third) {

    static Vector vector(DirectedLine direction) {
        return new Vector(direction.north(), direction.east(), direction.down());
    }

    static Vector vector(LineOrientation line) {
        return Vector.ofInclination(90 - line.plunge(), line.trend());
    }

    /** A frame about an axis, turned about it in whatever way. */
    static Frame about(Vector axis) {
        boolean steep = Math.abs(axis.down()) > 0.8;
        return of(axis, steep ? new Vector(1, 0, 0) : Vector.DOWN);
    }

    /** The first axis as it is, the second as near to what is given as a right angle allows. */
    static Frame of(Vector first, Vector second) {
        Vector across = second.across(first).unit();
        return new Frame(first, across, first.cross(across));
    }

    Vector at(double along, double across, double beyond) {
        return first.times(along).plus(second.times(across)).plus(third.times(beyond));
    }

    static DirectedLine direction(Vector vector) {
        return DirectedLine.ofVector(vector.north(), vector.east(), vector.down());
    }

    static LineOrientation line(Vector vector) {
        return LineOrientation.ofVector(vector.north(), vector.east(), vector.down());
    }

    /** Refuses axes that are not at right angles. */
    static void requirePerpendicular(String names, Vector one, Vector other) {
        if (!(Math.abs(one.dot(other)) <= 1e-9)) {
            throw new IllegalArgumentException(
                    names + " make an angle of " + Math.toDegrees(one.angleTo(other)) + " degrees; expected 90");
        }
    }
}
