package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.apache.commons.math3.analysis.UnivariateFunction;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.util.ContinuedFraction;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Directions that scatter about a mean alike on all sides: density {@code kappa / (4 pi sinh kappa) exp(kappa cos theta)} at the angle
 * theta from it (Fisher 1953, Dispersion on a sphere).
 *
 * @param mean the mean direction
 * @param concentration kappa, 0 or more; 0 is uniform, and for large ones each of two axes across has the sigma 1 / sqrt(kappa) radians
 */
public record FisherDistribution(DirectedLine mean, double concentration) {

    private static final ContinuedFraction LAMBERT = new ContinuedFraction() {
        @Override
        protected double getA(int n, double x) {
            return n == 0 ? 0 : (2 * n + 1) / x;
        }

        @Override
        protected double getB(int n, double x) {
            return 1;
        }
    };

    /**
     * Checks the concentration.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public FisherDistribution {
        Require.notNegative("concentration", concentration, "");
    }

    /**
     * A distribution from its parameters.
     *
     * @param mean the mean direction
     * @param concentration kappa, 0 or more
     * @return the distribution
     * @throws IllegalArgumentException if the concentration is negative or not finite
     */
    public static FisherDistribution of(DirectedLine mean, double concentration) {
        return new FisherDistribution(mean, concentration);
    }

    /**
     * The concentration at which the expected length of the mean vector, {@code coth kappa - 1 / kappa}, is given, by its exact root. The
     * argument is what that length lacks of 1, so that sharp samples keep their digits.
     *
     * @param spread 1 less the length of the mean vector, in [0, 1]
     * @return kappa; infinite at spread 0
     * @throws IllegalArgumentException if the spread lies outside [0, 1]
     */
    public static double concentrationOfSpread(double spread) {
        Require.inRange("spread", spread, 0, 1, "");
        if (spread < 1e-300) {
            return Double.POSITIVE_INFINITY;
        }
        if (spread > 0.5) {
            double length = 1 - spread;
            return length == 0 ? 0 : root(kappa -> length(kappa) / length - 1, 3 * length, 1 / spread);
        }
        return root(kappa -> spread(kappa) / spread - 1, 3 * (1 - spread), 1 / spread);
    }

    private static double root(UnivariateFunction function, double low, double high) {
        return new BrentSolver(1e-15, 1e-300, 1e-16).solve(1000, function, low * (1 - 1e-12), high * (1 + 1e-12));
    }

    /** coth k - 1/k; for small k by {@code 1/(3/k + 1/(5/k + 1/(7/k + ...)))} (Lambert, from memory). */
    private static double length(double kappa) {
        return kappa > 2 ? 1 - spread(kappa) : LAMBERT.evaluate(kappa, 1e-16);
    }

    /** 1 - coth k + 1/k. */
    private static double spread(double kappa) {
        return 1 / kappa - 2 / Math.expm1(2 * kappa);
    }

    /**
     * The expected length of the mean vector.
     *
     * @return a number in [0, 1)
     */
    public double meanLength() {
        return concentration == 0 ? 0 : length(concentration);
    }

    /**
     * The density at a direction.
     *
     * @param direction the direction
     * @return probability per steradian
     */
    public double density(DirectedLine direction) {
        if (concentration == 0) {
            return 1 / (4 * Math.PI);
        }
        Vector apart = Frame.vector(direction).minus(Frame.vector(mean));
        double constant = concentration / (2 * Math.PI * -Math.expm1(-2 * concentration));
        return constant * Math.exp(-concentration * apart.dot(apart) / 2);
    }

    /**
     * The probability of a direction within an angle of the mean.
     *
     * @param angle degrees in [0, 180]
     * @return a probability in [0, 1]
     * @throws IllegalArgumentException if the angle lies outside [0, 180]
     */
    public double probabilityWithin(double angle) {
        double sine = Degrees.sin(Require.inRange("angle", angle, 0, 180, "degrees") / 2);
        double cap = 2 * sine * sine;
        return concentration == 0 ? cap / 2 : Math.expm1(-concentration * cap) / Math.expm1(-2 * concentration);
    }

    /**
     * The angle from the mean within which a share of the directions lies: with 0.95 the cone that holds 95 % of them, not to be confused
     * with the cone of the mean.
     *
     * @param share a probability in [0, 1]
     * @return degrees in [0, 180]
     * @throws IllegalArgumentException if the share lies outside [0, 1]
     */
    public double angleHolding(double share) {
        double cap = cap(Require.inRange("share", share, 0, 1, ""));
        return 2 * Degrees.atan2(Math.sqrt(cap), Math.sqrt(Math.max(0, 2 - cap)));
    }

    /** 1 - cos theta below which a share lies. */
    private double cap(double share) {
        return concentration == 0
                ? 2 * share
                : Math.min(2, -Math.log1p(share * Math.expm1(-2 * concentration)) / concentration);
    }

    /**
     * Draws directions, exactly, by the inverse of the distribution of theta.
     *
     * @param count how many, 0 or more
     * @param seed any number; the same seed draws the same directions
     * @return the directions
     * @throws IllegalArgumentException if the count is negative
     */
    public List<DirectedLine> draw(int count, long seed) {
        return draw(count, Source.of(seed));
    }

    /**
     * Draws directions with a generator of the caller's, which is moved on.
     *
     * @param count how many, 0 or more
     * @param random where the random bits come from
     * @return the directions
     * @throws IllegalArgumentException if the count is negative
     */
    public List<DirectedLine> draw(int count, RandomGenerator random) {
        return draw(count, Source.of(random));
    }

    private List<DirectedLine> draw(int count, UniformRandomProvider random) {
        Frame frame = Frame.about(Frame.vector(mean));
        return Stream.generate(() -> Frame.direction(draw(frame, random)))
                .limit((long) Require.notNegative("count", count, ""))
                .toList();
    }

    private Vector draw(Frame frame, UniformRandomProvider random) {
        double cap = cap(random.nextDouble());
        double turn = 360 * random.nextDouble();
        double across = Math.sqrt(cap * (2 - cap));
        return frame.at(1 - cap, across * Degrees.cos(turn), across * Degrees.sin(turn));
    }

    /** Its parameters: {@code Fisher about arrow 60.0/090.0 (plunge/trend), kappa 39.5}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "Fisher about %s, kappa %.4g", mean, concentration);
    }
}
