package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Vector;
import java.util.stream.IntStream;

/**
 * Points on the wall of a core of radius 1 and how far they lie from a cut, in sigmas.
 *
 * <p>The distance is {@code g = n . p - c}, its variance {@code (n_t s_z)^2 + (g' s_x)^2 + 3/2 (g'' s_x^2)^2}, where g' and g'' are its
 * derivatives by the angle. The last term counts only where the trace runs along the edge of the wall and the first two vanish;
 * it is twice the mean square of g'' e^2 / 2 for a Gaussian e, because that error is far from Gaussian and a good point must not look wrong.
 */
final class Wall {

    private static final double BEND = 1.5;

    private final double[] along;
    private final double[] cosines;
    private final double[] sines;
    private final double alongVariance;
    private final double roundVariance;

    private Wall(double[] along, double[] cosines, double[] sines, double alongVariance, double roundVariance) {
        this.along = along;
        this.cosines = cosines;
        this.sines = sines;
        this.alongVariance = alongVariance;
        this.roundVariance = roundVariance;
    }

    /** Depths in radii, angles in degrees, sigmas in radii and radians. */
    static Wall of(double[] depths, double[] angles, double alongSigma, double roundSigma) {
        double[] cosines = new double[angles.length];
        double[] sines = new double[angles.length];
        for (int i = 0; i < angles.length; i++) {
            cosines[i] = Degrees.cos(angles[i]);
            sines[i] = Degrees.sin(angles[i]);
        }
        return new Wall(depths, cosines, sines, alongSigma * alongSigma, roundSigma * roundSigma);
    }

    /** Some of the points. */
    Wall only(int[] chosen) {
        double[] z = new double[chosen.length];
        double[] x = new double[chosen.length];
        double[] y = new double[chosen.length];
        for (int i = 0; i < chosen.length; i++) {
            z[i] = along[chosen[i]];
            x[i] = cosines[chosen[i]];
            y[i] = sines[chosen[i]];
        }
        return new Wall(z, x, y, alongVariance, roundVariance);
    }

    int size() {
        return along.length;
    }

    Vector point(int i) {
        return new Vector(along[i], cosines[i], sines[i]);
    }

    double residual(Cut cut, int i) {
        Vector n = cut.normal();
        double bend = n.east() * cosines[i] + n.down() * sines[i];
        double slope = n.down() * cosines[i] - n.east() * sines[i];
        double distance = n.north() * along[i] + bend - cut.offset();
        return distance / Math.sqrt(variance(n.north(), slope, bend));
    }

    private double variance(double axial, double slope, double bend) {
        double ofBend = bend * roundVariance;
        return axial * axial * alongVariance + slope * slope * roundVariance + BEND * ofBend * ofBend;
    }

    /** The same points with sigmas whose squares are so many times as great. */
    Wall scaled(double factor) {
        return new Wall(along, cosines, sines, factor * alongVariance, factor * roundVariance);
    }

    /** The share of the variance of the points that is that of the bend of the wall. */
    double bent(Cut cut) {
        Vector n = cut.normal();
        double sum = 0;
        for (int i = 0; i < size(); i++) {
            double bend = n.east() * cosines[i] + n.down() * sines[i];
            double slope = n.down() * cosines[i] - n.east() * sines[i];
            double straight = variance(n.north(), slope, 0);
            sum += 1 - straight / variance(n.north(), slope, bend);
        }
        return sum / size();
    }

    /** The unit vector along which the points spread farthest. */
    Vector longWay() {
        Vector sum = new Vector(0, 0, 0);
        for (int i = 0; i < size(); i++) {
            sum = sum.plus(point(i));
        }
        Vector middle = sum.times(1.0 / size());
        return Eigen.of(IntStream.range(0, size())
                        .mapToObj(i -> point(i).minus(middle))
                        .toList())
                .vectors()
                .get(0);
    }

    /** The cut with a normal that fits best: the weighted mean of where those through the points lie. */
    Cut through(Vector normal) {
        Cut middle = new Cut(normal, 0);
        double sum = 0;
        double weights = 0;
        double[] row = new double[4];
        for (int i = 0; i < size(); i++) {
            row(middle, normal, normal, i, row);
            sum += row[0] * row[3];
            weights += row[3] * row[3];
        }
        return new Cut(normal, -sum / weights);
    }

    double[] residuals(Cut cut) {
        double[] residuals = new double[size()];
        for (int i = 0; i < residuals.length; i++) {
            residuals[i] = residual(cut, i);
        }
        return residuals;
    }

    /** The residual and its derivatives as the normal moves along two directions and as the offset grows. */
    void row(Cut cut, Vector one, Vector two, int i, double[] row) {
        Vector n = cut.normal();
        double bend = n.east() * cosines[i] + n.down() * sines[i];
        double slope = n.down() * cosines[i] - n.east() * sines[i];
        double variance = variance(n.north(), slope, bend);
        double sigma = Math.sqrt(variance);
        row[0] = (n.north() * along[i] + bend - cut.offset()) / sigma;
        row[1] = derivative(n.north(), slope, bend, one, i, row[0], sigma);
        row[2] = derivative(n.north(), slope, bend, two, i, row[0], sigma);
        row[3] = -1 / sigma;
    }

    /** d(g / s) = dg / s - (g / s) dv / (2 v): with it points are moved onto the cut before they are asked. */
    private double derivative(
            double axial, double slope, double bend, Vector way, int i, double residual, double sigma) {
        double bendGrows = way.east() * cosines[i] + way.down() * sines[i];
        double slopeGrows = way.down() * cosines[i] - way.east() * sines[i];
        double halfVarianceGrows = axial * way.north() * alongVariance
                + slope * slopeGrows * roundVariance
                + BEND * bend * bendGrows * roundVariance * roundVariance;
        return (way.north() * along[i] + bendGrows - residual * halfVarianceGrows / sigma) / sigma;
    }
}
