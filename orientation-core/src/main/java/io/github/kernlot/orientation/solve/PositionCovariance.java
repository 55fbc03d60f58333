package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;

/**
 * The covariance of a place. Components along easting, northing and elevation, in square metres.
 *
 * @param eastEast variance of the easting
 * @param northNorth variance of the northing
 * @param upUp variance of the elevation
 * @param eastNorth covariance of easting and northing
 * @param eastUp covariance of easting and elevation
 * @param northUp covariance of northing and elevation
 */
public record PositionCovariance(
        double eastEast, double northNorth, double upUp, double eastNorth, double eastUp, double northUp) {

    /** How far below zero, as a part of the product of variances, rounding may bring a determinant. */
    private static final double ROUNDING = 1e-9;

    /** A determinant that is a smaller part of the product of variances is rounding. */
    private static final double LEAST_VOLUME = 1e-12;

    /**
     * Checks that this is a covariance.
     *
     * @throws IllegalArgumentException if a number is not finite, a variance is negative, or a direction would have a negative
     *     variance
     */
    public PositionCovariance {
        eastEast = Require.notNegative("variance of the easting", eastEast, "m2");
        northNorth = Require.notNegative("variance of the northing", northNorth, "m2");
        upUp = Require.notNegative("variance of the elevation", upUp, "m2");
        eastNorth = covariance("covariance of easting and northing", eastNorth, eastEast, northNorth);
        eastUp = covariance("covariance of easting and elevation", eastUp, eastEast, upUp);
        northUp = covariance("covariance of northing and elevation", northUp, northNorth, upUp);
        double determinant = determinant(eastEast, northNorth, upUp, eastNorth, eastUp, northUp);
        if (determinant < -ROUNDING * eastEast * northNorth * upUp) {
            throw new IllegalArgumentException("the covariances contradict each other: the determinant is "
                    + determinant + " m6; expected 0 or above");
        }
    }

    private static double determinant(double ee, double nn, double uu, double en, double eu, double nu) {
        return ee * nn * uu + 2 * en * eu * nu - ee * nu * nu - nn * eu * eu - uu * en * en;
    }

    /** Whether no direction is known exactly, but for rounding. */
    boolean isUncertainInEveryDirection() {
        double volume = determinant(eastEast, northNorth, upUp, eastNorth, eastUp, northUp);
        return volume > LEAST_VOLUME * eastEast * northNorth * upUp;
    }

    private static double covariance(String name, double value, double one, double other) {
        double limit = Math.sqrt(one * other);
        Require.inRange(name, value, -limit * (1 + ROUNDING), limit * (1 + ROUNDING), "m2");
        return value + 0.0;
    }

    /**
     * A place that is as uncertain in every direction.
     *
     * @param sigma standard deviation of each coordinate, metres, 0 or more
     * @return the covariance
     * @throws IllegalArgumentException if sigma is negative or not finite
     */
    public static PositionCovariance ofSigma(double sigma) {
        return ofSigmas(sigma, sigma, sigma);
    }

    /**
     * A place whose coordinates err independently.
     *
     * @param eastingSigma standard deviation of the easting, metres, 0 or more
     * @param northingSigma standard deviation of the northing, metres, 0 or more
     * @param elevationSigma standard deviation of the elevation, metres, 0 or more
     * @return the covariance
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public static PositionCovariance ofSigmas(double eastingSigma, double northingSigma, double elevationSigma) {
        double east = Require.notNegative("easting sigma", eastingSigma, "m");
        double north = Require.notNegative("northing sigma", northingSigma, "m");
        double up = Require.notNegative("elevation sigma", elevationSigma, "m");
        return new PositionCovariance(east * east, north * north, up * up, 0, 0, 0);
    }

    /** The covariance times a vector whose third component points down. */
    Vector times(Vector vector) {
        double north = vector.north();
        double east = vector.east();
        double up = -vector.down();
        return new Vector(
                northNorth * north + eastNorth * east + northUp * up,
                eastNorth * north + eastEast * east + eastUp * up,
                -(northUp * north + eastUp * east + upUp * up));
    }

    /** The variance along a unit vector. */
    double along(Vector unit) {
        return Math.max(0, unit.dot(times(unit)));
    }
}
