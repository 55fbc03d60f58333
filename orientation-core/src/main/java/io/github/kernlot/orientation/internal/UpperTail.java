package io.github.kernlot.orientation.internal;

import org.apache.commons.math3.special.Beta;
import org.apache.commons.math3.special.Gamma;

/** How probable numbers at least so great are, with all their digits where they are nearly impossible. */
public final class UpperTail {

    private UpperTail() {}

    /**
     * By the incomplete gamma function.
     *
     * @param value any number but NaN
     * @param freedom degrees of freedom, above 0
     * @return a probability in [0, 1]
     */
    public static double ofChiSquare(double value, double freedom) {
        if (value <= 0 || value == Double.POSITIVE_INFINITY) {
            return value <= 0 ? 1 : 0;
        }
        return Gamma.regularizedGammaQ(freedom / 2, value / 2);
    }

    /**
     * By the incomplete beta function, whose arguments change places for the other tail.
     *
     * @param value any number but NaN
     * @param above degrees of freedom of the variance above the line, above 0
     * @param below those of the variance below it, above 0
     * @return a probability in [0, 1]
     */
    public static double ofF(double value, double above, double below) {
        if (value <= 0 || value == Double.POSITIVE_INFINITY) {
            return value <= 0 ? 1 : 0;
        }
        return Beta.regularizedBeta(below / (below + above * value), below / 2, above / 2);
    }
}
