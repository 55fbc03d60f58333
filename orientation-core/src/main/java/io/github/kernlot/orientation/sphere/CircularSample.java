package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import java.util.Arrays;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import java.util.stream.DoubleStream;

/** A sample of angles round a circle, taken as independent of each other, and what it says of where they come from. */
public final class CircularSample {

    /** Below this length of the mean vector its direction is rounding. */
    private static final double NO_MEAN = 1e-12;

    private final double[] degrees;
    private final double cosine;
    private final double sine;

    private CircularSample(double[] degrees) {
        this.degrees = degrees;
        double sumCosine = 0;
        double sumSine = 0;
        for (double angle : degrees) {
            sumCosine += Degrees.cos(angle);
            sumSine += Degrees.sin(angle);
        }
        cosine = sumCosine / degrees.length;
        sine = sumSine / degrees.length;
    }

    /**
     * A sample.
     *
     * @param degrees the angles, at least one, each finite and taken modulo 360
     * @return the sample
     * @throws IllegalArgumentException if there is no angle or one is not finite
     */
    public static CircularSample of(double... degrees) {
        if (degrees.length == 0) {
            throw new IllegalArgumentException("the sample is empty; expected one angle or more");
        }
        return new CircularSample(Arrays.stream(degrees)
                .map(angle -> Degrees.wrap360(Require.finite("angle", angle, "degrees")))
                .toArray());
    }

    /**
     * How many angles there are.
     *
     * @return 1 or more
     */
    public int size() {
        return degrees.length;
    }

    /**
     * The direction of the mean vector.
     *
     * @return degrees in [0, 360); empty where the angles cancel out
     */
    public OptionalDouble mean() {
        return meanLength() > NO_MEAN ? OptionalDouble.of(Degrees.azimuth(sine, cosine)) : OptionalDouble.empty();
    }

    /**
     * The length of the mean vector: 1 where all angles are the same.
     *
     * @return a number in [0, 1]
     */
    public double meanLength() {
        return Math.min(1, Math.hypot(sine, cosine));
    }

    /**
     * The circular standard deviation, {@code sqrt(-2 ln R)} with the mean length R (Mardia 1972, from memory).
     *
     * @return degrees; infinite where the angles cancel out
     */
    public double standardDeviation() {
        double length = meanLength();
        return length > NO_MEAN ? Math.toDegrees(Math.sqrt(-2 * Math.log(length))) + 0.0 : Double.POSITIVE_INFINITY;
    }

    /**
     * The concentration kappa of the von Mises distribution that fits best by maximum likelihood, {@code A1(kappa) = R}. It is too
     * high in small samples.
     *
     * @return 0 or more; infinite where all angles are the same
     */
    public double concentration() {
        return VonMises.concentration(meanLength() > NO_MEAN ? meanLength() : 0);
    }

    /**
     * The concentration with less of the bias of small samples: of 15 angles or fewer {@code max(k - 2 / (n k), 0)} for k below 2, else
     * {@code (n - 1)^3 k / (n^3 + n)}, of more {@code k} as it is (Best and Fisher 1981, from memory).
     *
     * @return 0 or more; infinite where all angles are the same
     */
    public double unbiasedConcentration() {
        double kappa = concentration();
        double n = size();
        if (size() > 15 || kappa == 0 || kappa == Double.POSITIVE_INFINITY) {
            return kappa;
        }
        return kappa < 2 ? Math.max(kappa - 2 / (n * kappa), 0) : Math.pow(n - 1, 3) * kappa / (n * n * n + n);
    }

    /**
     * The angular deviation, {@code sqrt(2 (1 - R))} with the mean length R (Zar, from memory).
     *
     * @return degrees in [0, 81.03]
     */
    public double angularDeviation() {
        return Math.toDegrees(Math.sqrt(2 * (1 - meanLength())));
    }

    /**
     * The mean distance round the circle from the median.
     *
     * @return degrees in [0, 90]
     */
    public double meanDeviation() {
        double median = median().from();
        return DoubleStream.of(degrees)
                .map(angle -> Math.abs(Degrees.wrap180(angle - median)))
                .average()
                .orElseThrow();
    }

