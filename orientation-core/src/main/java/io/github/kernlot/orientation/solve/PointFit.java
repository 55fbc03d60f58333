package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.List;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.LUDecomposition;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * Total least squares of a plane: the sum of {@code (n . p - c)^2 / (n' C n)} made least over all unit normals n and distances c, C
 * being the covariance of each point.
 */
final class PointFit {

    /** Points whose spread across their line is less than this part of the spread along it lie on a line. */
    static final double LINE = 1e-9;

    private static final int STEPS = 100;
    private static final int STARTS = 200;

    /** Squares of squares of distances beyond this, in metres, would overflow. */
    private static final double FARTHEST = 1e60;

    private final Vector[] points;
    private final PositionCovariance[] covariances;
    private final Vector first;
    private final double[] spreads;
    private final double resolution;
    private final Vector longAxis;
    private final Vector normal;
    private final double offset;

    PointFit(List<Position> positions, List<PositionCovariance> given) {
        Vector[] placed = positions.stream()
                .map(position -> position.minus(positions.get(0)))
                .map(way -> new Vector(way.north(), way.east(), way.down()))
                .toArray(Vector[]::new);
        Vector sum = new Vector(0, 0, 0);
        for (Vector point : placed) {
            sum = sum.plus(point);
        }
        first = sum.times(1.0 / placed.length);
        points = new Vector[placed.length];
        for (int i = 0; i < placed.length; i++) {
            points[i] = placed[i].minus(first);
            Require.inRange("distance of point " + (i + 1) + " from the middle", points[i].length(), 0, FARTHEST, "m");
        }
        covariances = given.toArray(new PositionCovariance[0]);
        List<Vector> axes = Eigen.of(List.of(points)).vectors();
        spreads = axes.stream().mapToDouble(this::spread).toArray();
        resolution = resolution(positions);
        longAxis = axes.get(0);
        Vector begun = points.length == 3 && !isLine()
                ? points[1].minus(points[0]).cross(points[2].minus(points[0])).unit()
                : axes.get(2);
        if (points.length == 3 || isLine()) {
            normal = begun;
            offset = points[0].dot(begun);
        } else {
            normal = lowest(begun);
            offset = bestOffset(normal);
        }
    }

    /** By the points themselves: the root of an eigenvalue has but half the digits. */
    private double spread(Vector along) {
        double sum = 0;
        for (Vector point : points) {
            sum += Math.pow(point.dot(along), 2);
        }
        return Math.sqrt(sum / points.length);
    }

    private static double resolution(List<Position> positions) {
        double largest = 0;
        for (Position position : positions) {
            largest = Math.max(largest, Math.max(Math.abs(position.easting()), Math.abs(position.northing())));
            largest = Math.max(largest, Math.abs(position.elevation()));
        }
        return Math.ulp(largest);
    }

    /** Whether the points lie on one line, or at one place, within what their coordinates resolve. */
    boolean isLine() {
        return !(spreads[1] > Math.max(LINE * spreads[0], 2 * resolution));
    }

    /** The last digit of the coordinates, metres. */
    double resolution() {
        return resolution;
    }

    /**
     * The bottom of the deepest valley. Points that are alike have one, that in which the axes of their cloud lie; with unequal
     * covariances there may be several.
     */
    private Vector lowest(Vector begun) {
        Vector best = settled(begun);
        if (areAlike()) {
            return best;
        }
        for (Vector hollow : Hollows.of(pole -> sum(pole, bestOffset(pole)), STARTS)) {
            Vector other = settled(hollow);
            best = sum(other, bestOffset(other)) < sum(best, bestOffset(best)) ? other : best;
        }
        return best;
    }

    private boolean areAlike() {
        PositionCovariance one = covariances[0];
        return one.equals(new PositionCovariance(one.upUp(), one.upUp(), one.upUp(), 0, 0, 0))
                && Arrays.stream(covariances).allMatch(one::equals);
    }

    private Vector settled(Vector start) {
        Vector pole = start;
        double distance = bestOffset(pole);
        double here = sum(pole, distance);
        double damping = 1e-6;
        for (int i = 0; i < STEPS && damping < 1e12; i++) {
            Vector one = across(pole);
            Vector two = pole.cross(one);
            RealMatrix matrix = information(pole, distance, one, two);
            double[] right = gradient(pole, distance, one, two);
            for (int k = 0; k < 3; k++) {
                matrix.multiplyEntry(k, k, 1 + damping);
            }
            LUDecomposition solver = new LUDecomposition(matrix, 0);
            if (!solver.getSolver().isNonSingular()) {
                damping *= 10;
                continue;
            }
            double[] step =
                    solver.getSolver().solve(new Array2DRowRealMatrix(right)).getColumn(0);
            Vector next = pole.plus(one.times(step[0])).plus(two.times(step[1])).unit();
            double moved = bestOffset(next);
            double there = sum(next, moved);
            if (there <= here) {
                boolean still = Math.hypot(step[0], step[1]) < 1e-15 || there == here;
                pole = next;
                distance = moved;
                here = there;
                damping /= 10;
                if (still) {
                    break;
                }
            } else {
                damping *= 10;
            }
        }
        return pole;
    }

    /** For a given normal the best distance is a weighted mean. */
    private double bestOffset(Vector pole) {
        double sum = 0;
        double weights = 0;
        for (int i = 0; i < points.length; i++) {
            double weight = 1 / covariances[i].along(pole);
            sum += weight * pole.dot(points[i]);
            weights += weight;
        }
        return sum / weights;
    }

    private double sum(Vector pole, double distance) {
        double sum = 0;
        for (int i = 0; i < points.length; i++) {
            double off = pole.dot(points[i]) - distance;
            sum += off * off / covariances[i].along(pole);
        }
        return sum;
    }

    /** J'J of the residuals over their sigmas, by the two ways of the normal and the distance. */
    RealMatrix information(Vector pole, double distance, Vector one, Vector two) {
        RealMatrix matrix = new Array2DRowRealMatrix(3, 3);
        for (int i = 0; i < points.length; i++) {
            double[] row = row(i, pole, distance, one, two);
            for (int a = 0; a < 3; a++) {
                for (int b = 0; b < 3; b++) {
                    matrix.addToEntry(a, b, row[a] * row[b]);
                }
            }
        }
        return matrix;
    }

    private double[] gradient(Vector pole, double distance, Vector one, Vector two) {
        double[] right = new double[3];
        for (int i = 0; i < points.length; i++) {
            double[] row = row(i, pole, distance, one, two);
            double off = (pole.dot(points[i]) - distance) / Math.sqrt(covariances[i].along(pole));
            for (int a = 0; a < 3; a++) {
                right[a] -= row[a] * off;
            }
        }
        return right;
    }

    private double[] row(int i, Vector pole, double distance, Vector one, Vector two) {
        // d/dn of u / s with u = n . p - c, s^2 = n' C n: p / s - u C n / s^3
        double variance = covariances[i].along(pole);
        double sigma = Math.sqrt(variance);
        double off = pole.dot(points[i]) - distance;
        Vector change =
                points[i].times(1 / sigma).minus(covariances[i].times(pole).times(off / (variance * sigma)));
        return new double[] {change.dot(one), change.dot(two), -1 / sigma};
    }

    private static Vector across(Vector pole) {
        Vector aside = Math.abs(pole.down()) < 0.7 ? Vector.DOWN : Vector.ofAzimuth(0);
        return aside.across(pole).unit();
    }

    Vector normal() {
        return normal;
    }

    double chiSquare() {
        return points.length == 3 ? 0 : sum(normal, offset);
    }

    /** Of a plane at right angles to the fitted one, about the long axis of the cloud: what {@link #chiSquare} would be. */
    double chiSquareAcross() {
        Vector across = across();
        return sum(across, bestOffset(across));
    }

    /** The unit normal of that plane, to which the fitted one moves as the plane rolls. */
    Vector across() {
        return longAxis.cross(normal).unit();
    }

    /** Root mean square distances from the centre along the three axes of the cloud, the longest first, metres. */
    double[] spreads() {
        return spreads.clone();
    }

    /** Distances of the points from the plane, positive on the side of the normal, metres. */
    double[] distances() {
        double[] distances = new double[points.length];
        for (int i = 0; i < points.length; i++) {
            distances[i] = points.length == 3 ? 0 : normal.dot(points[i]) - offset;
        }
        return distances;
    }

    /** The points from their centre. */
    Vector[] points() {
        return points.clone();
    }

    double offset() {
        return offset;
    }
}
