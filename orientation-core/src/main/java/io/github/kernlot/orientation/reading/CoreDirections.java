package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.DirectedCoreLine;
import io.github.kernlot.orientation.internal.CoreVectors;
import io.github.kernlot.orientation.internal.Vector;

/** Planes and lines on core as vectors, and where these move as their angles grow. */
final class CoreDirections {

    private CoreDirections() {}

    /** The unit normal on the down-hole side. */
    static Vector normal(CorePlane plane) {
        return CoreVectors.normal(plane.alpha(), plane.beta());
    }

    /** The long axis, which is where the normal moves as alpha grows. */
    static Vector withAlpha(CorePlane plane) {
        return CoreVectors.line(plane.alpha(), plane.beta());
    }

    /** -u(beta + 90): where the normal moves as beta grows, as a unit vector. */
    static Vector withBeta(CorePlane plane) {
        return CoreVectors.wall(plane.beta() + 270);
    }

    static CorePlane plane(Vector normal) {
        return CorePlane.ofNormal(normal.north(), normal.east(), normal.down());
    }

    /** The unit vector of the down-hole end. */
    static Vector vector(CoreLine line) {
        return CoreVectors.line(line.axisAngle(), line.delta());
    }

    /** Where that vector moves as the axis angle grows. */
    static Vector withAxisAngle(CoreLine line) {
        return CoreVectors.line(line.axisAngle() + 90, line.delta());
    }

    /** Where that vector moves as delta grows, as a unit vector. */
    static Vector withDelta(CoreLine line) {
        return CoreVectors.wall(line.delta() + 90);
    }

    static CoreLine line(Vector vector) {
        return CoreLine.ofVector(vector.north(), vector.east(), vector.down());
    }

    static DirectedCoreLine arrow(Vector vector) {
        return DirectedCoreLine.ofVector(vector.north(), vector.east(), vector.down());
    }
}
