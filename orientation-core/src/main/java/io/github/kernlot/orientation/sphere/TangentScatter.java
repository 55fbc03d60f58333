package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.RealMatrix;

/**
 * The covariance of an estimated direction in the plane that touches the sphere there, by its principal axes.
 *
 * @param centre the estimate, a unit vector
 * @param longAxis the axis of the greater variance, across the centre
 * @param longVariance of the component along that axis
 * @param shortVariance of the component across
 */
record TangentScatter(Vector centre, Vector longAxis, double longVariance, double shortVariance) {

    /** Of the covariance of the components along two perpendicular axes across the centre. */
    static TangentScatter of(
            Vector centre, Vector one, Vector other, double oneOne, double oneOther, double otherOther) {
        double middle = (oneOne + otherOther) / 2;
        double half = Math.hypot((oneOne - otherOther) / 2, oneOther);
        double turn = Math.atan2(2 * oneOther, oneOne - otherOther) / 2;
        Vector axis = one.times(Math.cos(turn)).plus(other.times(Math.sin(turn)));
        // the product of both is the determinant, which a difference would lose
        double small = middle + half > 0 ? (oneOne * otherOther - oneOther * oneOther) / (middle + half) : 0;
        return new TangentScatter(centre, axis.across(centre).unit(), middle + half, Math.max(0, small));
    }

    /** The scatter of vectors across a centre: mean squares and products, not divided by their number less one. */
    static TangentScatter of(List<Vector> vectors, Vector centre) {
        Vector one = Unit.across(centre);
        Vector other = centre.cross(one);
        double oneOne = 0;
        double oneOther = 0;
        double otherOther = 0;
        for (Vector vector : vectors) {
            double x = vector.dot(one);
            double y = vector.dot(other);
            oneOne += x * x / vectors.size();
            oneOther += x * y / vectors.size();
            otherOther += y * y / vectors.size();
        }
        return of(centre, one, other, oneOne, oneOther, otherOther);
    }

    /**
     * Of an eigenvector of the orientation tensor, {@code mean (u.x)^2 (v.x) (w.x) / (n (S - Sv) (S - Sw))} for the axes v and w across
     * it (Prentice 1984; Fisher, Lewis and Embleton 1987; from memory); empty where its eigenvalue is not its own.
     */
    static Optional<TangentScatter> ofEigenvector(List<Vector> vectors, Eigen eigen, int which) {
        Vector centre = eigen.vectors().get(which);
        Vector one = eigen.vectors().get((which + 1) % 3);
        Vector other = centre.cross(one);
        double apartOne = eigen.values().get(which) - eigen.values().get((which + 1) % 3);
        double apartOther = eigen.values().get(which) - eigen.values().get((which + 2) % 3);
        if (Math.abs(apartOne) < 1e-12 || Math.abs(apartOther) < 1e-12) {
            return Optional.empty();
        }
        double oneOne = 0;
        double oneOther = 0;
        double otherOther = 0;
        double n = vectors.size();
        for (Vector vector : vectors) {
            double along = Math.pow(vector.dot(centre), 2) / (n * n);
            double x = vector.dot(one) / apartOne;
            double y = vector.dot(other) / apartOther;
            oneOne += along * x * x;
            oneOther += along * x * y;
            otherOther += along * y * y;
        }
        return Optional.of(of(centre, one, other, oneOne, oneOther, otherOther));
    }

    TangentScatter times(double factor) {
        return new TangentScatter(centre, longAxis, factor * longVariance, factor * shortVariance);
    }

    /** The ellipse at which the square of the distance in sigmas is given. */
    AxisEllipse ellipse(double square, double probability) {
        return new AxisEllipse(
                Unit.line(centre),
                Unit.line(longAxis),
                radius(square * longVariance),
                radius(square * Math.min(shortVariance, longVariance)),
                probability);
    }

    private static double radius(double square) {
        return square >= 1 ? 90 : Math.toDegrees(Math.atan2(Math.sqrt(square), Math.sqrt(1 - square)));
    }

    /** The square of the distance in sigmas of a direction near by. */
    double square(Vector direction) {
        double along = direction.dot(longAxis);
        double across = direction.dot(centre.cross(longAxis));
        return along * along / longVariance + across * across / shortVariance;
    }

    /** The inverse of the covariance, as a matrix of three rows that has nothing along the centre. */
    RealMatrix inverse() {
        double[][] sums = new double[3][3];
        Eigen.addProduct(sums, longAxis, 1 / longVariance);
        Eigen.addProduct(sums, centre.cross(longAxis), 1 / shortVariance);
        return new Array2DRowRealMatrix(sums);
    }
}
