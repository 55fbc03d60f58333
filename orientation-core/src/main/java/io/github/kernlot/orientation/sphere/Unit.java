package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/** Unit vectors of the nouns, and back. */
final class Unit {

    private Unit() {}

    static Vector of(DirectedLine direction) {
        return new Vector(direction.north(), direction.east(), direction.down());
    }

    static Vector of(LineOrientation line) {
        return Vector.ofInclination(90 - line.plunge(), line.trend());
    }

    static Vector of(double[] northEastDown) {
        if (northEastDown.length != 3) {
            throw new IllegalArgumentException(
                    "a vector has " + northEastDown.length + " components; expected 3: north, east, down");
        }
        double largest = 0;
        for (double component : northEastDown) {
            largest = Math.max(largest, Math.abs(Require.finite("component", component, "")));
        }
        if (largest == 0) {
            throw new IllegalArgumentException("the null vector has no direction");
        }
        // scaled first, so that no length over- or underflows
        return new Vector(northEastDown[0] / largest, northEastDown[1] / largest, northEastDown[2] / largest).unit();
    }

    static DirectedLine direction(Vector vector) {
        return DirectedLine.ofVector(vector.north(), vector.east(), vector.down());
    }

    static LineOrientation line(Vector vector) {
        return LineOrientation.ofVector(vector.north(), vector.east(), vector.down());
    }

    /** A unit vector at right angles to another. */
    static Vector across(Vector axis) {
        return (Math.abs(axis.down()) > 0.8 ? new Vector(1, 0, 0) : Vector.DOWN)
                .across(axis)
                .unit();
    }

    /** The vector, or its opposite if that is nearer to another. */
    static Vector towards(Vector vector, Vector other) {
        return vector.dot(other) < 0 ? vector.negated() : vector;
    }
}
