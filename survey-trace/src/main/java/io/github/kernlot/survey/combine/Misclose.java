package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Locale;
import java.util.Optional;

/**
 * How far two surveys lie apart at one depth.
 *
 * @param depth metres along the hole
 * @param way from the place of the first survey to that of the second, metres
 * @param first the direction by the first survey
 * @param second the direction by the second survey
 */
public record Misclose(double depth, Displacement way, HoleDirection first, HoleDirection second) {

    /**
     * The angle between the two directions.
     *
     * @return degrees in [0, 180]
     */
    public double angle() {
        return first.angleTo(second);
    }

    /**
     * The distance between the two places, held against the sum of their covariances: {@code d' (C1 + C2)^-1 d}.
     *
     * @param ofFirst the covariance of the first survey's place, relative to where the comparison begins
     * @param ofSecond that of the second, independent of it
     * @return the test; empty where neither place is uncertain
     */
    public Optional<ChiSquare> test(Covariance ofFirst, Covariance ofSecond) {
        return new Symmetric(ofFirst.plus(ofSecond)).test(PlaceEstimate.components(way));
    }

    /**
     * The difference of the two unit vectors along the hole, held against the sum of their covariances, which have two dimensions: none
     * lets a unit vector change its length.
     *
     * @param ofFirst the covariance of the first survey's unit vector
     * @param ofSecond that of the second, independent of it
     * @return the test, to first order; empty where neither direction is uncertain
     */
    public Optional<ChiSquare> testDirection(Covariance ofFirst, Covariance ofSecond) {
        Vector one = DirectionMean.vector(first);
        Vector other = DirectionMean.vector(second);
        Vector sum = one.plus(other);
        if (sum.length() == 0) {
            return Optional.of(new ChiSquare(Double.POSITIVE_INFINITY, 2));
        }
        Vector mean = sum.unit();
        Vector difference = other.minus(one).across(mean);
        return Symmetric.across(ofFirst.plus(ofSecond), mean)
                .test(new double[] {difference.north(), difference.east(), difference.down()});
    }

    /** All of it: {@code 120.00 m: 0.42 m apart (north 0.10, east 0.40, down -0.02), 0.35 degrees}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f m: %.2f m apart (north %.2f, east %.2f, down %.2f), %.2f degrees",
                depth,
                way.length(),
                rounded(way.north()),
                rounded(way.east()),
                rounded(way.down()),
                angle());
    }

    /** To centimetres, never -0.00. */
    private static double rounded(double metres) {
        return Math.rint(100 * metres) / 100 + 0.0;
    }
}
