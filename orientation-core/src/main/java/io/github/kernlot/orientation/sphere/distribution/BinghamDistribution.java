package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Require;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Axes about a cluster, along a girdle or in between: density {@code exp(-a y^2 - b z^2) / c(a, b)} with y and z the cosines of the angles
 * to the middle and the least axis, 0 &lt;= a &lt;= b (Bingham 1974, An antipodally symmetric distribution on the sphere). a = b is a cluster
 * alike on all sides, a = 0 an even girdle, a = b = 0 uniform. The constant is integrated numerically, within a relative 1e-12.
 *
 * @param first the axis of the greatest density
 * @param middle the middle axis, at right angles to it
 * @param middleConcentration a, 0 or more
 * @param leastConcentration b, a or more
 */
public record BinghamDistribution(
        LineOrientation first, LineOrientation middle, double middleConcentration, double leastConcentration) {

    /** Above it the integral has been compared with nothing. */
    private static final double GREATEST = 1e8;

    /**
     * Checks the parameters.
     *
     * @throws IllegalArgumentException if the concentrations are not {@code 0 <= a <= b <= 1e8} or the axes not at right angles
     */
    public BinghamDistribution {
        Require.inRange("least concentration", leastConcentration, 0, GREATEST, "");
        Require.inRange("middle concentration", middleConcentration, 0, leastConcentration, "");
        Frame.requirePerpendicular("first and middle axis", Frame.vector(first), Frame.vector(middle));
    }

    /**
     * The distribution whose expected squares of the cosines to the middle and the least axis are given, which are the two lesser
     * eigenvalues of a sample's orientation tensor: with its axes this is the fit of the greatest likelihood.
     *
     * @param first the axis of the greatest eigenvalue
     * @param middle the axis of the middle eigenvalue
     * @param middleSquare the middle eigenvalue, in [0, 1/2]
     * @param leastSquare the least eigenvalue, in [0, 1/3]
     * @return the distribution; empty where a concentration would pass 1e8, as of axes in one plane
     * @throws IllegalArgumentException if the squares lie outside their ranges, are not in order, or the axes are not at right angles
     */
    public static Optional<BinghamDistribution> ofSquares(
            LineOrientation first, LineOrientation middle, double middleSquare, double leastSquare) {
        Require.inRange("middle square", middleSquare, 0, 0.5, "");
        Require.inRange("least square", leastSquare, 0, Math.min(middleSquare, 1 - 2 * middleSquare + 1e-12), "");
        if (leastSquare < 0.5 / GREATEST) {
            return Optional.empty();
        }
        ExponentialFamily family = new ExponentialFamily() {
            @Override
            public Point at(double p, double q) {
                return point(p, q);
            }

            @Override
            public boolean holds(double p, double q) {
                return p > -1 && q > -1 && q < 2 * GREATEST;
            }
        };
        double startA = Math.max(0, 0.5 / middleSquare - 1.5);
        double startB = Math.max(startA, 0.5 / leastSquare - 1.5);
        return family.fit(-middleSquare, -leastSquare, startA, startB)
                .map(found -> new double[] {Math.max(0, found[0]), Math.max(0, found[1])})
                .filter(found -> found[1] <= GREATEST)
                .map(found -> new BinghamDistribution(
                        first, middle, Math.min(found[0], found[1]), Math.max(found[0], found[1])));
    }

    /** The family in the natural parameters a and b of -y^2 and -z^2. */
    static ExponentialFamily.Point point(double a, double b) {
        double[] sums = SphereIntegral.overHemisphere(6, (distance, weight, into) -> {
            double square = distance * (2 - distance);
            double z = Math.abs(b - a) / 2 * square;
            double part = weight * Math.exp(-Math.min(a, b) * square) * ScaledBessel.of(0, z);
            // the averages round the axis of cos^2, sin^2 and of both together; cos^4 is cos^2 less both
            double lacking = ScaledBessel.shortfall(z);
            double near = 1 - lacking / 2;
            double far = lacking / 2;
            double both = z < 1e-5 ? 0.125 : (1 - lacking) / (4 * z);
            into[0] += part;
            into[1] += part * square * near;
            into[2] += part * square * far;
            into[3] += part * square * square * (near - both);
            into[4] += part * square * square * both;
            into[5] += part * square * square * (far - both);
        });
        double near = sums[1] / sums[0];
        double far = sums[2] / sums[0];
        double nearNear = sums[3] / sums[0] - near * near;
        double both = sums[4] / sums[0] - near * far;
        double farFar = sums[5] / sums[0] - far * far;
        double constant = Math.log(4 * Math.PI * sums[0]);
        return a <= b
                ? new ExponentialFamily.Point(constant, -near, -far, nearNear, both, farFar)
                : new ExponentialFamily.Point(constant, -far, -near, farFar, both, nearNear);
    }

    /**
     * The natural logarithm of the constant c.
     *
     * @return ln c; ln 4 pi where the concentrations are 0
     */
    public double logConstant() {
        return point(middleConcentration, leastConcentration).logConstant();
    }

    /**
     * The density at an axis, counted over the whole sphere, so that each end of an axis has one half.
     *
     * @param axis the axis
     * @return probability per steradian
     */
    public double density(LineOrientation axis) {
        Frame frame = Frame.of(Frame.vector(first), Frame.vector(middle));
        double y = frame.second().dot(Frame.vector(axis));
        double z = frame.third().dot(Frame.vector(axis));
        return Math.exp(-middleConcentration * y * y - leastConcentration * z * z - logConstant());
    }

    /**
     * Draws axes, by acceptance and rejection of normal vectors made unit vectors (Kent, Ganeiber and Mardia 2018, from memory).
     *
     * @param count how many, 0 or more
     * @param seed any number; the same seed draws the same axes
     * @return the axes
     * @throws IllegalArgumentException if the count is negative
     */
    public List<LineOrientation> draw(int count, long seed) {
        return draw(count, Source.of(seed));
    }

    /**
     * Draws axes with a generator of the caller's, which is moved on.
     *
     * @param count how many, 0 or more
     * @param random where the random bits come from
     * @return the axes
     * @throws IllegalArgumentException if the count is negative
     */
    public List<LineOrientation> draw(int count, RandomGenerator random) {
        return draw(count, Source.of(random));
    }

    private List<LineOrientation> draw(int count, UniformRandomProvider random) {
        ProjectedNormal source = new ProjectedNormal(middleConcentration, leastConcentration, random);
        Frame frame = Frame.of(Frame.vector(first), Frame.vector(middle));
        return Stream.generate(source::next)
                .limit((long) Require.notNegative("count", count, ""))
                .map(drawn -> Frame.line(frame.at(drawn.north(), drawn.east(), drawn.down())))
                .toList();
    }

    /** Its parameters: {@code Bingham about 80.0/045.0 (plunge/trend), middle axis 10.0/225.0 (plunge/trend), 12.1 and 40.3}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "Bingham about %s, middle axis %s, %.4g and %.4g",
                first,
                middle,
                middleConcentration,
                leastConcentration);
    }
}
