package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;

/**
 * The weighted mean of directions on the sphere: the point where the weighted mean of their images in its own tangent plane is
 * null, each image as far away and in the same direction as on the sphere (the mean of Karcher 1977, from memory, with weights along
 * and across the vertical).
 */
final class DirectionMean {

    /** Beyond this the mean need not be the only one. */
    static final double FARTHEST = 90;

    private static final int MOST_STEPS = 100;
    private static final double STILL = 1e-15;

    final Vector mean;
    final double[] shares;
    final double alongSigma;
    final double acrossSigma;
    final double statistic;

    /**
     * One direction and its variances in degrees squared: along the vertical, across it in a vertical hole, and what sin^2 I adds
     * across.
     */
    record Part(Vector direction, double along, double azimuth) {
        double across(double sine) {
            return along + azimuth * sine * sine;
        }
    }

    private DirectionMean(List<Part> parts, Vector mean) {
        this.mean = mean;
        double sine = mean.horizontal();
        double along = 0;
        double across = 0;
        for (Part part : parts) {
            along += 1 / part.along();
            across += 1 / part.across(sine);
        }
        shares = new double[parts.size()];
        Vector[] axes = axes(mean);
        double sum = 0;
        for (int i = 0; i < shares.length; i++) {
            Part part = parts.get(i);
            shares[i] = (1 / part.along() / along + 1 / part.across(sine) / across) / 2;
            Vector image = image(mean, part.direction());
            double up = Math.toDegrees(image.dot(axes[0]));
            double right = Math.toDegrees(image.dot(axes[1]));
            sum += up * up / part.along() + right * right / part.across(sine);
        }
        alongSigma = Math.sqrt(1 / along);
        acrossSigma = Math.sqrt(1 / across);
        statistic = sum;
    }

    static DirectionMean of(List<Part> parts) {
        Vector mean = parts.stream()
                .map(part -> part.direction().times(1 / part.along()))
                .reduce(Vector::plus)
                .orElseThrow()
                .unit();
        for (int step = 0; step < MOST_STEPS; step++) {
            Vector move = move(parts, mean);
            double angle = move.length();
            if (angle < STILL) {
                break;
            }
            mean = mean.times(Math.cos(angle))
                    .plus(move.times(Math.sin(angle) / angle))
                    .unit();
        }
        return new DirectionMean(parts, mean);
    }

    /** The weighted mean of the images in the tangent plane, radians. */
    private static Vector move(List<Part> parts, Vector mean) {
        Vector[] axes = axes(mean);
        double sine = mean.horizontal();
        double alongWeights = 0;
        double acrossWeights = 0;
        double along = 0;
        double across = 0;
        for (Part part : parts) {
            Vector image = image(mean, part.direction());
            alongWeights += 1 / part.along();
            acrossWeights += 1 / part.across(sine);
            along += image.dot(axes[0]) / part.along();
            across += image.dot(axes[1]) / part.across(sine);
        }
        return axes[0].times(along / alongWeights).plus(axes[1].times(across / acrossWeights));
    }

    /** A direction as seen from another: in the tangent plane there, as long as the angle between the two, radians. */
    private static Vector image(Vector from, Vector to) {
        Vector across = to.across(from);
        double length = across.length();
        return length == 0 ? across : across.times(from.angleTo(to) / length);
    }

    /** The high side and the right; in a vertical hole, where the two count alike, north and east. */
    private static Vector[] axes(Vector tangent) {
        double sine = tangent.horizontal();
        double north = sine == 0 ? 1 : tangent.north() / sine;
        double east = sine == 0 ? 0 : tangent.east() / sine;
        return new Vector[] {
            new Vector(tangent.down() * north, tangent.down() * east, -sine), new Vector(-east, north, 0)
        };
    }

    static Vector vector(HoleDirection direction) {
        return new Vector(direction.north(), direction.east(), direction.down());
    }
}
