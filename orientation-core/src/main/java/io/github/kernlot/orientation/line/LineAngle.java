package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * Where the reference line stands at one depth, and how sure that is.
 *
 * @param frame the core in the ground with its line there
 * @param reference the side that the line angle is counted from
 * @param sigma standard deviation of the line angle in degrees, with the bias that the hole's marks share and without the errors
 *     of the survey
 */
public record LineAngle(CoreFrame frame, WallReference reference, double sigma) {

    /** Below this sharpness of the side no line angle is told: the number would mean nothing. */
    private static final double SHARP_ENOUGH = 1e-6;

    /**
     * Checks the sigma.
     *
     * @throws IllegalArgumentException if sigma is negative or NaN
     */
    public LineAngle {
        sigma = Require.inRange("line sigma", sigma, 0, Double.POSITIVE_INFINITY, "degrees");
    }

    /**
     * Whether the side to count from is sharp enough in the hole for {@link #mean} to mean something. Near vertical it is not
     * (sin I below 1e-6), though the core is oriented all the same.
     *
     * @return false where the mean should not be shown
     */
    public boolean hasMean() {
        return reference.sharpness(frame.direction()) >= SHARP_ENOUGH;
    }

    /**
     * The line angle x.
     *
     * @return clockwise from the reference looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the side does not exist in the hole
     */
    public double mean() {
        return frame.lineAngle(reference);
    }

    /** The angle and its sigma: {@code 025.0 from low side, sigma 2.1}. */
    @Override
    public String toString() {
        String angle = hasMean() ? Degrees.azimuthText(mean()) + " from " + reference : "no " + reference;
        return angle + ", sigma " + Degrees.text(sigma);
    }
}
