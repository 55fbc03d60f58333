package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.orientation.sphere.distribution.FisherDistribution;
import java.util.List;
import java.util.function.DoubleSupplier;
import java.util.random.RandomGenerator;
import java.util.stream.DoubleStream;
import org.apache.commons.math3.distribution.UniformRealDistribution;
import org.apache.commons.math3.stat.inference.KolmogorovSmirnovTest;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.simple.RandomSource;

/**
 * Tests of whether a sample of directions is Fisher's: whether the angles from the mean are, and whether the sample scatters alike on all sides
 * of it. Fisher's cone is for samples that pass all three.
 */
public final class DirectionTests {

    private DirectionTests() {}

    /**
     * Whether the angles from the mean are those of Fisher's distribution: the greatest difference D between their shares and the distribution
     * of the greatest likelihood (Fisher and Best 1984; Fisher, Lewis and Embleton 1987; from memory). The probability is the share of samples
     * drawn from that distribution, and fitted in turn, whose D is at least so great.
     *
     * @param sample two directions or more that have a mean and are not all the same
     * @param runs how many samples are drawn, 1 or more; 999 is a fair number
     * @param seed any number; the same seed gives the same probability
     * @return D and its probability
     * @throws IllegalArgumentException if the sample has no mean or no spread, or there are no runs
     */
    public static TestOutcome fisherColatitudes(DirectionSample sample, int runs, long seed) {
        requireScatter(sample);
        FisherDistribution fit = sample.fisher().orElseThrow();
        UniformRandomProvider source = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        RandomGenerator random = source::nextLong;
        return drawn("D", greatest(sample), runs, () -> greatest(DirectionSample.of(fit.draw(sample.size(), random))));
    }

    private static double greatest(DirectionSample sample) {
        Vector mean = sample.sum().unit();
        FisherDistribution fit = sample.fisher().orElseThrow();
        double[] shares = sample.units().stream()
                .mapToDouble(vector -> fit.probabilityWithin(Math.toDegrees(mean.angleTo(vector))))
                .toArray();
        return new KolmogorovSmirnovTest().kolmogorovSmirnovStatistic(new UniformRealDistribution(null, 0, 1), shares);
    }

    /**
     * Whether the directions stand evenly round their mean, whatever their angles from it: Kuiper's V of their bearings round the mean (Fisher,
     * Lewis and Embleton 1987, from memory). The probability is the share of samples with the same angles and with bearings drawn evenly whose
     * V, round their own mean, is at least so great.
     *
     * @param sample two directions or more that have a mean and are not all the same
     * @param runs how many samples are drawn, 1 or more; 999 is a fair number
     * @param seed any number; the same seed gives the same probability
     * @return V and its probability
     * @throws IllegalArgumentException if the sample has no mean or no spread, or there are no runs
     */
    public static TestOutcome symmetryOfBearings(DirectionSample sample, int runs, long seed) {
        requireScatter(sample);
        Vector mean = sample.sum().unit();
        UniformRandomProvider random = RandomSource.XO_RO_SHI_RO_128_PP.create(seed);
        return drawn("V", kuiper(sample.units(), mean), runs, () -> {
            List<Vector> turned = sample.units().stream()
                    .map(vector -> atBearing(vector, mean, 360 * random.nextDouble()))
                    .toList();
            return kuiper(
                    turned, turned.stream().reduce(Vector::plus).orElseThrow().unit());
        });
    }

    private static Vector atBearing(Vector vector, Vector mean, double bearing) {
        Vector one = Unit.across(mean);
        Vector other = mean.cross(one);
        double across = mean.cross(vector).length();
        return mean.times(mean.dot(vector))
                .plus(one.times(across * Degrees.cos(bearing)))
                .plus(other.times(across * Degrees.sin(bearing)));
    }

    private static double kuiper(List<Vector> vectors, Vector mean) {
        Vector one = Unit.across(mean);
        Vector other = mean.cross(one);
        double[] turns = vectors.stream()
                .mapToDouble(vector -> Degrees.azimuth(vector.dot(other), vector.dot(one)) / 360)
                .sorted()
                .toArray();
        double above = 0;
        double below = 0;
        for (int i = 0; i < turns.length; i++) {
            above = Math.max(above, (i + 1.0) / turns.length - turns[i]);
            below = Math.max(below, turns[i] - (double) i / turns.length);
        }
        return above + below;
    }

    /**
     * Whether the directions scatter as far along one axis through the mean as along any other: {@code 2 |sum s^2 exp(2 i b)|^2 / sum s^4} with
     * the sine s of the angle from the mean and the bearing b round it, chi-square with 2 degrees of freedom. It is the test of Fisher's
     * distribution against {@link DirectionSample#kent Kent's} (Kent 1982) with the fourth moment of the sample itself, so that it holds for
     * any distribution alike on all sides of its mean; from 9 directions on. It sees what {@link #symmetryOfBearings} does not, that some
     * bearings hold the far directions, and is blind to three lobes.
     *
     * @param sample two directions or more that have a mean and are not all the same
     * @return the number and its probability
     * @throws IllegalArgumentException if the sample has no mean or no spread
     */
    public static TestOutcome elongation(DirectionSample sample) {
        requireScatter(sample);
        Vector mean = sample.sum().unit();
        Vector one = Unit.across(mean);
        Vector other = mean.cross(one);
        double cosine = 0;
        double sine = 0;
        double fourth = 0;
        for (Vector vector : sample.units()) {
            double x = vector.dot(one);
            double y = vector.dot(other);
            cosine += x * x - y * y;
            sine += 2 * x * y;
            fourth += Math.pow(x * x + y * y, 2);
        }
        double value = 2 * (cosine * cosine + sine * sine) / fourth;
        return new TestOutcome(
                "chi-square", value, "chi-square with 2 degrees of freedom", UpperTail.ofChiSquare(value, 2));
    }

    private static TestOutcome drawn(String statistic, double value, int runs, DoubleSupplier draw) {
        Require.inRange("runs", runs, 1, Integer.MAX_VALUE, "");
        // what only rounding tells apart is as great
        long greater = DoubleStream.generate(draw)
                .limit(runs)
                .filter(other -> other >= value - 1e-12)
                .count();
        return new TestOutcome(statistic, value, runs + " drawn samples", (greater + 1.0) / (runs + 1.0));
    }

    private static void requireScatter(DirectionSample sample) {
        if (sample.fisher().isEmpty()) {
            throw new IllegalArgumentException(
                    "the directions are all the same or cancel out; expected some that differ and have a mean");
        }
    }
}
