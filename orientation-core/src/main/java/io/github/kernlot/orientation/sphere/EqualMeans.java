package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Eigen;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import io.github.kernlot.orientation.internal.Vector;
import java.util.List;
import java.util.Locale;
import java.util.Optional;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.MatrixUtils;
import org.apache.commons.math3.linear.RealMatrix;

/** Tests of whether several samples have one mean direction, or one mean axis. */
public final class EqualMeans {

    private EqualMeans() {}

    /**
     * {@code F = (N - q) (sum R - R) / ((q - 1) (N - sum R))} with 2 (q - 1) and 2 (N - q) degrees of freedom (Watson and Williams 1956, from
     * memory), for q samples of Fisher's distribution of one concentration, 3 or more.
     *
     * @param samples two or more, one with two directions or more
     * @return F and its probability
     * @throws IllegalArgumentException if there are fewer than two samples or none has two directions
     */
    public static TestOutcome watsonWilliams(List<DirectionSample> samples) {
        require(samples);
        int between = samples.size() - 1;
        int all = samples.stream().mapToInt(DirectionSample::size).sum();
        int within = all - samples.size();
        if (within == 0) {
            throw new IllegalArgumentException("every sample has one direction; expected one with two or more");
        }
        double lengths =
                samples.stream().mapToDouble(DirectionSample::resultant).sum();
        double spread = samples.stream().mapToDouble(s -> s.size() * s.spread()).sum();
        double difference = Math.max(0, lengths - sum(samples).length());
        double ratio = ratio(within * difference, between * spread, 1e-14 * all);
        return new TestOutcome(
                "F",
                ratio,
                "F with " + 2 * between + " and " + 2 * within + " degrees of freedom",
                UpperTail.ofF(ratio, 2.0 * between, 2.0 * within));
    }

    /**
     * {@code V = 2 (sum k R - |sum k R m|)} with the {@link DirectionSample#unbiasedConcentration} k, the sum R and the mean direction m of
     * each sample, chi-square with 2 (q - 1) degrees of freedom (Watson 1983, from memory), for samples of Fisher's distribution whose
     * concentrations differ. Of three simulated samples of one mean it refused 27 % at the level 0.05 with two directions in each, 8 % with
     * 10, 6 % with 80.
     *
     * @param samples two or more, each with two directions or more that differ
     * @return V and its probability
     * @throws IllegalArgumentException if there are fewer than two samples or one has no spread
     */
    public static TestOutcome watsonUnequalConcentrations(List<DirectionSample> samples) {
        require(samples);
        double lengths = 0;
        Vector sum = new Vector(0, 0, 0);
        for (DirectionSample sample : samples) {
            double kappa = sample.unbiasedConcentration().orElse(Double.POSITIVE_INFINITY);
            if (kappa == Double.POSITIVE_INFINITY) {
                throw new IllegalArgumentException(
                        "a sample has no spread; expected two directions or more that differ");
            }
            lengths += kappa * sample.resultant();
            sum = sum.plus(sample.sum().times(kappa));
        }
        double value = Math.max(0, 2 * (lengths - sum.length()));
        return chiSquared("V", value, 2 * (samples.size() - 1));
    }

    /**
     * For samples of any distributions, each with a scatter of its own: the squares of the distances of the sample means from the common
     * direction that makes their sum least, each in sigmas of that sample's own scatter. The least sum is the least eigenvalue of the sum of
     * the inverse covariances (Amaral, Dryden and Wood 2007, from memory). Chi-square with 2 (q - 1) degrees of freedom in large samples; held
     * here against the F that allows for scatters known from small ones (Johansen 1980, The Welch-James approximation, from memory), in the
     * plane that touches the sphere at the common direction.
     *
     * <p>May be trusted from seven directions in each sample on. Of three simulated samples of one mean, kappa 4, 50 and 200, it refused 10 %
     * at the level 0.05 with four directions in each, 6 % with seven and 5 % with ten or more, where chi-square would have refused 33 %, 18 %
     * and 13 %. Of scatter as wide as kappa 1.5 it refuses too seldom, 2 % with ten.
     *
     * @param samples two or more, each with three directions or more that scatter on two sides and have a mean
     * @return F and its probability
     * @throws IllegalArgumentException if there are fewer than two samples or one has no such scatter
     */
    public static TestOutcome ofAnyScatter(List<DirectionSample> samples) {
        require(samples);
        return welchJames(
                samples.stream().map(DirectionSample::meanScatter).toList(),
                samples.stream().map(DirectionSample::size).toList());
    }

