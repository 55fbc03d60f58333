package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;
import java.util.random.RandomGenerator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Angles that scatter about a mean round a circle: density {@code exp(kappa cos(angle - mean)) / (2 pi I0(kappa))}.
 *
 * @param mean the mean direction, degrees in [0, 360)
 * @param concentration kappa, 0 or more; 0 is uniform, and for large ones the sigma is 1 / sqrt(kappa) radians
 */
public record VonMisesDistribution(double mean, double concentration) {

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(20);

    /** Beyond it the normal distribution has as many digits. */
    private static final double NORMAL = 1e9;

    /**
     * Checks the parameters.
     *
     * @throws IllegalArgumentException if the mean lies outside [0, 360] or the concentration is negative or not finite; a mean of 360
     *     becomes 0
     */
    public VonMisesDistribution {
        mean = Require.azimuth("mean", mean);
        concentration = Require.notNegative("concentration", concentration, "");
    }

    /**
     * The density at an angle.
     *
     * @param angle any finite angle, degrees
     * @return probability per radian
     * @throws IllegalArgumentException if the angle is not finite
     */
    public double density(double angle) {
        return at(Require.finite("angle", angle, "degrees") - mean) / (2 * Math.PI * ScaledBessel.of(0, concentration));
    }

    /** exp(kappa (cos a - 1)). */
    private double at(double away) {
        double sine = Degrees.sin(away / 2);
        return Math.exp(-2 * concentration * sine * sine);
    }

    /**
     * The probability of an angle less than so far clockwise from the opposite of the mean, where the distribution is cut open, within 1e-12.
     *
     * @param turn degrees in [0, 360]; 180 is at the mean
     * @return a probability in [0, 1]
     * @throws IllegalArgumentException if the turn lies outside [0, 360]
     */
    public double probabilityBelow(double turn) {
        double away = Require.inRange("turn", turn, 0, 360, "degrees") - 180;
        double half = between(Math.abs(away)) / (2 * Math.PI * ScaledBessel.of(0, concentration));
        return Math.max(0, Math.min(1, 0.5 + Math.copySign(half, away)));
    }

    /** The integral of {@link #at} from the mean to an angle away, in panels no wider than the peak. */
    private double between(double away) {
        double reach = Math.min(away, Math.toDegrees(12 / Math.sqrt(concentration + 1)));
        double sum = 0;
        int panels = 6;
        double half = reach / panels / 2;
        for (int panel = 0; panel < panels; panel++) {
            for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
                sum += GAUSS.getWeight(i) * at(half * (2 * panel + 1 + GAUSS.getPoint(i)));
            }
        }
        return sum * Math.toRadians(half);
    }

    /**
     * Draws angles, by acceptance and rejection of a wrapped Cauchy distribution (Best and Fisher 1979, from memory).
     *
     * @param count how many, 0 or more
     * @param seed any number; the same seed draws the same angles
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if the count is negative
     */
    public double[] draw(int count, long seed) {
        return draw(count, Source.of(seed));
    }

    /**
     * Draws angles with a generator of the caller's, which is moved on.
     *
     * @param count how many, 0 or more
     * @param random where the random bits come from
     * @return degrees in [0, 360)
     * @throws IllegalArgumentException if the count is negative
     */
    public double[] draw(int count, RandomGenerator random) {
        return draw(count, Source.of(random));
    }

    private double[] draw(int count, UniformRandomProvider random) {
        return DoubleStream.generate(() -> Degrees.wrap360(mean + away(random)))
                .limit((long) Require.notNegative("count", count, ""))
                .toArray();
    }

    private double away(UniformRandomProvider random) {
        if (concentration > NORMAL) {
            double normal = ZigguratSampler.NormalizedGaussian.of(random).sample();
            return Math.toDegrees(normal / Math.sqrt(concentration));
        }
        if (concentration < 0.1) {
            double even = 360 * random.nextDouble();
            return random.nextDouble() <= at(even) ? even : away(random);
        }
        double tau = 1 + Math.sqrt(1 + 4 * concentration * concentration);
        double rho = (tau - Math.sqrt(2 * tau)) / (2 * concentration);
        double r = (1 + rho * rho) / (2 * rho);
        while (true) {
            double z = Degrees.cos(180 * random.nextDouble());
            double cosine = (1 + r * z) / (r + z);
            double c = concentration * (r - cosine);
            double drawn = random.nextDouble();
            if (c * (2 - c) > drawn || Math.log(c / drawn) + 1 - c >= 0) {
                double angle = Degrees.atan2(Math.sqrt(Math.max(0, (1 - cosine) * (1 + cosine))), cosine);
                return random.nextBoolean() ? angle : -angle;
            }
        }
    }

    /** Its parameters: {@code von Mises about 098.9, kappa 3.22}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "von Mises about %s, kappa %.4g", Degrees.azimuthText(mean), concentration);
    }
}
