package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Points on the traces of planes, exact and drawn, and how far planes lie apart: by the definitions alone, in radians and by Math. */
final class Traces {

    private Traces() {}

    /** z0 + D / 2 cot(alpha) cos(x - beta), metres, for alpha above 0. */
    static double depth(CorePlane plane, CoreDiameter core, double axisDepth, double angle) {
        double cot = plane.alpha() == 90 ? 0 : 1 / Math.tan(Math.toRadians(plane.alpha()));
        return axisDepth + core.millimetres() / 2000 * cot * Math.cos(Math.toRadians(angle - plane.beta()));
    }

    /** At even steps from an angle over an arc. */
    static List<WallPoint> round(
            CorePlane plane, CoreDiameter core, double axisDepth, double from, double arc, int count) {
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = wrapped(from + arc * i / count);
            points.add(WallPoint.of(angle, depth(plane, core, axisDepth, angle)));
        }
        return points;
    }

    /** On both sides of the trace at even depths of a piece of core, for a trace too long for it; at alpha 0 through the axis. */
    static List<WallPoint> piece(
            CorePlane plane, CoreDiameter core, double axisDepth, double from, double to, int count) {
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double depth = from + (to - from) * i / (count - 1);
            double cosine = (depth - axisDepth) * Math.tan(Math.toRadians(plane.alpha())) / (core.millimetres() / 2000);
            double away = Math.toDegrees(Math.acos(cosine));
            points.add(WallPoint.of(wrapped(plane.beta() + (i % 2 == 0 ? away : -away)), depth));
        }
        return points;
    }

    /** Each with Gaussian errors. */
    static List<WallPoint> disturbed(List<WallPoint> points, WallSigmas sigmas, Random random) {
        return points.stream()
                .map(point -> WallPoint.of(
                        wrapped(point.angle() + sigmas.angle() * random.nextGaussian()),
                        point.depth() + sigmas.depthMillimetres() / 1000 * random.nextGaussian()))
                .toList();
    }

    static double wrapped(double angle) {
        double turned = angle % 360;
        return turned < 0 ? turned + 360 : turned;
    }

    /** Between the poles, degrees. */
    static double apart(CorePlane one, CorePlane other) {
        double[] a = normal(one);
        double[] b = normal(other);
        double x = a[1] * b[2] - a[2] * b[1];
        double y = a[2] * b[0] - a[0] * b[2];
        double z = a[0] * b[1] - a[1] * b[0];
        return Math.toDegrees(Math.atan2(Math.sqrt(x * x + y * y + z * z), Math.abs(dot(a, b))));
    }

    /** How far the pole of one lies from that of the other, degrees as alpha grows and round the core as beta grows. */
    static double[] offset(CorePlane found, CorePlane truth) {
        double[] normal = normal(found);
        double side = Math.signum(dot(normal, normal(truth)));
        double beta = Math.toRadians(truth.beta());
        double[] withAlpha = normal(CorePlane.of(90 - truth.alpha(), wrapped(truth.beta() + 180)));
        double[] withBeta = {0, Math.sin(beta), -Math.cos(beta)};
        return new double[] {Math.toDegrees(side * dot(normal, withAlpha)), Math.toDegrees(side * dot(normal, withBeta))
        };
    }

    /** Along the axis, along the reference line and 90 degrees clockwise of it. */
    private static double[] normal(CorePlane plane) {
        double alpha = Math.toRadians(plane.alpha());
        double beta = Math.toRadians(plane.beta());
        return new double[] {Math.sin(alpha), -Math.cos(alpha) * Math.cos(beta), -Math.cos(alpha) * Math.sin(beta)};
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }
}
