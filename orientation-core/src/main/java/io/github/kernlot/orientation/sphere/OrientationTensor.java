package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * The orientation tensor of a sample, the mean of the products {@code x x'} of its unit vectors (also called the scatter matrix divided by
 * their number), by its eigenvalues and axes. Where two eigenvalues are the same their axes are any two in the plane of both.
 *
 * @param first the greatest eigenvalue; the three sum to 1
 * @param second the middle eigenvalue
 * @param third the least eigenvalue, 0 or more; what is below 1e-15 is rounding, and 0
 * @param firstAxis the axis that the sample clusters about
 * @param secondAxis the middle axis
 * @param thirdAxis the axis that the sample lies across: of poles along a girdle the fold axis
 */
public record OrientationTensor(
        double first,
        double second,
        double third,
        LineOrientation firstAxis,
        LineOrientation secondAxis,
        LineOrientation thirdAxis) {

    /**
     * Checks the eigenvalues.
     *
     * @throws IllegalArgumentException if they are not in order, below 0, or do not sum to 1 within 1e-9
     */
    public OrientationTensor {
        Require.inRange("sum of the eigenvalues", first + second + third, 1 - 1e-9, 1 + 1e-9, "");
        Require.inRange("second eigenvalue", second, 0, first, "");
        Require.inRange("third eigenvalue", third, 0, second, "");
    }

    static OrientationTensor of(List<Vector> vectors) {
        Eigen eigen = Eigen.of(vectors);
        // rounding may leave a sum just above 1, and a first eigenvalue above 1 or a second above 1/2
        double sum =
                eigen.values().get(0) + eigen.values().get(1) + eigen.values().get(2);
        return new OrientationTensor(
                eigen.values().get(0) / sum,
                eigen.values().get(1) / sum,
                eigen.values().get(2) / sum,
                Unit.line(eigen.vectors().get(0)),
                Unit.line(eigen.vectors().get(1)),
                Unit.line(eigen.vectors().get(2)));
    }

    /**
     * The shape, {@code K = ln(S1 / S2) / ln(S2 / S3)}: above 1 a cluster, below 1 a girdle (Woodcock 1977, Specification of fabric shapes
     * using an eigenvalue method).
     *
     * @return 0 or more, infinite where the second and the third eigenvalue are the same; empty where it is no number, for a uniform tensor
     *     and for one direction
     */
    public OptionalDouble shape() {
        if (first == third || second == 0) {
            return OptionalDouble.empty();
        }
        double below = third == 0 ? Double.POSITIVE_INFINITY : Math.log(second / third);
        return OptionalDouble.of(Math.log(first / second) / below);
    }

    /**
     * The strength, {@code C = ln(S1 / S3)}: 0 is uniform (Woodcock 1977).
     *
     * @return 0 or more; infinite where the third eigenvalue is 0
     */
    public double strength() {
        return third == 0 ? Double.POSITIVE_INFINITY : Math.log(first / third);
    }

    /**
     * The share of a point maximum, {@code P = S1 - S2}; P, G and R sum to 1 (Vollmer 1990, from memory).
     *
     * @return a number in [0, 1]
     */
    public double pointIndex() {
        return first - second;
    }

    /**
     * The share of a girdle, {@code G = 2 (S2 - S3)} (Vollmer 1990, from memory).
     *
     * @return a number in [0, 1]
     */
    public double girdleIndex() {
        return 2 * (second - third);
    }

    /**
     * The share of what has no direction, {@code R = 3 S3} (Vollmer 1990, from memory).
     *
     * @return a number in [0, 1]
     */
    public double randomIndex() {
        return 3 * third;
    }

    /** Each eigenvalue with its axis: {@code 0.950 along 71.0/024.2 (plunge/trend), 0.031 along ...}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.3f along %s, %.3f along %s, %.3f along %s",
                first,
                firstAxis,
                second,
                secondAxis,
                third,
                thirdAxis);
    }
}
