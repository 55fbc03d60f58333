package io.github.kernlot.orientation.internal;

/** Planes and lines on core as unit vectors with the components axis down-hole, reference line, and 90 degrees clockwise of it. */
public final class CoreVectors {

    private CoreVectors() {}

    /** u(angle): the wall direction so far clockwise of the reference line, degrees. */
    public static Vector wall(double angle) {
        return new Vector(0, Degrees.cos(angle), Degrees.sin(angle));
    }

    /** n = sin(alpha) t - cos(alpha) u(beta): the normal on the down-hole side. */
    public static Vector normal(double alpha, double beta) {
        double across = -Degrees.cos(alpha);
        return new Vector(Degrees.sin(alpha), across * Degrees.cos(beta), across * Degrees.sin(beta));
    }

    /** v = cos(axis angle) t + sin(axis angle) u(delta); with alpha and beta of a plane it is the long axis of its ellipse. */
    public static Vector line(double axisAngle, double delta) {
        double across = Degrees.sin(axisAngle);
        return new Vector(Degrees.cos(axisAngle), across * Degrees.cos(delta), across * Degrees.sin(delta));
    }

    /** The length of the part across the axis. */
    public static double across(Vector vector) {
        return Math.sqrt(vector.east() * vector.east() + vector.down() * vector.down());
    }
}
