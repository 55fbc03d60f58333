package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.DirectedLine;
import io.github.kernlot.orientation.LineOrientation;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import java.util.random.RandomGenerator;
import java.util.stream.Stream;
import org.apache.commons.rng.UniformRandomProvider;

/**
 * Directions that scatter about a mean farther along one axis than along the other: density {@code exp(kappa x + beta (y^2 - z^2)) /
 * c(kappa, beta)} with x, y and z the cosines of the angles to the mean, the long axis and the short one (Kent 1982, The Fisher-Bingham
 * distribution on the sphere). It has one peak where kappa is 2 beta or more, and nothing else is let in. The constant is integrated
 * numerically, within a relative 1e-12.
 *
 * @param mean the mean direction
 * @param longAxis the axis along which the directions scatter farthest, at right angles to the mean
 * @param concentration kappa, 0 or more
 * @param ovalness beta, in [0, kappa / 2]; 0 is Fisher's distribution
 */
public record KentDistribution(DirectedLine mean, LineOrientation longAxis, double concentration, double ovalness) {

    private static final double GREATEST = 1e8;

    /**
     * Checks the parameters.
     *
     * @throws IllegalArgumentException if the concentration lies outside [0, 1e8], the ovalness outside [0, kappa / 2], or the axes are
     *     not at right angles
     */
    public KentDistribution {
        Require.inRange("concentration", concentration, 0, GREATEST, "");
        Require.inRange("ovalness", ovalness, 0, concentration / 2, "");
        Frame.requirePerpendicular("mean and long axis", Frame.vector(mean), Frame.vector(longAxis));
    }

    /**
     * The fit by moments of Kent 1982, for concentrated samples: {@code kappa = 1 / (2 s - w) + 1 / (2 s + w)} and {@code beta} half the
     * difference, with s the spread and w the difference of the squares.
     *
     * @param mean the mean direction of the sample
     * @param longAxis the axis across it along which the mean square of the cosines is greatest
     * @param spread 1 less the length of the mean vector, in [0, 1]
     * @param difference of the mean squares of the cosines to the long and to the short axis, in [0, 1]
     * @return the distribution; empty where the directions lie in one plane or all directions are the same
     * @throws IllegalArgumentException if a number lies outside its range or the axes are not at right angles
     */
    public static Optional<KentDistribution> ofMoments(
            DirectedLine mean, LineOrientation longAxis, double spread, double difference) {
        Require.inRange("spread", spread, 0, 1, "");
        Require.inRange("difference", difference, 0, 1, "");
        double shorter = 2 * spread - difference;
        if (shorter < 2 / GREATEST) {
            return Optional.empty();
        }
        double small = 1 / (2 * spread + difference);
        double great = 1 / shorter;
        return within(mean, longAxis, great + small, (great - small) / 2);
    }

    /**
     * The fit of the greatest likelihood with the axes as they are given.
     *
     * @param mean the mean direction of the sample
     * @param longAxis the axis across it along which the mean square of the cosines is greatest
     * @param spread 1 less the length of the mean vector, in [0, 1]
     * @param difference of the mean squares of the cosines to the long and to the short axis, in [0, 1]
     * @return the distribution; empty where the directions lie in one plane, all directions are the same, or no {@code kappa >= 2 beta}
     *     has the greatest likelihood
     * @throws IllegalArgumentException if a number lies outside its range or the axes are not at right angles
     */
    public static Optional<KentDistribution> ofLikelihood(
            DirectedLine mean, LineOrientation longAxis, double spread, double difference) {
        ExponentialFamily family = new ExponentialFamily() {
            @Override
            public Point at(double p, double q) {
                return point(p, q);
            }

            @Override
            public boolean holds(double p, double q) {
                return p > -1 && Math.abs(q) <= p / 2 + 1;
            }
        };
        return ofMoments(mean, longAxis, spread, difference)
                .flatMap(start -> family.fit(-spread, difference, start.concentration, start.ovalness))
                .flatMap(found -> within(mean, longAxis, Math.max(0, found[0]), Math.max(0, found[1])));
    }

