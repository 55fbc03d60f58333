package io.github.kernlot.orientation.sphere.repeat;

import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.sphere.CircularSample;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Function;
import java.util.stream.Collectors;

/**
 * How far readings of the same structures scatter. Beta counts by the square of the cosine of alpha, since an error b of beta turns the pole
 * by b cos alpha: what is read across the core at alpha 85 says little of beta and matters little.
 *
 * <p>Near alpha 0 a reading may come out on either end of the ellipse, and beta then jumps by 180: leave such structures out.
 */
public final class Repeatability {

    private final List<RepeatedReading> readings;
    private final List<List<CorePlane>> groups;

    private Repeatability(List<RepeatedReading> readings, Function<RepeatedReading, List<String>> key) {
        this.readings = readings;
        groups = List.copyOf(readings.stream()
                .collect(Collectors.groupingBy(
                        key, LinkedHashMap::new, Collectors.mapping(RepeatedReading::plane, Collectors.toList())))
                .values());
    }

    /**
     * The scatter of the same reader on the same structure: repeatability.
     *
     * @param readings in any order; structures that a reader read once say nothing here
     * @return the scatter
     */
    public static Repeatability ofSameReader(List<RepeatedReading> readings) {
        return new Repeatability(List.copyOf(readings), reading -> List.of(reading.structure(), reading.reader()));
    }

    /**
     * The scatter of all readers on the same structure: reproducibility, which holds what the readers' habits differ by.
     *
     * @param readings in any order; structures that were read once say nothing here
     * @return the scatter
     */
    public static Repeatability ofAllReaders(List<RepeatedReading> readings) {
        return new Repeatability(List.copyOf(readings), reading -> List.of(reading.structure()));
    }

    /**
     * Sigma of one reading of alpha, pooled over the groups.
     *
     * @return sigma; empty where nothing was read twice
     */
    public Optional<PooledSigma> alpha() {
        double squares = 0;
        int freedom = 0;
        for (List<CorePlane> group : groups) {
            double mean = meanAlpha(group);
            squares += group.stream()
                    .mapToDouble(plane -> (plane.alpha() - mean) * (plane.alpha() - mean))
                    .sum();
            freedom += group.size() - 1;
        }
        return freedom == 0 ? Optional.empty() : Optional.of(new PooledSigma(Math.sqrt(squares / freedom), freedom));
    }

    /**
     * Sigma of one reading of beta, taken as the same at any alpha: the root of {@code sum w S / sum w f} with S the sum of squares about a
     * group's circular mean, f its degrees of freedom and w the square of the cosine of its mean alpha; the degrees of freedom are those of
     * Satterthwaite 1946 (from memory).
     *
     * @return sigma; empty where no beta was read twice
     */
    public Optional<PooledSigma> beta() {
        double squares = 0;
        double freedom = 0;
        double weighted = 0;
        for (List<CorePlane> group : groups) {
            BetaScatter scatter = BetaScatter.of(group);
            squares += scatter.weight * scatter.squares;
            freedom += scatter.weight * scatter.freedom;
            weighted += scatter.weight * scatter.weight * scatter.freedom;
        }
        return freedom == 0
                ? Optional.empty()
                : Optional.of(new PooledSigma(Math.sqrt(squares / freedom), freedom * freedom / weighted));
    }

    /**
     * How far one reader's alpha is from another's.
     *
     * @param first a reader
     * @param second another
     * @return the difference; empty where both read fewer than two structures in common
     */
    public Optional<ReaderBias> alphaBias(String first, String second) {
        List<double[]> weighted = new ArrayList<>();
        common(first, second)
                .forEach(pair -> weighted.add(new double[] {1, meanAlpha(pair.get(0)) - meanAlpha(pair.get(1))}));
        return bias(weighted);
    }

    /**
     * How far one reader's beta is from another's, each structure by the square of the cosine of its alpha. The standard error is for betas
     * whose sigma grows as 1 / cos(alpha); where it is the same at any alpha, an interval of 95 % held 93 % of simulated differences with
     * alphas from 20 to 70, and 90 % with alphas from 5 to 85.
     *
     * @param first a reader
     * @param second another
     * @return the difference; empty where both read beta of fewer than two structures in common, or the differences cancel out round the circle
     */
    public Optional<ReaderBias> betaBias(String first, String second) {
        List<double[]> weighted = new ArrayList<>();
        for (List<List<CorePlane>> pair : common(first, second)) {
            OptionalDouble one = meanBeta(pair.get(0));
            OptionalDouble other = meanBeta(pair.get(1));
            if (one.isPresent() && other.isPresent()) {
                double alpha = (meanAlpha(pair.get(0)) + meanAlpha(pair.get(1))) / 2;
                weighted.add(new double[] {weight(alpha), one.getAsDouble() - other.getAsDouble()});
            }
        }
        return bias(weighted);
    }

