package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Optional;

/** Least squares over the sphere of poles: from a start down to the nearest plane that fits the alphas best. */
final class AlphaDescent {

    private static final int STEPS = 200;
    private static final double CONVERGED = 1e-15;
    private static final double PROBE = Math.toRadians(0.01);
    private static final int RESTARTS = 5;

    /** Nearer to the tip of a cone than this, in radians, there is no way towards it. */
    private static final double TIP = 1e-12;

    private final Vector[] axes;
    private final double[] alphas;
    private final double[] sigmas;

    AlphaDescent(List<AlphaReading> readings) {
        axes = readings.stream().map(reading -> Poles.axis(reading.hole())).toArray(Vector[]::new);
        alphas = readings.stream().mapToDouble(reading -> reading.alpha()).toArray();
        sigmas = readings.stream().mapToDouble(AlphaReading::alphaSigma).toArray();
    }

    double chiSquare(Vector pole) {
        double sum = 0;
        for (int i = 0; i < axes.length; i++) {
            double off = (alphas[i] - Poles.alpha(pole, axes[i])) / sigmas[i];
            sum += off * off;
        }
        return sum;
    }

    /** The pole at the bottom of the valley in which the start lies. */
    Vector from(Vector start) {
        Vector pole = settled(start);
        for (int i = 0; i < RESTARTS; i++) {
            Optional<Vector> lower = lowerBeside(pole);
            if (lower.isEmpty()) {
                return pole;
            }
            pole = settled(lower.get());
        }
        return pole;
    }

    /** On a saddle the gradient vanishes too. */
    private Optional<Vector> lowerBeside(Vector pole) {
        double here = chiSquare(pole);
        Vector one = anyAcross(pole);
        Vector two = pole.cross(one);
        for (int i = 0; i < 8; i++) {
            Vector beside = moved(pole, one, two, PROBE * Degrees.cos(45.0 * i), PROBE * Degrees.sin(45.0 * i));
            if (chiSquare(beside) < here * (1 - 1e-9) - 1e-12) {
                return Optional.of(beside);
            }
        }
        return Optional.empty();
    }

    private Vector settled(Vector start) {
        // Levenberg and Marquardt; the half of each cone is that on whose side the pole lies, and changes with it
        Vector pole = start;
        double here = chiSquare(pole);
        double damping = 1e-3;
        for (int i = 0; i < STEPS && damping < 1e12; i++) {
            Vector one = anyAcross(pole);
            Vector two = pole.cross(one);
            double[] system = system(pole, one, two);
            double stretch = 1 + damping;
            double determinant = system[0] * stretch * system[2] * stretch - system[1] * system[1];
            if (!(determinant > 0)) {
                damping = Math.max(damping * 10, 1e-6);
                if (system[0] + system[2] == 0) {
                    return pole;
                }
                continue;
            }
            double first = (system[2] * stretch * system[3] - system[1] * system[4]) / determinant;
            double second = (system[0] * stretch * system[4] - system[1] * system[3]) / determinant;
            Vector next = moved(pole, one, two, first, second);
            double there = chiSquare(next);
            if (there <= here) {
                pole = next;
                here = there;
                damping /= 10;
                if (Math.hypot(first, second) < CONVERGED) {
                    return pole;
                }
            } else {
                damping *= 10;
            }
        }
        return pole;
    }

    /**
     * Normal matrix (11, 12, 22) and right-hand side (1, 2) in radians. Gauss and Newton leave out the second derivative; where the pole
     * lies outside a cone it is positive round the axis, off / tan(away), and is kept: between cones that do not meet, and at the tip of
     * one, nothing else holds the pole.
     */
    private double[] system(Vector pole, Vector one, Vector two) {
        double[] system = new double[5];
        for (int i = 0; i < axes.length; i++) {
            Vector towards = towards(pole, axes[i]);
            double length = towards.length();
            double weight = 1 / Math.pow(Math.toRadians(sigmas[i]), 2);
            double away = Math.atan2(length, Math.abs(pole.dot(axes[i])));
            double off = away - Math.toRadians(90 - alphas[i]);
            if (away < TIP) {
                double round = alphas[i] == 90 ? weight : 0;
                system[0] += round;
                system[2] += round;
                continue;
            }
            double first = towards.dot(one) / length;
            double second = towards.dot(two) / length;
            double round = Math.max(0, off) / Math.tan(away);
            system[0] += weight * (first * first + round * second * second);
            system[1] += weight * (1 - round) * first * second;
            system[2] += weight * (second * second + round * first * first);
            system[3] += weight * first * off;
            system[4] += weight * second * off;
        }
        return system;
    }

    /** The way from the pole to the nearer end of the axis, along which alpha grows; the axis's part across the pole. */
    private static Vector towards(Vector pole, Vector axis) {
        double along = pole.dot(axis);
        Vector across = pole.cross(axis).cross(pole);
        return along < 0 ? across.negated() : across;
    }

    /** The covariance of the pole; empty where the alphas do not fix it. */
    Optional<PlaneEstimate> estimate(PlaneOrientation plane) {
        Vector pole = Poles.normal(plane);
        Vector one = Poles.withDip(plane);
        Vector two = Poles.withDipDirection(plane);
        double[] system = system(pole, one, two);
        double determinant = system[0] * system[2] - system[1] * system[1];
        double trace = system[0] + system[2];
        if (!(determinant > 1e-10 * trace * trace)) {
            return Optional.empty();
        }
        return Optional.of(PlaneEstimate.ofRadians(
                plane, system[2] / determinant, system[0] / determinant, -system[1] / determinant));
    }

    private static Vector moved(Vector pole, Vector one, Vector two, double first, double second) {
        double angle = Math.hypot(first, second);
        if (angle == 0) {
            return pole;
        }
        Vector way = one.times(first / angle).plus(two.times(second / angle));
        return pole.times(Math.cos(angle)).plus(way.times(Math.sin(angle))).unit();
    }

    private static Vector anyAcross(Vector pole) {
        Vector aside = Math.abs(pole.down()) < 0.7 ? Vector.DOWN : Vector.ofAzimuth(0);
        return aside.across(pole).unit();
    }
}
