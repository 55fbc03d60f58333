package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HolePath;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.ArrayList;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;
import org.apache.commons.math3.stat.descriptive.DescriptiveStatistics;

/**
 * The spacings between neighbouring members of a set, across its mean plane: {@code |n . (r2 - r1)|} between the places where the hole
 * pierces them.
 *
 * @param spacings one or more, metres, 0 or more, in the order of depth
 */
public record SetSpacing(List<Double> spacings) {

    /**
     * Checks the spacings and keeps the list for itself.
     *
     * @throws IllegalArgumentException if there is no spacing, or one is negative or not finite
     */
    public SetSpacing {
        spacings = List.copyOf(spacings);
        if (spacings.isEmpty()) {
            throw new IllegalArgumentException("there is no spacing; expected one or more");
        }
        for (double spacing : spacings) {
            Require.notNegative("spacing", spacing, "m");
        }
    }

    /**
     * The spacings of a set along a hole.
     *
     * @param path the path of the hole
     * @param depths where the hole meets the members, metres along the hole, two or more, in any order. No core between them may be
     *     lost, or a spacing may span members that nobody saw
     * @param set the mean orientation of the set
     * @return the spacings, one less than depths
     * @throws IllegalArgumentException if there are fewer than two depths, or the path does not reach one
     */
    public static SetSpacing of(HolePath path, List<Double> depths, PlaneOrientation set) {
        Require.inRange("number of depths", depths.size(), 2, Double.MAX_VALUE, "");
        Vector normal = Ways.normal(set);
        List<Displacement> places =
                depths.stream().sorted().map(path::displacementAt).toList();
        List<Double> spacings = new ArrayList<>();
        for (int i = 1; i < places.size(); i++) {
            spacings.add(Math.abs(normal.dot(Ways.between(places.get(i - 1), places.get(i)))));
        }
        return new SetSpacing(spacings);
    }

    /**
     * The mean spacing.
     *
     * @return metres; of a short interval too small, since spacings longer than it are not seen
     */
    public double mean() {
        return statistics().getMean();
    }

    /**
     * The median spacing.
     *
     * @return metres
     */
    public double median() {
        return statistics().getPercentile(50);
    }

    /**
     * The coefficient of variation, standard deviation over mean: about 1 for structures at random, less where they are regular, more
     * where they cluster (common practice, no source).
     *
     * @return 0 or more; empty below three spacings, or where all are 0
     */
    public OptionalDouble variation() {
        return spacings.size() < 3 || mean() == 0
                ? OptionalDouble.empty()
                : OptionalDouble.of(statistics().getStandardDeviation() / mean());
    }

    private DescriptiveStatistics statistics() {
        return new DescriptiveStatistics(
                spacings.stream().mapToDouble(Double::doubleValue).toArray());
    }

    /** The mean and the median: {@code 11 spacings, mean 0.42 m, median 0.38 m}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%d spacings, mean %.2f m, median %.2f m", spacings.size(), mean(), median());
    }
}