    /** For each structure that both read, what each of them read. */
    private List<List<List<CorePlane>>> common(String first, String second) {
        Map<String, List<CorePlane>> ofFirst = planes(first);
        Map<String, List<CorePlane>> ofSecond = planes(second);
        List<List<List<CorePlane>>> pairs = new ArrayList<>();
        ofFirst.forEach((structure, planes) -> {
            List<CorePlane> others = ofSecond.get(structure);
            if (others != null) {
                pairs.add(List.of(planes, others));
            }
        });
        return pairs;
    }

    private Map<String, List<CorePlane>> planes(String reader) {
        return readings.stream()
                .filter(reading -> reading.reader().equals(reader))
                .collect(Collectors.groupingBy(
                        RepeatedReading::structure,
                        LinkedHashMap::new,
                        Collectors.mapping(RepeatedReading::plane, Collectors.toList())));
    }

    /** The weighted mean of differences round the circle, with its standard error. */
    private static Optional<ReaderBias> bias(List<double[]> weighted) {
        double cosine = 0;
        double sine = 0;
        double weights = 0;
        for (double[] one : weighted) {
            cosine += one[0] * Degrees.cos(one[1]);
            sine += one[0] * Degrees.sin(one[1]);
            weights += one[0];
        }
        if (weighted.size() < 2 || Math.hypot(cosine, sine) <= 1e-12 * weights) {
            return Optional.empty();
        }
        double near = Degrees.atan2(sine, cosine);
        double left = 0;
        for (double[] one : weighted) {
            left += one[0] / weights * Degrees.wrap180(one[1] - near);
        }
        double mean = Degrees.wrap180(near + left);
        double squares = 0;
        for (double[] one : weighted) {
            squares += one[0] * Math.pow(Degrees.wrap180(one[1] - mean), 2);
        }
        double error = Math.sqrt(squares / ((weighted.size() - 1) * weights));
        return Optional.of(new ReaderBias(mean, error, weighted.size()));
    }

    private static double meanAlpha(List<CorePlane> planes) {
        return planes.stream().mapToDouble(CorePlane::alpha).average().orElseThrow();
    }

    private static double weight(double alpha) {
        return Degrees.cos(alpha) * Degrees.cos(alpha);
    }

    private static OptionalDouble meanBeta(List<CorePlane> planes) {
        double[] betas = planes.stream()
                .filter(CorePlane::hasBeta)
                .mapToDouble(CorePlane::beta)
                .toArray();
        return betas.length == 0
                ? OptionalDouble.empty()
                : CircularSample.of(betas).mean();
    }

    /** The scatter of beta in one group. */
    private record BetaScatter(double weight, double squares, int freedom) {

        static BetaScatter of(List<CorePlane> group) {
            List<CorePlane> read = group.stream().filter(CorePlane::hasBeta).toList();
            if (read.size() < 2) {
                return new BetaScatter(0, 0, 0);
            }
            // the circular mean first, so that nothing is cut open, then the mean of what is left
            double near = meanBeta(read).orElse(read.get(0).beta());
            double sum = 0;
            double squares = 0;
            for (CorePlane plane : read) {
                double away = Degrees.wrap180(plane.beta() - near);
                sum += away;
                squares += away * away;
            }
            double left = Math.max(0, squares - sum * sum / read.size());
            return new BetaScatter(Repeatability.weight(meanAlpha(read)), left, read.size() - 1);
        }
    }

    /** Both sigmas: {@code alpha 1.9 (1.4 to 2.9 with 95 %), 18.0 degrees of freedom; beta 4.2 (...)}. */
    @Override
    public String toString() {
        return "alpha " + alpha().map(PooledSigma::toString).orElse("read once") + "; beta "
                + beta().map(PooledSigma::toString).orElse("read once");
    }
}
