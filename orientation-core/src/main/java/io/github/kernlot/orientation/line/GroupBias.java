package io.github.kernlot.orientation.line;

import java.util.Locale;

/**
 * By how much a group of marks is turned against all other marks of the same cores. The marks cannot tell which of the two is off.
 *
 * @param degrees by how much the group's offsets are too great, degrees in (-180, 180]
 * @param standardError by the curvature of the evidence, degrees, above 0
 * @param probabilityOfNone how probable evidence at least so strong is where the group is not turned: the likelihood ratio against
 *     chi squared with one degree of freedom (Wilks 1938, from memory)
 */
public record GroupBias(double degrees, double standardError, double probabilityOfNone) {

    /** Half of the 95 % interval in standard errors. */
    private static final double NORMAL_95 = 1.959963984540054;

    /**
     * The lower end of the 95 % interval.
     *
     * @return degrees, not wrapped
     */
    public double low95() {
        return degrees - NORMAL_95 * standardError;
    }

    /**
     * The upper end of the 95 % interval.
     *
     * @return degrees, not wrapped
     */
    public double high95() {
        return degrees + NORMAL_95 * standardError;
    }

    /** The bias with its standard error: {@code 7.9 +- 0.8 degrees, p of none 0.0000}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.1f +- %.1f degrees, p of none %.4f", degrees, standardError, probabilityOfNone);
    }
}