    private static Optional<KentDistribution> within(
            DirectedLine mean, LineOrientation longAxis, double kappa, double beta) {
        return 2 * beta <= kappa && kappa <= GREATEST
                ? Optional.of(new KentDistribution(mean, longAxis, kappa, beta))
                : Optional.empty();
    }

    /** The family in the natural parameters kappa and beta of x - 1 and y^2 - z^2. */
    static ExponentialFamily.Point point(double kappa, double beta) {
        double[] sums = SphereIntegral.overSphere(6, (distance, weight, into) -> {
            double square = distance * (2 - distance);
            double z = Math.abs(beta) * square;
            double part = weight * Math.exp(z - kappa * distance) * ScaledBessel.of(0, z);
            // the averages round the axis of the cosine of the doubled angle and of its square
            double lacking = ScaledBessel.shortfall(z);
            double oval = Math.copySign(square * (1 - lacking), beta);
            double ovalSquare = square * square * (z < 1e-5 ? 0.5 : 1 - (1 - lacking) / z);
            into[0] += part;
            into[1] -= part * distance;
            into[2] += part * oval;
            into[3] += part * distance * distance;
            into[4] -= part * distance * oval;
            into[5] += part * ovalSquare;
        });
        double s = sums[1] / sums[0];
        double t = sums[2] / sums[0];
        return new ExponentialFamily.Point(
                Math.log(2 * Math.PI * sums[0]),
                s,
                t,
                sums[3] / sums[0] - s * s,
                sums[4] / sums[0] - s * t,
                sums[5] / sums[0] - t * t);
    }

    /**
     * The natural logarithm of the constant c.
     *
     * @return ln c; ln 4 pi where the concentration is 0
     */
    public double logConstant() {
        return concentration + point(concentration, ovalness).logConstant();
    }

    /**
     * The density at a direction.
     *
     * @param direction the direction
     * @return probability per steradian
     */
    public double density(DirectedLine direction) {
        Frame frame = Frame.of(Frame.vector(mean), Frame.vector(longAxis));
        Vector vector = Frame.vector(direction);
        Vector apart = vector.minus(frame.first());
        double y = frame.second().dot(vector);
        double z = frame.third().dot(vector);
        double log = point(concentration, ovalness).logConstant();
        return Math.exp(-concentration * apart.dot(apart) / 2 + ovalness * (y * y - z * z) - log);
    }

    /**
     * Draws directions: axes of the Bingham distribution that lies above, which follows from {@code x <= 1 - (1 - x^2) / 2}, accepted and
     * rejected (Kent, Ganeiber and Mardia 2018, from memory).
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
        ProjectedNormal source =
                new ProjectedNormal(concentration / 2 - ovalness, concentration / 2 + ovalness, random);
        Frame frame = Frame.of(Frame.vector(mean), Frame.vector(longAxis));
        return Stream.generate(() -> accepted(source))
                .limit((long) Require.notNegative("count", count, ""))
                .map(drawn -> Frame.direction(frame.at(drawn.north(), drawn.east(), drawn.down())))
                .toList();
    }

    private Vector accepted(ProjectedNormal source) {
        while (true) {
            Vector drawn = source.next();
            // kappa (x - 1) + kappa (1 - x^2) / 2 = -kappa (1 - x)^2 / 2
            double lost = concentration * Math.pow(1 - drawn.north(), 2) / 2;
            if (Math.log(source.uniform()) <= -lost) {
                return drawn;
            }
        }
    }

    /** Its parameters: {@code Kent about arrow 60.0/090.0 (plunge/trend), long axis 0.0/000.0 (plunge/trend), kappa 39.5, beta 4.8}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "Kent about %s, long axis %s, kappa %.4g, beta %.4g",
                mean,
                longAxis,
                concentration,
                ovalness);
    }
}