    /**
     * The circular dispersion, {@code (1 - r) / (2 R^2)} with the mean length R and the second moment r about the mean direction (Fisher
     * 1993, from memory): its root over that of n is the standard error of the mean in large samples, in radians.
     *
     * @return 0 or more; infinite where the angles cancel out
     */
    public double dispersion() {
        double length = meanLength();
        return length > NO_MEAN ? (1 - secondMoment()) / (2 * length * length) : Double.POSITIVE_INFINITY;
    }

    /**
     * The width of the shortest arc that holds all angles.
     *
     * @return degrees in [0, 360)
     */
    public double range() {
        double[] sorted = DoubleStream.of(degrees).sorted().toArray();
        double gap = sorted[0] + 360 - sorted[sorted.length - 1];
        for (int i = 1; i < sorted.length; i++) {
            gap = Math.max(gap, sorted[i] - sorted[i - 1]);
        }
        return 360 - gap;
    }

    /**
     * The sample of the angles times a whole number. Its mean and its length are those of that moment of this sample; times 2 makes of axes,
     * whose two ends are 180 degrees apart, angles that can be averaged.
     *
     * @param factor 1 or more
     * @return the sample
     * @throws IllegalArgumentException if the factor is less than 1
     */
    public CircularSample times(int factor) {
        Require.inRange("factor", factor, 1, Integer.MAX_VALUE, "");
        return of(DoubleStream.of(degrees).map(angle -> factor * angle).toArray());
    }

    /**
     * The mean axis of angles that are either end of an axis, such as strikes.
     *
     * @return degrees in [0, 180); empty where the axes cancel out
     */
    public OptionalDouble meanAxis() {
        OptionalDouble doubled = times(2).mean();
        return doubled.isPresent() ? OptionalDouble.of(doubled.getAsDouble() / 2) : OptionalDouble.empty();
    }

    /**
     * Half the width of the 95 % interval of the mean direction: the greatest angle from the mean that {@link #probabilityOfMean}
     * does not refuse at 5 %.
     *
     * @return degrees; 180 where the sample says nothing of its mean direction
     */
    public double meanRadius95() {
        return MeanTest.of(this).radius(0.95);
    }

    /**
     * How probable a mean at least so far from a given direction is where that is the true mean direction: the test for bias. Three
     * forms, all from memory:
     *
     * <ul>
     *   <li>25 angles or more: the sine of the difference over its standard error from the sample's own second moment, normal
     *       (Fisher 1993, 4.4.4 and 4.4.5), for any distribution that is symmetric about its mean;
     *   <li>fewer, of concentration 2 or more: {@code F = (n - 1) (R - C) / (n - R)} with 1 and n - 1 degrees of freedom (Watson and
     *       Williams 1956), for von Mises;
     *   <li>fewer, of less concentration: the likelihood ratio of Upton 1986, for von Mises; rough below 8 angles.
     * </ul>
     *
     * <p>Of angles that hardly have a mean, kappa 0.1, it refused 7 to 9 % at the level 0.05 with 7 to 50 simulated angles.
     *
     * @param direction the direction in question, any finite angle in degrees
     * @return a probability in [0, 1]; 1 where the sample says nothing of its mean direction, as a single angle does
     * @throws IllegalArgumentException if the direction is not finite
     */
    public double probabilityOfMean(double direction) {
        double away = away(Require.finite("direction", direction, "degrees"));
        return Double.isNaN(away) ? 1 : MeanTest.of(this).probability(away);
    }

    private double away(double direction) {
        return mean().isPresent() ? Math.abs(Degrees.wrap180(mean().getAsDouble() - direction)) : Double.NaN;
    }

    /**
     * How probable a mean vector at least so long is where all directions are equally probable: the Rayleigh test. To 100 angles it is exact
     * within 1e-9 (2e-5 below seven), above by a series of four terms (Greenwood and Durand 1955, from memory).
     *
     * @return a probability in [0, 1]
     */
    public double probabilityOfUniform() {
        return size() <= UniformCircle.EXACT
                ? UniformCircle.probabilityAbove(size(), size() * meanLength())
                : rayleighSeries();
    }

