package io.github.kernlot.orientation;

import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/**
 * The same geometry by another route: core in a vertical hole is turned into place by rotations of a general-purpose library
 * (Hipparchus 4.0.3), with trigonometry of radians. Vectors point north, east and down.
 */
final class Rotations {

    private Rotations() {}

    /** Takes core that stands in a vertical hole, its low side to the south, into the hole. */
    static Rotation intoHole(double inclination, double azimuth) {
        return about(Vector3D.PLUS_K, azimuth).applyTo(about(Vector3D.PLUS_J, inclination));
    }

    static Rotation about(Vector3D axis, double degrees) {
        return new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
    }

    /** A direction in core that stands: so far from the axis, at so much clockwise from the south looking down. */
    static Vector3D standing(double axisAngle, double clockwise) {
        double across = Math.sin(Math.toRadians(axisAngle));
        return new Vector3D(
                -across * Math.cos(Math.toRadians(clockwise)),
                -across * Math.sin(Math.toRadians(clockwise)),
                Math.cos(Math.toRadians(axisAngle)));
    }

    /** The normal on the down-hole side of a plane on core whose line lies so far from the south. */
    static Vector3D normal(CorePlane plane, double lineAngle) {
        return standing(90 - plane.alpha(), plane.beta() + lineAngle + 180);
    }

    static Vector3D direction(CoreLine line, double lineAngle) {
        return standing(line.axisAngle(), line.delta() + lineAngle);
    }

    static Vector3D normal(PlaneOrientation plane) {
        return below(90 - plane.dip(), plane.dipDirection() + 180);
    }

    static Vector3D direction(LineOrientation line) {
        return below(line.plunge(), line.trend());
    }

    static Vector3D direction(HoleDirection hole) {
        return below(90 - hole.inclination(), hole.azimuth());
    }

    private static Vector3D below(double plunge, double trend) {
        // sine of the complement, since a plunge is near 90 as often as not
        double across = Math.sin(Math.toRadians(90 - plunge));
        return new Vector3D(
                across * Math.cos(Math.toRadians(trend)),
                across * Math.sin(Math.toRadians(trend)),
                Math.cos(Math.toRadians(90 - plunge)));
    }

    /** The acute angle between two directions without an arrow, degrees. */
    static double apart(Vector3D one, Vector3D other) {
        double angle = Math.toDegrees(Vector3D.angle(one, other));
        return Math.min(angle, 180 - angle);
    }

    static double apart(CorePlane one, CorePlane other) {
        return apart(normal(one, 0), normal(other, 0));
    }

    static double apart(CoreLine one, CoreLine other) {
        return apart(direction(one, 0), direction(other, 0));
    }

    static double apart(PlaneOrientation one, PlaneOrientation other) {
        return apart(normal(one), normal(other));
    }

    static double apart(LineOrientation one, LineOrientation other) {
        return apart(direction(one), direction(other));
    }
}
