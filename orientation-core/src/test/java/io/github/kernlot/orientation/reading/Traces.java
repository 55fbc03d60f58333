package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Points on the traces of planes, by the formula of the sinusoid in radians, and what is wrong with them. */
final class Traces {

    private Traces() {}

    /** z0 + D / 2 cot(alpha) cos(x - beta), metres. */
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
        Vector first = CoreDirections.normal(one);
        Vector second = CoreDirections.normal(other);
        return Math.toDegrees(Math.atan2(first.cross(second).length(), Math.abs(first.dot(second))));
    }

    /** How far the pole of one lies from that of the other, degrees as alpha grows and round the core as beta grows. */
    static double[] offset(CorePlane found, CorePlane truth) {
        Vector normal = CoreDirections.normal(found);
        double side = Math.signum(normal.dot(CoreDirections.normal(truth)));
        return new double[] {
            Math.toDegrees(side * normal.dot(CoreDirections.withAlpha(truth))),
            Math.toDegrees(side * normal.dot(CoreDirections.withBeta(truth)))
        };
    }
}
