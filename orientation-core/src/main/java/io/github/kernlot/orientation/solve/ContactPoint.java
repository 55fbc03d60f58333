package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.Position;

/**
 * A place on a plane, such as where a hole pierces a contact, with its covariance. Points of one hole share errors; each is taken as
 * independent of the others here, which makes sigmas of planes through several points of one hole rough.
 *
 * @param position the place
 * @param covariance how uncertain it is
 */
public record ContactPoint(Position position, PositionCovariance covariance) {

    /**
     * A place with its covariance.
     *
     * @param position the place
     * @param covariance how uncertain it is
     * @return the point
     */
    public static ContactPoint of(Position position, PositionCovariance covariance) {
        return new ContactPoint(position, covariance);
    }

    /**
     * A place that is as uncertain in every direction.
     *
     * @param position the place
     * @param sigma standard deviation of each coordinate, metres, 0 or more
     * @return the point
     * @throws IllegalArgumentException if sigma is negative or not finite
     */
    public static ContactPoint of(Position position, double sigma) {
        return new ContactPoint(position, PositionCovariance.ofSigma(sigma));
    }
}
