package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.solve.PlaneEstimate;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * A plane on core with the covariance of its pole, to first order, in the plane that touches the sphere there: one component as alpha
 * grows, the other round the core as beta grows. Both are angles on the sphere, so that they mean the same at every alpha; at alpha 90
 * the first is counted towards the reference line, which is where beta 0 lies.
 *
 * @param plane the plane
 * @param alphaSigma standard deviation of the pole as alpha grows, which is that of alpha, degrees, 0 or more
 * @param roundSigma standard deviation of the pole round the core, which is that of beta times cos(alpha), degrees, 0 or more
 * @param correlation of the two, in [-1, 1]
 * @param degreesOfFreedom how many degrees of freedom the sigmas were estimated with, 1 or more; infinite where they were known beforehand
 */
public record CorePlaneEstimate(
        CorePlane plane, double alphaSigma, double roundSigma, double correlation, double degreesOfFreedom) {

    /** Farther than this many sigmas from where it does not exist an angle is told. */
    static final double SIGMAS_AWAY = 2;

    /** Lines nearer to each other than this, in radians, hold no plane that could be told. */
    private static final double PARALLEL = 1e-9;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite, the correlation lies outside [-1, 1], or there is less than one
     *     degree of freedom
     */
    public CorePlaneEstimate {
        alphaSigma = Require.notNegative("alpha sigma", alphaSigma, "degrees");
        roundSigma = Require.notNegative("sigma round the core", roundSigma, "degrees");
        correlation = Require.inRange("correlation", correlation, -1, 1, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 1, Double.POSITIVE_INFINITY, "");
    }

    /**
     * A plane whose alpha and beta were read one by one.
     *
     * @param plane the plane
     * @param alphaSigma standard deviation of alpha, degrees, 0 or more
     * @param betaSigma standard deviation of beta, degrees, 0 or more
     * @return the estimate, without correlation
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public static CorePlaneEstimate ofAlphaAndBeta(CorePlane plane, double alphaSigma, double betaSigma) {
        double beta = Require.notNegative("beta sigma", betaSigma, "degrees");
        return new CorePlaneEstimate(plane, alphaSigma, Degrees.cos(plane.alpha()) * beta, 0, Double.POSITIVE_INFINITY);
    }

    /**
     * The plane that holds two lines, as two traces seen on two faces: its normal is their vector product.
     *
     * @param first one line with its sigmas
     * @param second the other, its errors independent of those of the first
     * @return the plane; the nearer the lines to each other, the greater its sigma across them
     * @throws IllegalArgumentException if the lines are parallel
     */
    public static CorePlaneEstimate ofLines(CoreLineEstimate first, CoreLineEstimate second) {
        Vector one = CoreDirections.vector(first.line());
        Vector two = CoreDirections.vector(second.line());
        Vector product = one.cross(two);
        if (!(product.length() > PARALLEL)) {
            throw new IllegalArgumentException("the lines " + first.line() + " and " + second.line()
                    + " are parallel: every plane about them would do; expected lines that cross");
        }
        CorePlane plane = CoreDirections.plane(product.unit());
        Vector withAlpha = CoreDirections.withAlpha(plane).times(1 / product.length());
        Vector withBeta = CoreDirections.withBeta(plane).times(1 / product.length());
        // e . d(v1 x v2) = dv1 . (v2 x e) + dv2 . (e x v1)
        double alpha = first.covariance(two.cross(withAlpha), two.cross(withAlpha))
                + second.covariance(withAlpha.cross(one), withAlpha.cross(one));
        double round = first.covariance(two.cross(withBeta), two.cross(withBeta))
                + second.covariance(withBeta.cross(one), withBeta.cross(one));
        double both = first.covariance(two.cross(withAlpha), two.cross(withBeta))
                + second.covariance(withAlpha.cross(one), withBeta.cross(one));
        return of(plane, alpha, round, both, Double.POSITIVE_INFINITY);
    }

    /** From variances and covariance in square degrees. */
    static CorePlaneEstimate of(
            CorePlane plane, double alpha, double round, double covariance, double degreesOfFreedom) {
        double alphaSigma = Math.sqrt(Math.max(0, alpha));
        double roundSigma = Math.sqrt(Math.max(0, round));
        return new CorePlaneEstimate(
                plane, alphaSigma, roundSigma, correlation(covariance, alphaSigma, roundSigma), degreesOfFreedom);
    }

    static double correlation(double covariance, double first, double second) {
        double product = first * second;
        return product == 0 ? 0 : Math.max(-1, Math.min(1, covariance / product));
    }

    /**
     * The standard deviation of beta, {@code sigma round the core / cos(alpha)}.
     *
     * @return degrees; empty where the plane lies within two sigmas of alpha 90, so that beta is not told
     */
    public OptionalDouble betaSigma() {
        return 90 - plane.alpha() > SIGMAS_AWAY * Math.max(alphaSigma, roundSigma)
                ? OptionalDouble.of(roundSigma / Degrees.cos(plane.alpha()))
                : OptionalDouble.empty();
    }

    /**
     * The standard deviation of the pole where it is greatest.
     *
     * @return degrees, the long half axis of the one-sigma ellipse
     */
    public double greatestSigma() {
        return ellipse().greatestSigma();
    }

    /**
     * The standard deviation of the pole where it is least.
     *
     * @return degrees, the short half axis of the one-sigma ellipse
     */
    public double leastSigma() {
        return ellipse().leastSigma();
    }

    /**
     * The radius of the cone about the pole that holds the true pole with 95 %, from both axes of the ellipse; the fewer degrees of freedom
     * the sigmas stand on, the wider ({@link PlaneEstimate#cone95}).
     *
     * @return degrees, at most 90; the same in the ground
     */
    public double cone95() {
        return ellipse().cone95();
    }

    /** The same ellipse on a plane of no meaning: its size does not hang on where it lies. */
    private PlaneEstimate ellipse() {
        return new PlaneEstimate(
                PlaneOrientation.ofDipAndDirection(45, 0), alphaSigma, roundSigma, correlation, degreesOfFreedom);
    }

    /**
     * The plane in the ground with the covariance of its pole. The frame is taken as exact: what is not known of the hole and of the
     * reference line comes on top.
     *
     * @param frame where the core stood
     * @return the plane with its sigmas in dip and along strike
     */
    public PlaneEstimate toGeographic(CoreFrame frame) {
        PlaneOrientation inGround = frame.toGeographic(plane);
        double[] cosines = frame.directionCosines();
        Vector withDip = onCore(cosines, Vector.ofInclination(inGround.dip() + 90, inGround.dipDirection() + 180));
        Vector withDipDirection = onCore(cosines, Vector.ofAzimuth(inGround.dipDirection() + 270));
        double dip = covariance(withDip, withDip);
        double strike = covariance(withDipDirection, withDipDirection);
        double dipSigma = Math.sqrt(Math.max(0, dip));
        double strikeSigma = Math.sqrt(Math.max(0, strike));
        return new PlaneEstimate(
                inGround,
                dipSigma,
                strikeSigma,
                correlation(covariance(withDip, withDipDirection), dipSigma, strikeSigma),
                degreesOfFreedom);
    }

    private static Vector onCore(double[] cosines, Vector ground) {
        return new Vector(
                new Vector(cosines[0], cosines[1], cosines[2]).dot(ground),
                new Vector(cosines[3], cosines[4], cosines[5]).dot(ground),
                new Vector(cosines[6], cosines[7], cosines[8]).dot(ground));
    }

    /** The covariance of the normal's components along two vectors, in square degrees. */
    private double covariance(Vector first, Vector second) {
        Vector withAlpha = CoreDirections.withAlpha(plane);
        Vector withBeta = CoreDirections.withBeta(plane);
        return Ellipse.covariance(
                first.dot(withAlpha) * alphaSigma,
                first.dot(withBeta) * roundSigma,
                second.dot(withAlpha) * alphaSigma,
                second.dot(withBeta) * roundSigma,
                correlation);
    }

    /**
     * The plane and its sigmas: {@code alpha 41.0, beta 213.0, sigma 1.2 in alpha and 2.0 round the core}, and the degrees of freedom where
     * the sigmas were estimated.
     */
    @Override
    public String toString() {
        return plane + ", sigma " + Degrees.text(alphaSigma) + " in alpha and " + Degrees.text(roundSigma)
                + " round the core"
                + (degreesOfFreedom == Double.POSITIVE_INFINITY
                        ? ""
                        : String.format(Locale.ROOT, ", degrees of freedom %.0f", degreesOfFreedom));
    }
}
