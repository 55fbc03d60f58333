package io.github.kernlot.orientation;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * The diameter of core, which makes lengths round it angles. The constants are nominal sizes of core cut with wireline barrels; core is
 * worn and ground, so a diameter that was measured is better, and who needs another size gives it.
 *
 * @param millimetres the diameter in millimetres, above 0
 */
public record CoreDiameter(double millimetres) {

    /** Size A, 27.0 mm: the least core in the scope of ISO 10097-2:1999 (1.063 inches). */
    public static final CoreDiameter A = new CoreDiameter(27.0);

    /** Size B, 36.4 mm (from memory; some lists say 36.5). */
    public static final CoreDiameter B = new CoreDiameter(36.4);

    /** Size N, 47.6 mm (1.875 inches, from memory). Not the core of a thin-kerf barrel. */
    public static final CoreDiameter N = new CoreDiameter(47.6);

    /** Size N of a thin-kerf barrel, 50.6 mm (as a rock laboratory lists it). Taken for plain N, angles come out 6 % wrong. */
    public static final CoreDiameter N_THIN_KERF = new CoreDiameter(50.6);

    /** Size H, 63.5 mm: the greatest core in the scope of ISO 10097-2:1999 (2.500 inches). */
    public static final CoreDiameter H = new CoreDiameter(63.5);

    /** Size H of a triple-tube barrel, 61.1 mm (from memory). */
    public static final CoreDiameter H_TRIPLE_TUBE = new CoreDiameter(61.1);

    /** Size P, 85.0 mm (as a rock laboratory lists it). */
    public static final CoreDiameter P = new CoreDiameter(85.0);

    /** Size P of a triple-tube barrel, 83.0 mm (from memory). */
    public static final CoreDiameter P_TRIPLE_TUBE = new CoreDiameter(83.0);

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
