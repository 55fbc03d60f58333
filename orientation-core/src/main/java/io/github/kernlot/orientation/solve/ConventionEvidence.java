package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.List;
import java.util.Locale;

/**
 * How well one way of reading a log fits a known fabric.
 *
 * @param conventions the conventions that come to the same and that no data can tell apart, such as a line on the high side read to
 *     the down-hole end and a line on the low side read to the up-hole end
 * @param logLikelihood the natural logarithm of the density of all readings
 * @param meanMisfit the mean angle between the poles as read so and that of the fabric, degrees in [0, 90]
 * @param probability beside the other ways, all alike beforehand, in [0, 1]
 */
public record ConventionEvidence(
        List<ReadingConvention> conventions, double logLikelihood, double meanMisfit, double probability) {

    /** Keeps the list for itself. */
    public ConventionEvidence {
        conventions = List.copyOf(conventions);
    }

    /**
     * The convention that stands for all that come to the same: the one read with a look down-hole and the line on the low side.
     *
     * @return the first of the conventions
     */
    public ReadingConvention convention() {
        return conventions.get(0);
    }

    /** The convention with its evidence. */
    @Override
    public String toString() {
        return convention() + ": misfit " + Degrees.text(meanMisfit) + ", log likelihood "
                + Degrees.text(logLikelihood) + ", probability "
                + String.format(Locale.ROOT, "%.3f", probability);
    }
}
