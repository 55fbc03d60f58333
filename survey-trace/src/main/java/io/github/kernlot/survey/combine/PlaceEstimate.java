package io.github.kernlot.survey.combine;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Optional;

/**
 * A place as one survey gives it, with its covariance.
 *
 * @param place the place
 * @param covariance of the place, metres squared
 */
public record PlaceEstimate(Position place, Covariance covariance) {

    /**
     * This place and that of an independent survey in one, by least squares: the covariance is {@code (C1^-1 + C2^-1)^-1}, the place
     * {@code r1 + C1 (C1 + C2)^-1 (r2 - r1)}. Errors that both share are not in this formula and do not become smaller.
     *
     * @param other the place as another survey gives it, whose errors are independent of this one's
     * @return the place that both together say
     */
    public PlaceEstimate mergedWith(PlaceEstimate other) {
        Symmetric sum = new Symmetric(covariance.plus(other.covariance));
        double[][] own = covariance.toArray();
        double[] move = times(own, sum.solve(components(other.place.minus(place))));
        double[][] left = new double[3][];
        for (int i = 0; i < 3; i++) {
            double[] solved = sum.solve(other.covariance.toArray()[i]);
            left[i] = times(own, solved);
        }
        Covariance merged = new Covariance(
                Math.max(0, left[0][0]),
                Math.max(0, left[1][1]),
                Math.max(0, left[2][2]),
                (left[0][1] + left[1][0]) / 2,
                (left[0][2] + left[2][0]) / 2,
                (left[1][2] + left[2][1]) / 2);
        return new PlaceEstimate(place.plus(new Displacement(move[0], move[1], move[2])), merged);
    }

    /**
     * The distance to the place of an independent survey, held against both covariances: {@code d' (C1 + C2)^-1 d}.
     *
     * @param other the place as another survey gives it
     * @return the test; empty where neither place is uncertain
     */
    public Optional<ChiSquare> test(PlaceEstimate other) {
        return new Symmetric(covariance.plus(other.covariance)).test(components(other.place.minus(place)));
    }

    static double[] components(Displacement way) {
        return new double[] {way.north(), way.east(), way.down()};
    }

    private static double[] times(double[][] matrix, double[] vector) {
        double[] product = new double[3];
        for (int i = 0; i < 3; i++) {
            product[i] = matrix[i][0] * vector[0] + matrix[i][1] * vector[1] + matrix[i][2] * vector[2];
        }
        return product;
    }

    /** The place and its covariance. */
    @Override
    public String toString() {
        return place + ", " + covariance;
    }
}