    double rayleighSeries() {
        double n = size();
        double z = n * meanLength() * meanLength();
        double first = (2 * z - z * z) / (4 * n);
        double second = z * (24 + z * (-132 + z * (76 - 9 * z))) / (288 * n * n);
        return Math.max(0, Math.min(1, Math.exp(-z) * (1 + first - second)));
    }

    /**
     * How probable a mean vector that reaches at least so far towards a given direction is where all directions are equally
     * probable: the V test, {@code u = sqrt(2 n) R cos(mean - direction)} taken as normal (Greenwood and Durand 1955, from memory),
     * from 5 angles on. It does not tell whether the mean is that direction: {@link #probabilityOfMean} does.
     *
     * @param direction the direction in question, any finite angle in degrees
     * @return a probability in [0, 1]
     * @throws IllegalArgumentException if the direction is not finite
     */
    public double probabilityOfUniformAgainst(double direction) {
        double checked = Require.finite("direction", direction, "degrees");
        double towards = cosine * Degrees.cos(checked) + sine * Degrees.sin(checked);
        return MeanTest.above(Math.sqrt(2.0 * size()) * towards);
    }

    /**
     * The median direction: where the mean distance round the circle to all angles is least. With an even number of angles it is
     * an arc between two of them as a rule.
     *
     * @return the arc; of several that are apart, the one whose middle is nearest to the mean, or without a mean the first; of angles
     *     that balance all round from the first to the last
     */
    public Arc median() {
        return CircularMedian.of(degrees, mean());
    }

    /**
     * How probable means at least so different are where several samples have the same mean direction: {@code F} of Watson and
     * Williams with the factor 1 + 3 / (8 kappa), kappa of all angles together (Mardia 1972, from memory), for von Mises samples
     * of one concentration, 2 or more.
     *
     * @param samples two samples or more
     * @return a probability in [0, 1]; 1 where no sample has more than one angle
     * @throws IllegalArgumentException if there are fewer than two samples
     */
    public static double probabilityOfEqualMeans(List<CircularSample> samples) {
        Require.inRange("number of samples", samples.size(), 2, Double.MAX_VALUE, "");
        CircularSample all = new CircularSample(samples.stream()
                .flatMapToDouble(sample -> Arrays.stream(sample.degrees))
                .toArray());
        double sum = samples.stream()
                .mapToDouble(sample -> sample.size() * sample.meanLength())
                .sum();
        int between = samples.size() - 1;
        int within = all.size() - samples.size();
        double spread = all.size() - sum;
        double difference = Math.max(0, sum - all.size() * all.meanLength());
        if (within == 0 || difference <= NO_MEAN * all.size()) {
            return 1;
        }
        if (spread <= NO_MEAN * all.size()) {
            return 0;
        }
        double factor = 1 + 3 / (8 * all.concentration());
        double ratio = factor * within * difference / (between * spread);
        return UpperTail.ofF(ratio, between, within);
    }

    /** The angles in their order, each in [0, 360). */
    double[] degrees() {
        return degrees.clone();
    }

    /** The second moment about the mean direction. */
    double secondMoment() {
        double mean = mean().orElse(0);
        return DoubleStream.of(degrees)
                .map(angle -> Degrees.cos(2 * (angle - mean)))
                .average()
                .orElseThrow();
    }

    /** The mean with its interval, the spread and the number: {@code mean 098.8, 95 % within 33.9, spread 35.5, of 8}. */
    @Override
    public String toString() {
        String mean = mean().isPresent()
                ? "mean " + Degrees.azimuthText(mean().getAsDouble()) + ", 95 % within " + Degrees.text(meanRadius95())
                : "no mean";
        return String.format(Locale.ROOT, "%s, spread %s, of %d", mean, Degrees.text(standardDeviation()), size());
    }
}