    /**
     * As {@link #ofAnyScatter}, of the mean axes of samples of axes. Of axes that hardly cluster, Watson's kappa 1, it refuses too often, 12 % at
     * the level 0.05 with ten in each of three simulated samples and 14 % with 25.
     *
     * @param samples two or more, each with four axes or more that scatter on two sides and have a mean axis
     * @return F and its probability
     * @throws IllegalArgumentException if there are fewer than two samples or one has no such scatter
     */
    public static TestOutcome ofAxes(List<AxisSample> samples) {
        require(samples);
        return welchJames(
                samples.stream().map(sample -> sample.scatter(0)).toList(),
                samples.stream().map(AxisSample::size).toList());
    }

    private static TestOutcome welchJames(List<Optional<TangentScatter>> given, List<Integer> sizes) {
        List<TangentScatter> scatters = given.stream()
                .map(scatter -> scatter.filter(s -> s.shortVariance() > 1e-24)
                        .orElseThrow(() -> new IllegalArgumentException(
                                "a sample is too small, has no mean or does not scatter on two sides")))
                .toList();
        List<RealMatrix> inverses =
                scatters.stream().map(TangentScatter::inverse).toList();
        RealMatrix all = inverses.stream().reduce(RealMatrix::add).orElseThrow();
        List<Vector> axes = Eigen.of(all).vectors();
        RealMatrix plane =
                new Array2DRowRealMatrix(new double[][] {Eigen.components(axes.get(0)), Eigen.components(axes.get(1))});
        RealMatrix inverse = MatrixUtils.inverse(plane.multiply(all).multiply(plane.transpose()));
        double unsure = 0;
        for (int i = 0; i < sizes.size(); i++) {
            RealMatrix own = plane.multiply(inverses.get(i)).multiply(plane.transpose());
            RealMatrix lacking = MatrixUtils.createRealIdentityMatrix(2).subtract(inverse.multiply(own));
            double trace = lacking.getTrace();
            unsure += (lacking.multiply(lacking).getTrace() + trace * trace) / (2 * (sizes.get(i) - 1.0));
        }
        int freedom = 2 * (sizes.size() - 1);
        double others = freedom * (freedom + 2) / (3 * unsure);
        // the least eigenvalue, of which the eigenvalue itself would lose the digits
        double least = scatters.stream()
                .mapToDouble(scatter -> scatter.square(axes.get(2)))
                .sum();
        double ratio = least / (freedom + 2 * unsure - 6 * unsure / (freedom + 2));
        return new TestOutcome(
                "F",
                ratio,
                String.format(Locale.ROOT, "F with %d and %.1f degrees of freedom", freedom, others),
                UpperTail.ofF(ratio, freedom, others));
    }

    private static TestOutcome chiSquared(String name, double value, int freedom) {
        return new TestOutcome(
                name,
                value,
                "chi-square with " + freedom + " degrees of freedom",
                UpperTail.ofChiSquare(value, freedom));
    }

    /** Of two numbers that may both be rounding: no difference is 0 whatever the spread. */
    private static double ratio(double above, double below, double rounding) {
        return above <= rounding ? 0 : above / below;
    }

    private static Vector sum(List<DirectionSample> samples) {
        return samples.stream().map(DirectionSample::sum).reduce(new Vector(0, 0, 0), Vector::plus);
    }

    private static void require(List<?> samples) {
        Require.inRange("number of samples", samples.size(), 2, Double.MAX_VALUE, "");
    }
}
