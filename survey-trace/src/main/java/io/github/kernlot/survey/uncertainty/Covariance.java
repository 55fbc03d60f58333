package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * The covariance of a vector in the ground: of a place in metres squared, or of the unit vector along a hole.
 *
 * @param northNorth variance of the component towards north
 * @param eastEast variance of the component towards east
 * @param downDown variance of the component downwards
 * @param northEast covariance of north and east
 * @param northDown covariance of north and down
 * @param eastDown covariance of east and down
 */
public record Covariance(
        double northNorth, double eastEast, double downDown, double northEast, double northDown, double eastDown) {

    /** No uncertainty. */
    public static final Covariance ZERO = new Covariance(0, 0, 0, 0, 0, 0);

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a variance is negative, or a number is not finite
     */
    public Covariance {
        northNorth = Require.notNegative("variance of north", northNorth, "");
        eastEast = Require.notNegative("variance of east", eastEast, "");
        downDown = Require.notNegative("variance of down", downDown, "");
        northEast = Require.finite("covariance of north and east", northEast, "");
        northDown = Require.finite("covariance of north and down", northDown, "");
        eastDown = Require.finite("covariance of east and down", eastDown, "");
    }

    /** The three by three from a corner of a larger symmetric matrix. */
    static Covariance corner(double[][] matrix, int at) {
        return new Covariance(
                matrix[at][at],
                matrix[at + 1][at + 1],
                matrix[at + 2][at + 2],
                matrix[at][at + 1],
                matrix[at][at + 2],
                matrix[at + 1][at + 2]);
    }

    /**
     * The matrix.
     *
     * @return three rows of three: north, east, down
     */
    public double[][] toArray() {
        return new double[][] {
            {northNorth, northEast, northDown}, {northEast, eastEast, eastDown}, {northDown, eastDown, downDown}
        };
    }

    /**
     * The covariance of an error that works along one direction.
     *
     * @param direction the direction
     * @param sigma its standard deviation, 0 or more; metres for places
     * @return the covariance
     * @throws IllegalArgumentException if sigma is negative or not finite
     */
    public static Covariance along(HoleDirection direction, double sigma) {
        Vector way = Vector.ofInclination(direction.inclination(), direction.azimuth())
                .times(Require.notNegative("sigma", sigma, "m"));
        return new Covariance(
                way.north() * way.north(),
                way.east() * way.east(),
                way.down() * way.down(),
                way.north() * way.east(),
                way.north() * way.down(),
                way.east() * way.down());
    }

    /**
     * The covariance of the sum of two vectors that are independent.
     *
     * @param other the covariance of the other
     * @return the sum
     */
    public Covariance plus(Covariance other) {
        return new Covariance(
                northNorth + other.northNorth,
                eastEast + other.eastEast,
                downDown + other.downDown,
                northEast + other.northEast,
                northDown + other.northDown,
                eastDown + other.eastDown);
    }

    /**
     * The standard deviation in the horizontal plane: the root of the sum of the two variances.
     *
     * @return metres for places
     */
    public double horizontalSigma() {
        return Math.sqrt(northNorth + eastEast);
    }

    /**
     * The standard deviation of the vertical.
     *
     * @return metres for places
     */
    public double verticalSigma() {
        return Math.sqrt(downDown);
    }

    /**
     * The standard deviation along a direction.
     *
     * @param direction the direction
     * @return metres for places
     */
    public double sigmaAlong(HoleDirection direction) {
        Vector unit = Vector.ofInclination(direction.inclination(), direction.azimuth());
        return Math.sqrt(Math.max(0, between(unit, unit)));
    }

    /** The covariance of the components along two unit vectors. */
    double between(Vector one, Vector other) {
        return one.north() * (northNorth * other.north() + northEast * other.east() + northDown * other.down())
                + one.east() * (northEast * other.north() + eastEast * other.east() + eastDown * other.down())
                + one.down() * (northDown * other.north() + eastDown * other.east() + downDown * other.down());
    }

    /**
     * Sigmas and correlations in the frame of a hole: high side, right and along. The high side of a vertical hole is taken at the
     * azimuth that it was given.
     *
     * @param direction the direction of the hole
     * @return the sigmas
     */
    public HoleFrameSigmas inHole(HoleDirection direction) {
        Vector high = Vector.ofInclination(direction.inclination() + 90, direction.azimuth());
        Vector right = Vector.ofAzimuth(direction.azimuth() + 90);
        Vector along = Vector.ofInclination(direction.inclination(), direction.azimuth());
        double onHigh = Math.sqrt(Math.max(0, between(high, high)));
        double onRight = Math.sqrt(Math.max(0, between(right, right)));
        double onAlong = Math.sqrt(Math.max(0, between(along, along)));
        return new HoleFrameSigmas(
                onHigh,
                onRight,
                onAlong,
                correlation(between(high, right), onHigh * onRight),
                correlation(between(high, along), onHigh * onAlong),
                correlation(between(right, along), onRight * onAlong));
    }

    private static double correlation(double covariance, double sigmas) {
        return sigmas == 0 ? 0 : Math.max(-1, Math.min(1, covariance / sigmas));
    }

    /**
     * How far off the vertical may be.
     *
     * @param confidence the share of cases wanted within, in [0.001, 0.999999]
     * @return half of the interval, metres for places
     * @throws IllegalArgumentException if the confidence lies outside its range
     */
    public double verticalInterval(double confidence) {
        return Quantiles.radius(confidence, 1) * verticalSigma();
    }

    /**
     * The horizontal ellipse.
     *
     * @param confidence the share of places that it holds, in [0.001, 0.999999]
     * @return the ellipse, its angle the bearing of the long axis from grid north
     * @throws IllegalArgumentException if the confidence lies outside its range
     */
    public ErrorEllipse horizontalEllipse(double confidence) {
        return ErrorEllipse.of(northNorth, northEast, eastEast, confidence);
    }

    /**
     * The ellipse in a vertical section.
     *
     * @param azimuth where the section runs, degrees in [0, 360]
     * @param confidence the share of places that it holds, in [0.001, 0.999999]
     * @return the ellipse, its angle counted down from the azimuth of the section
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public ErrorEllipse sectionEllipse(double azimuth, double confidence) {
        return ellipse(Vector.ofAzimuth(Require.azimuth("azimuth", azimuth)), Vector.DOWN, confidence);
    }

    /**
     * The ellipse across a hole.
     *
     * @param direction the direction of the hole
     * @param confidence the share of places that it holds, in [0.001, 0.999999]
     * @return the ellipse, its angle clockwise from the high side looking down-hole
     * @throws IllegalArgumentException if the confidence lies outside its range
     */
    public ErrorEllipse ellipseAcross(HoleDirection direction, double confidence) {
        Vector high = Vector.ofInclination(direction.inclination() + 90, direction.azimuth());
        return ellipse(high, Vector.ofAzimuth(direction.azimuth() + 90), confidence);
    }

    private ErrorEllipse ellipse(Vector one, Vector other, double confidence) {
        return ErrorEllipse.of(between(one, one), between(one, other), between(other, other), confidence);
    }

    /**
     * The ellipsoid.
     *
     * @param confidence the share of places that it holds, in [0.001, 0.999999]
     * @return the ellipsoid
     * @throws IllegalArgumentException if the confidence lies outside its range
     */
    public ErrorEllipsoid ellipsoid(double confidence) {
        return ErrorEllipsoid.of(toArray(), confidence);
    }

    /** The sigmas: {@code sigma north 1.20, east 0.80, down 0.30}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "sigma north %.4g, east %.4g, down %.4g",
                Math.sqrt(northNorth),
                Math.sqrt(eastEast),
                Math.sqrt(downDown));
    }
}
