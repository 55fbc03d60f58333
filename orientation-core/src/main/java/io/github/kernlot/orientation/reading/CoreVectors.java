package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreLine;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.DirectedCoreLine;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Polar;
import io.github.kernlot.orientation.internal.Vector;

/** Planes and lines on core as vectors with the components axis down-hole, reference line, and 90 degrees clockwise of it. */
final class CoreVectors {

    private CoreVectors() {}

    /** u(angle): the wall direction so far clockwise of the reference line. */
    static Vector wall(double angle) {
        return new Vector(0, Degrees.cos(angle), Degrees.sin(angle));
    }

    /** n = sin(alpha) t - cos(alpha) u(beta): the unit normal on the down-hole side. */
    static Vector normal(CorePlane plane) {
        return new Vector(Degrees.sin(plane.alpha()), 0, 0)
                .plus(wall(plane.beta()).times(-Degrees.cos(plane.alpha())));
    }

    /** m = cos(alpha) t + sin(alpha) u(beta): the long axis, which is where the normal moves as alpha grows. */
    static Vector withAlpha(CorePlane plane) {
        return new Vector(Degrees.cos(plane.alpha()), 0, 0)
                .plus(wall(plane.beta()).times(Degrees.sin(plane.alpha())));
    }

    /** -u(beta + 90): where the normal moves as beta grows. */
    static Vector withBeta(CorePlane plane) {
        return wall(plane.beta() + 270);
    }

    static CorePlane plane(Vector normal) {
        double along = Math.abs(normal.north());
        double across = Math.hypot(normal.east(), normal.down());
        double upHole = normal.north() < 0 ? 1 : -1;
        return CorePlane.of(
                Polar.fromPlane(along, across),
                Polar.round(upHole * normal.down(), upHole * normal.east(), along, across));
    }

    /** v = cos(axis angle) t + sin(axis angle) u(delta): the unit vector of the down-hole end. */
    static Vector vector(CoreLine line) {
        return new Vector(Degrees.cos(line.axisAngle()), 0, 0)
                .plus(wall(line.delta()).times(Degrees.sin(line.axisAngle())));
    }

    /** Where that vector moves as the axis angle grows. */
    static Vector withAxisAngle(CoreLine line) {
        return new Vector(-Degrees.sin(line.axisAngle()), 0, 0)
                .plus(wall(line.delta()).times(Degrees.cos(line.axisAngle())));
    }

    /** Where that vector moves as delta grows. */
    static Vector withDelta(CoreLine line) {
        return wall(line.delta() + 90);
    }

    static DirectedCoreLine arrow(Vector vector) {
        double across = Math.hypot(vector.east(), vector.down());
        double acute = Polar.fromAxis(Math.abs(vector.north()), across);
        return DirectedCoreLine.ofAxisAngleAndDelta(
                vector.north() < 0 ? 180 - acute : acute,
                across < Polar.ROUNDING ? 0 : Degrees.azimuth(vector.down(), vector.east()));
    }

    static CoreLine line(Vector vector) {
        double along = Math.abs(vector.north());
        double across = Math.hypot(vector.east(), vector.down());
        double downHole = vector.north() < 0 ? -1 : 1;
        return CoreLine.ofAxisAngleAndDelta(
                Polar.fromAxis(along, across),
                Polar.round(downHole * vector.down(), downHole * vector.east(), along, across));
    }
}
