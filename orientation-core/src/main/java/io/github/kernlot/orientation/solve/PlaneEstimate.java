package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * A plane with the covariance of its pole, to first order, in the plane that touches the sphere there: one component as the dip
 * grows, the other along strike as the dip direction grows. Both are angles on the sphere, so that they mean the same at every dip.
 *
 * @param plane the plane
 * @param dipSigma standard deviation of the pole as the dip grows, which is that of the dip, degrees, 0 or more
 * @param strikeSigma standard deviation of the pole along strike, degrees on the sphere, 0 or more
 * @param correlation of the two, in [-1, 1]
 * @param degreesOfFreedom how many degrees of freedom the sigmas were estimated with, 1 or more; infinite where they were known beforehand
 */
public record PlaneEstimate(
        PlaneOrientation plane, double dipSigma, double strikeSigma, double correlation, double degreesOfFreedom) {

    private static final int STRIPS = 128;

    /** Twice this many sigmas from horizontal a dip direction is told. */
    private static final double SIGMAS_FROM_FLAT = 2;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite, the correlation lies outside [-1, 1], or there is less
     *     than one degree of freedom
     */
    public PlaneEstimate {
        dipSigma = Require.notNegative("dip sigma", dipSigma, "degrees");
        strikeSigma = Require.notNegative("strike sigma", strikeSigma, "degrees");
        correlation = Require.inRange("correlation", correlation, -1, 1, "");
        Require.inRange("degrees of freedom", degreesOfFreedom, 1, Double.POSITIVE_INFINITY, "");
    }

    /**
     * A plane whose sigmas are known.
     *
     * @param plane the plane
     * @param dipSigma standard deviation of the pole as the dip grows, degrees, 0 or more
     * @param strikeSigma standard deviation of the pole along strike, degrees on the sphere, 0 or more
     * @param correlation of the two, in [-1, 1]
     * @throws IllegalArgumentException if a sigma is negative or not finite, or the correlation lies outside [-1, 1]
     */
    public PlaneEstimate(PlaneOrientation plane, double dipSigma, double strikeSigma, double correlation) {
        this(plane, dipSigma, strikeSigma, correlation, Double.POSITIVE_INFINITY);
    }

    /** From variances and covariance in square radians. */
    static PlaneEstimate ofRadians(PlaneOrientation plane, double dip, double strike, double covariance) {
        double dipSigma = Math.sqrt(Math.max(0, dip));
        double strikeSigma = Math.sqrt(Math.max(0, strike));
        double product = dipSigma * strikeSigma;
        double correlation = product == 0 ? 0 : Math.max(-1, Math.min(1, covariance / product));
        return new PlaneEstimate(plane, Math.toDegrees(dipSigma), Math.toDegrees(strikeSigma), correlation);
    }

    PlaneEstimate withDegreesOfFreedom(double estimated) {
        return new PlaneEstimate(plane, dipSigma, strikeSigma, correlation, estimated);
    }

    /**
     * The standard deviation of the dip direction, {@code strike sigma / sin(dip)}.
     *
     * @return degrees; empty where the plane lies within two sigmas of horizontal and its dip direction is not told
     */
    public OptionalDouble dipDirectionSigma() {
        return plane.dip() > SIGMAS_FROM_FLAT * Math.max(dipSigma, strikeSigma)
                ? OptionalDouble.of(strikeSigma / Degrees.sin(plane.dip()))
                : OptionalDouble.empty();
    }

    /**
     * The standard deviation of the pole where it is greatest.
     *
     * @return degrees, the long half axis of the one-sigma ellipse
     */
    public double greatestSigma() {
        return larger() * Math.sqrt(half() + spread());
    }

    /**
     * The standard deviation of the pole where it is least.
     *
     * @return degrees, the short half axis of the one-sigma ellipse
     */
    public double leastSigma() {
        // the determinant over the greater eigenvalue, which keeps the digits of a narrow ellipse
        double greatest = half() + spread();
        double root = dip() * strike() * Math.sqrt((1 - correlation) * (1 + correlation));
        return larger() * root / Math.sqrt(greatest);
    }

    /**
     * How the long axis of the ellipse lies: from the way the pole moves as the dip grows towards the way it moves as the dip
     * direction grows.
     *
     * @return degrees in [0, 180); 0 for a circle
     */
    public double longAxis() {
        double twice = Degrees.atan2(2 * correlation * dip() * strike(), (dip() - strike()) * (dip() + strike()));
        return Degrees.wrap360(twice) / 2;
    }

    private double half() {
        return (dip() * dip() + strike() * strike()) / 2;
    }

    private double spread() {
        return Math.hypot((dip() - strike()) * (dip() + strike()) / 2, correlation * dip() * strike());
    }

    /** The sigmas as parts of the larger one, whose squares neither overflow nor vanish. */
    private double dip() {
        return larger() == 0 ? 1 : dipSigma / larger();
    }

    private double strike() {
        return larger() == 0 ? 1 : strikeSigma / larger();
    }

    private double larger() {
        return Math.max(dipSigma, strikeSigma);
    }

    /**
     * The radius of the cone about the pole that holds the true pole with 95 %, from both axes of the ellipse. Where the sigmas were
     * estimated from a scatter of few, the cone is wider: Gaussian errors over a scatter make a Student distribution of two
     * dimensions.
     *
     * @return degrees, at most 90, where it holds every pole; with known sigmas 1.96 times the sigma of a line-like ellipse and 2.45
     *     times that of a circle, with one degree of freedom 12.7 and 20.0 times
     */
    public double cone95() {
        double longer = greatestSigma();
        if (longer == 0) {
            return 0;
        }
        double ratio = leastSigma() / longer;
        return Math.min(90, longer * new BrentSolver(1e-10).solve(100, radius -> 0.05 - outside(radius, ratio), 1, 25));
    }

    /** The probability of what lies outside a circle, with sigmas 1 and ratio: the mean over the directions of the unit circle. */
    private double outside(double radius, double ratio) {
        double sum = 0;
        for (int i = 0; i < STRIPS; i++) {
            double angle = 90 * (i + 0.5) / STRIPS;
            double reach = Math.hypot(Degrees.cos(angle), ratio * Degrees.sin(angle));
            double half = Math.pow(radius / reach, 2) / 2;
            // P(outside) = exp(-r^2 / 2) in sigmas, and (1 + r^2 / f)^(-f / 2) with f degrees of freedom
            sum += degreesOfFreedom == Double.POSITIVE_INFINITY
                    ? Math.exp(-half)
                    : Math.exp(-degreesOfFreedom / 2 * Math.log1p(2 * half / degreesOfFreedom));
        }
        return sum / STRIPS;
    }

    /**
     * The plane and its sigmas: {@code 62.4/118.9 (dip/dip direction), sigma 1.2 in dip and 2.0 along strike}, and the degrees of
     * freedom where the sigmas were estimated.
     */
    @Override
    public String toString() {
        return plane + ", sigma " + Degrees.text(dipSigma) + " in dip and " + Degrees.text(strikeSigma)
                + " along strike"
                + (degreesOfFreedom == Double.POSITIVE_INFINITY
                        ? ""
                        : String.format(Locale.ROOT, ", degrees of freedom %.0f", degreesOfFreedom));
    }
}
