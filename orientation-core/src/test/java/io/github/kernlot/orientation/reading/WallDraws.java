package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;

/** Points on the wall by the definitions alone, in radians and by Math. */
final class WallDraws {

    static final CoreDiameter CORE = CoreDiameter.ofMillimetres(47.6);

    private WallDraws() {}

    /** z = z0 + D / 2 cot(alpha) cos(x - beta), for alpha above 0. */
    static double depth(double alpha, double beta, double axisDepth, double angle) {
        return axisDepth
                + CORE.millimetres() / 2000 / Math.tan(Math.toRadians(alpha)) * Math.cos(Math.toRadians(angle - beta));
    }

    static List<WallPoint> exact(double alpha, double beta, double axisDepth, double from, double arc, int count) {
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            double angle = (from + arc * i / count) % 360;
            points.add(WallPoint.of(angle, depth(alpha, beta, axisDepth, angle)));
        }
        return points;
    }

    static List<WallPoint> noisy(List<WallPoint> exact, WallSigmas sigmas, Random random) {
        return exact.stream()
                .map(point -> WallPoint.of(
                        wrapped(point.angle() + sigmas.angle() * random.nextGaussian()),
                        point.depth() + sigmas.depthMillimetres() / 1000 * random.nextGaussian()))
                .toList();
    }

    static double wrapped(double angle) {
        return ((angle % 360) + 360) % 360;
    }

    /** The angle between two planes on core, degrees. */
    static double apart(CorePlane one, CorePlane other) {
        double[] a = normal(one);
        double[] b = normal(other);
        double x = a[1] * b[2] - a[2] * b[1];
        double y = a[2] * b[0] - a[0] * b[2];
        double z = a[0] * b[1] - a[1] * b[0];
        double dot = a[0] * b[0] + a[1] * b[1] + a[2] * b[2];
        return Math.toDegrees(Math.atan2(Math.sqrt(x * x + y * y + z * z), Math.abs(dot)));
    }

    static double[] normal(CorePlane plane) {
        double alpha = Math.toRadians(plane.alpha());
        double beta = Math.toRadians(plane.beta());
        return new double[] {Math.sin(alpha), -Math.cos(alpha) * Math.cos(beta), -Math.cos(alpha) * Math.sin(beta)};
    }
}
