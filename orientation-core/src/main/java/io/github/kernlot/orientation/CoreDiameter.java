package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * The diameter of core, which makes lengths round it angles.
 *
 * @param millimetres the diameter in millimetres, above 0
 */
public record CoreDiameter(double millimetres) {

    /**
     * Checks the diameter.
     *
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public CoreDiameter {
        Require.positive("core diameter", millimetres, "mm");
    }

    /**
     * A diameter in millimetres.
     *
     * @param millimetres above 0
     * @return the diameter
     * @throws IllegalArgumentException if it is not a finite number above 0
     */
    public static CoreDiameter ofMillimetres(double millimetres) {
        return new CoreDiameter(millimetres);
    }

    /**
     * The angle of a length round the core: 360 s / (pi D).
     *
     * @param arcMillimetres the length along the surface, clockwise looking down-hole, millimetres, any finite number
     * @return the angle in degrees, not wrapped
     * @throws IllegalArgumentException if the length is not finite, or the angle would not be
     */
    public double toDegrees(double arcMillimetres) {
        double angle = Require.finite("arc length", arcMillimetres, "mm") / (Math.PI * millimetres) * 360;
        return Require.finite("angle", angle, "degrees");
    }

    /**
     * The length round the core of an angle.
     *
     * @param degrees any finite angle
     * @return the length along the surface in millimetres
     * @throws IllegalArgumentException if the angle is not finite, or the length would not be
     */
    public double toMillimetres(double degrees) {
        double length = Require.finite("angle", degrees, "degrees") / 360 * (Math.PI * millimetres);
        return Require.finite("arc length", length, "mm");
    }

    /** The diameter with its unit: {@code 63.5 mm}. */
    @Override
    public String toString() {
        return Degrees.text(millimetres) + " mm";
    }
}
