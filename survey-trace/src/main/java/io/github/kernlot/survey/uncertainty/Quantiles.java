package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Require;
import java.math.BigDecimal;
import java.math.MathContext;
import org.apache.commons.math3.distribution.ChiSquaredDistribution;

/** How many sigmas hold a share of a normal distribution. */
final class Quantiles {

    private Quantiles() {}

    /**
     * The radius, in sigmas, of the interval, disc or ball that holds a share: the root of the quantile of chi-square.
     *
     * @param confidence the share, within [0.001, 0.999999]
     * @param dimensions 1, 2 or 3
     */
    static double radius(double confidence, int dimensions) {
        double share = Require.inRange("confidence", confidence, 0.001, 0.999999, "");
        return Math.sqrt(new ChiSquaredDistribution(null, dimensions).inverseCumulativeProbability(share));
    }

    /** A share in percent, without needless zeros: 95, 99.7. */
    static String percent(double confidence) {
        return BigDecimal.valueOf(confidence)
                .movePointRight(2)
                .round(new MathContext(6))
                .stripTrailingZeros()
                .toPlainString();
    }
}
