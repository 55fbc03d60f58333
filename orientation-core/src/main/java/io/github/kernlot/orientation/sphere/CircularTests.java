package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.sphere.distribution.VonMisesDistribution;
import java.util.Arrays;
import java.util.Iterator;
import java.util.List;
import java.util.stream.IntStream;
import java.util.stream.LongStream;
import org.apache.commons.math3.util.CombinatoricsUtils;

/** Tests of whether samples of angles come from one distribution, and of whether one is von Mises'. */
public final class CircularTests {

    /** To so many ways of sharing out the angles every way is tried. */
    private static final double WAYS = 1e6;

    private CircularTests() {}

    /**
     * Watson's two-sample test of whether two samples come from one distribution, of any shape: {@code U2 = n m / N^2 (sum d^2 - (sum d)^2 /
     * N)} with d the difference of the shares of both samples up to each angle (Watson 1962, from memory). The probability counts every way
     * of sharing out the angles where there are a million or fewer, which is exact with ties too, else it is that of large samples, {@code 2
     * sum (-1)^(k - 1) exp(-2 k^2 pi^2 U2)}.
     *
     * @param one a sample
     * @param other another
     * @return U2 and its probability
     */
    public static TestOutcome watsonTwoSamples(CircularSample one, CircularSample other) {
        int n = one.size();
        int all = n + other.size();
        double[] angles = new double[all];
        System.arraycopy(one.degrees(), 0, angles, 0, n);
        System.arraycopy(other.degrees(), 0, angles, n, all - n);
        Integer[] order = IntStream.range(0, all).boxed().toArray(Integer[]::new);
        Arrays.sort(order, (i, j) -> Double.compare(angles[i], angles[j]));
        double[] sorted = Arrays.stream(order).mapToDouble(i -> angles[i]).toArray();
        boolean[] ofOne = new boolean[all];
        for (int i = 0; i < all; i++) {
            ofOne[i] = order[i] < n;
        }
        double value = watson(sorted, ofOne, n);
        if (CombinatoricsUtils.binomialCoefficientDouble(all, n) > WAYS) {
            return new TestOutcome("U2", value, "large samples", ofLargeSamples(value));
        }
        long ways = 0;
        long greater = 0;
        for (Iterator<int[]> way = CombinatoricsUtils.combinationsIterator(all, n); way.hasNext(); ways++) {
            boolean[] shared = new boolean[all];
            for (int place : way.next()) {
                shared[place] = true;
            }
            greater += watson(sorted, shared, n) >= value - 1e-12 ? 1 : 0;
        }
        return new TestOutcome("U2", value, "all " + ways + " ways of sharing out", greater / (double) ways);
    }

    private static double ofLargeSamples(double value) {
        double probability = 0;
        for (int k = 1; k < 50; k++) {
            probability += (k % 2 == 1 ? 2 : -2) * Math.exp(-2 * k * k * Math.PI * Math.PI * value);
        }
        return Math.max(0, Math.min(1, probability));
    }

    private static double watson(double[] sorted, boolean[] ofOne, int n) {
        int all = sorted.length;
        double m = all - n;
        double sum = 0;
        double squares = 0;
        double difference = 0;
        int start = 0;
        for (int i = 0; i < all; i++) {
            difference += ofOne[i] ? 1.0 / n : -1 / m;
            // what is tied is passed at once
            if (i + 1 == all || sorted[i + 1] > sorted[i]) {
                int tied = i + 1 - start;
                sum += tied * difference;
                squares += tied * difference * difference;
                start = i + 1;
            }
        }
        return n * m / ((double) all * all) * (squares - sum * sum / all);
    }

    /**
     * The test of Watson and Wheeler (Mardia's uniform scores) of whether several samples come from one distribution, of any shape: with the
     * ranks spread evenly round the circle, {@code W = 2 (N - 1) / N sum R^2 / n} of the sums' lengths R is chi-square with 2 (q - 1) degrees
     * of freedom (Mardia and Jupp 2000, from memory; without the factor in older books, with it the mean is exact), for ten angles or more in
     * each sample. Tied angles share their mean rank.
     *
     * @param samples two or more
     * @return W and its probability
     * @throws IllegalArgumentException if there are fewer than two samples
     */
    public static TestOutcome watsonWheeler(List<CircularSample> samples) {
        Require.inRange("number of samples", samples.size(), 2, Double.MAX_VALUE, "");
        double[] sorted = samples.stream()
                .flatMapToDouble(sample -> Arrays.stream(sample.degrees()))
                .sorted()
                .toArray();
        double sum = 0;
        for (CircularSample sample : samples) {
            double[] scores = Arrays.stream(sample.degrees())
                    .map(angle -> 360 * rank(sorted, angle) / sorted.length)
                    .toArray();
            double length = CircularSample.of(scores).meanLength();
            sum += sample.size() * length * length;
        }
        double value = 2 * sum * (sorted.length - 1) / sorted.length;
        int freedom = 2 * (samples.size() - 1);
        return new TestOutcome(
                "W",
                value,
                "chi-square with " + freedom + " degrees of freedom",
                UpperTail.ofChiSquare(value, freedom));
    }

    private static double rank(double[] sorted, double angle) {
        long below = Arrays.stream(sorted).filter(other -> other < angle).count();
        long same = Arrays.stream(sorted).filter(other -> other == angle).count();
        return below + (same + 1) / 2.0;
    }

    /**
     * Watson's test of whether a sample comes from a von Mises distribution: U2 of the distribution function fitted by maximum likelihood.
     * The probability is the share of samples that are drawn from the fit, and fitted in turn, whose U2 is at least so great.
     *
     * @param sample two angles or more that are not all the same
     * @param runs how many samples are drawn, 1 or more; 999 is a fair number
     * @param seed any number; the same seed gives the same probability
     * @return U2 and its probability
     * @throws IllegalArgumentException if all angles are the same, or there are no runs
     */
    public static TestOutcome watsonVonMises(CircularSample sample, int runs, long seed) {
        Require.inRange("runs", runs, 1, Integer.MAX_VALUE, "");
        if (sample.concentration() == Double.POSITIVE_INFINITY) {
            throw new IllegalArgumentException("all angles are the same; expected some that differ");
        }
        double value = vonMises(sample);
        VonMisesDistribution fit = new VonMisesDistribution(0, sample.concentration());
        long greater = LongStream.range(0, runs)
                .mapToObj(run -> CircularSample.of(fit.draw(sample.size(), seed * 1_000_003 + run)))
                .filter(drawn -> vonMises(drawn) >= value)
                .count();
        return new TestOutcome("U2", value, runs + " drawn samples", (greater + 1.0) / (runs + 1.0));
    }

    private static double vonMises(CircularSample sample) {
        double mean = sample.mean().orElse(0);
        double kappa = Math.min(1e12, sample.concentration());
        VonMisesDistribution fit = new VonMisesDistribution(mean, kappa);
        double[] shares = Arrays.stream(sample.degrees())
                .map(angle -> fit.probabilityBelow(180 + Degrees.wrap180(angle - mean)))
                .sorted()
                .toArray();
        double middle = Arrays.stream(shares).average().orElseThrow() - 0.5;
        double sum = 1.0 / (12 * shares.length);
        for (int i = 0; i < shares.length; i++) {
            sum += Math.pow(shares[i] - (2 * i + 1.0) / (2 * shares.length) - middle, 2);
        }
        return sum;
    }
}
