package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * The height of the trace that a plane leaves on the wall of core: how far its down-hole end lies below its up-hole end, along the core.
 * It gives alpha without a protractor, {@code tan(alpha) = D / H}.
 *
 * @param millimetres the height, 0 or more; 0 for a plane at right angles to the core
 * @param core the diameter of the core
 */
public record TraceHeight(double millimetres, CoreDiameter core) {

    /**
     * Checks the height.
     *
     * @throws IllegalArgumentException if it is negative or not finite
     */
    public TraceHeight {
        millimetres = Require.notNegative("height of the trace", millimetres, "mm");
    }

    /**
     * A height that was measured.
     *
     * @param millimetres along the core, 0 or more
     * @param core the diameter of the core
     * @return the height
     * @throws IllegalArgumentException if the height is negative or not finite
     */
    public static TraceHeight ofMillimetres(double millimetres, CoreDiameter core) {
        return new TraceHeight(millimetres, core);
    }

    /**
     * The height that a plane will show: {@code H = D cot(alpha)}.
     *
     * @param alpha acute angle between the plane and the core axis, degrees above 0 and up to 90
     * @param core the diameter of the core
     * @return the height
     * @throws IllegalArgumentException if alpha lies outside its range, or is 0 (or so near that no number holds the height): such a plane
     *     runs along the core and its trace has no ends
     */
    public static TraceHeight ofAlpha(double alpha, CoreDiameter core) {
        double checked = Require.inRange("alpha", alpha, 0, 90, "degrees");
        double height = core.millimetres() * Degrees.cos(checked) / Degrees.sin(checked);
        if (!(height < Double.POSITIVE_INFINITY)) {
            throw new IllegalArgumentException(
                    "alpha is " + alpha + " degrees: the plane runs along the core and its trace has no finite height");
        }
        return new TraceHeight(height, core);
    }

    /**
     * The angle between the plane and the core axis.
     *
     * @return degrees in (0, 90]
     */
    public double alpha() {
        return Degrees.atan2(core.millimetres(), millimetres);
    }

    /**
     * The standard deviation of alpha, to first order: {@code sin^2(alpha) / D} for each millimetre of height and
     * {@code sin(alpha) cos(alpha) / D} for each of diameter.
     *
     * @param heightSigmaMillimetres standard deviation of the height, 0 or more
     * @param diameterSigmaMillimetres standard deviation of the diameter, 0 or more
     * @return degrees, 0 or more
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public double alphaSigma(double heightSigmaMillimetres, double diameterSigmaMillimetres) {
        double ofHeight = Require.notNegative("sigma of the height", heightSigmaMillimetres, "mm");
        double ofDiameter = Require.notNegative("sigma of the diameter", diameterSigmaMillimetres, "mm");
        double sine = Degrees.sin(alpha());
        double cosine = Degrees.cos(alpha());
        return Math.toDegrees(sine * Math.hypot(sine * ofHeight, cosine * ofDiameter) / core.millimetres());
    }

    /** The height and what it means: {@code 47.6 mm on 47.6 mm core, alpha 45.0}. */
    @Override
    public String toString() {
        return Degrees.text(millimetres) + " mm on " + core + " core, alpha " + Degrees.text(alpha());
    }
}
