package io.github.kernlot.orientation.rock;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.List;
import java.util.Locale;
import java.util.OptionalDouble;

/**
 * How often a set of structures comes: its linear frequency along the core, and across the set with the bias of the sampling taken
 * out. Needs alphas alone, so that core need not be oriented.
 *
 * @param coreLength length of core on which all members of the set were logged, metres, above 0; core that was lost or too broken to
 *     log does not count
 * @param alphas the alpha of each member that was met, degrees in [0, 90]
 * @param bias the weights
 */
public record SetAlongCore(double coreLength, List<Double> alphas, OrientationBias bias) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if the length is not a finite number above 0, or an alpha lies outside [0, 90]
     */
    public SetAlongCore {
        Require.positive("core length", coreLength, "m");
        alphas = List.copyOf(alphas);
        for (double alpha : alphas) {
            Require.inRange("alpha", alpha, 0, 90, "degrees");
        }
    }

    /**
     * A set along core.
     *
     * @param coreLength metres, above 0
     * @param alphas the alpha of each member that was met, degrees in [0, 90]; may be empty
     * @param bias the weights
     * @return the set
     * @throws IllegalArgumentException if the length is not a finite number above 0, or an alpha lies outside [0, 90]
     */
    public static SetAlongCore of(double coreLength, List<Double> alphas, OrientationBias bias) {
        return new SetAlongCore(coreLength, alphas, bias);
    }

    /**
     * How many members were met.
     *
     * @return 0 or more
     */
    public int count() {
        return alphas.size();
    }

    /**
     * The linear frequency along the core.
     *
     * @return structures a metre of core
     */
    public double linearFrequency() {
        return count() / coreLength;
    }

    /**
     * The mean spacing along the core.
     *
     * @return metres of core; empty where no member was met
     */
    public OptionalDouble apparentSpacing() {
        return count() == 0 ? OptionalDouble.empty() : OptionalDouble.of(coreLength / count());
    }

    /**
     * The frequency across the set, each member counted by its weight: {@code sum(1 / sin(alpha)) / L}, weights capped.
     *
     * @return structures a metre at right angles to the set; 0 where no member was met, which does not mean that there is none
     */
    public double frequency() {
        return weights() / coreLength;
    }

    /**
     * The standard deviation of the frequency across the set where structures come at random (Poisson): {@code sqrt(sum of squared
     * weights) / L}. It holds nothing of the members that were not seen.
     *
     * @return structures a metre; 0 where no member was met
     */
    public double frequencySigma() {
        double squares = alphas.stream()
                .mapToDouble(alpha -> bias.weight(alpha) * bias.weight(alpha))
                .sum();
        return Math.sqrt(squares) / coreLength;
    }

    /**
     * The mean spacing across the set, the inverse of the frequency; for members of one alpha the spacing along the core times
     * sin(alpha).
     *
     * @return metres at right angles to the set; empty where no member was met
     */
    public OptionalDouble spacing() {
        return count() == 0 ? OptionalDouble.empty() : OptionalDouble.of(coreLength / weights());
    }

    /**
     * How many members have their weight held by the cap. With any, the frequency is a lower bound.
     *
     * @return 0 or more
     */
    public int cappedCount() {
        return (int) alphas.stream().filter(bias::isCapped).count();
    }

    private double weights() {
        return alphas.stream().mapToDouble(bias::weight).sum();
    }

    /** The frequencies, and what the cap held: {@code 12 in 30.00 m: 0.40 a metre of core, 0.61 +- 0.19 across the set}. */
    @Override
    public String toString() {
        if (count() == 0) {
            return String.format(Locale.ROOT, "0 in %.2f m, which does not mean that there is none", coreLength);
        }
        String text = String.format(
                Locale.ROOT,
                "%d in %.2f m: %.2f a metre of core, %.2f +- %.2f across the set",
                count(),
                coreLength,
                linearFrequency(),
                frequency(),
                frequencySigma());
        return cappedCount() == 0
                ? text
                : text + ", " + cappedCount() + " held by the cap (alpha below " + Degrees.text(bias.blindAlpha())
                        + "): a lower bound";
    }
}
