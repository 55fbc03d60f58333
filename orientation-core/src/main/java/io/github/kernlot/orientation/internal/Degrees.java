package io.github.kernlot.orientation.internal;

import java.util.Locale;

/** Trigonometry of angles in degrees, reduced exactly before the radians begin, and the wrapping of angles. */
public final class Degrees {

    private Degrees() {}

    /**
     * Sine of an angle in degrees, within 2 ulp; exact at every multiple of 30 where the sine is 0, 1/2 or 1.
     *
     * @param degrees any finite angle
     * @return the sine, never -0.0
     */
    public static double sin(double degrees) {
        double reduced = reduced(degrees);
        double quarters = DegreeKernel.quarters(reduced);
        double rest = DegreeKernel.rest(reduced, quarters);
        double part = DegreeKernel.partOfTurn(quarters);
        return DegreeKernel.sin(DegreeKernel.sinOfRest(rest), DegreeKernel.cosOfRest(rest), part) + 0.0;
    }

    /**
     * Cosine of an angle in degrees, within 2 ulp; exact at every multiple of 30 where the cosine is 0, 1/2 or 1.
     *
     * @param degrees any finite angle
     * @return the cosine, never -0.0
     */
    public static double cos(double degrees) {
        double reduced = reduced(degrees);
        double quarters = DegreeKernel.quarters(reduced);
        double rest = DegreeKernel.rest(reduced, quarters);
        double part = DegreeKernel.partOfTurn(quarters);
        return DegreeKernel.cos(DegreeKernel.sinOfRest(rest), DegreeKernel.cosOfRest(rest), part) + 0.0;
    }

    /**
     * The same angle, or one that differs by whole turns, small enough that the subtraction of whole quarters is exact (Sterbenz).
     *
     * @param degrees any finite angle
     * @return an angle below 1e9 in size
     */
    public static double reduced(double degrees) {
        return Math.abs(degrees) < 1e9 ? degrees : Math.IEEEremainder(degrees, 360);
    }

    /**
     * Angle of the vector (x, y), counted from x towards y, within 2.5 ulp.
     *
     * @param y the component at 90 degrees
     * @param x the component at 0 degrees
     * @return the angle in degrees, in [-180, 180]; 0 for the null vector
     */
    public static double atan2(double y, double x) {
        double up = Math.abs(y);
        double along = Math.abs(x);
        if (!isOrdinary(up + along)) {
            return unusualAtan2(y, x);
        }
        double octant = DegreeKernel.octant(up, along);
        double beyond = DegreeKernel.atan(DegreeKernel.slope(up, along, octant));
        return side(y) * DegreeKernel.halfTurn(side(x), octant, beyond) + 0.0;
    }

    /**
     * Angle of the vector (x, y) as an azimuth, within 2.5 ulp.
     *
     * @param y the component at 90 degrees
     * @param x the component at 0 degrees
     * @return the angle in degrees, in [0, 360)
     */
    public static double azimuth(double y, double x) {
        double up = Math.abs(y);
        double along = Math.abs(x);
        if (!isOrdinary(up + along)) {
            return wrap360(unusualAtan2(y, x));
        }
        double octant = DegreeKernel.octant(up, along);
        double beyond = DegreeKernel.atan(DegreeKernel.slope(up, along, octant));
        double angle = DegreeKernel.azimuth(side(y), side(x), octant, beyond);
        return angle == 360 ? 0.0 : angle + 0.0;
    }

    private static boolean isOrdinary(double sum) {
        return sum > 0 && sum < 0x1p1020;
    }

    /** The null vector, NaN, infinity, and what becomes infinity on the way. */
    private static double unusualAtan2(double y, double x) {
        if (y == 0 && x == 0) {
            return 0;
        }
        if (!(Double.isFinite(y) && Double.isFinite(x))) {
            return Math.toDegrees(Math.atan2(y, x));
        }
        // the sign of a number that vanishes on the way still counts
        double angle = atan2(0x1p-10 * Math.abs(y), 0x1p-10 * x);
        return y < 0 ? -angle : angle;
    }

    /** -1 below zero, else 1, without a branch. */
    private static double side(double component) {
        return Math.copySign(1.0, component + 0.0);
    }

    /**
     * The same angle in [0, 360).
     *
     * @param degrees any finite angle
     * @return the angle in [0, 360), never -0.0
     */
    public static double wrap360(double degrees) {
        // the remainder is slow, and the angle itself where that is small
        double rest = Math.abs(degrees) < 360 ? degrees : degrees % 360;
        if (rest < 0) {
            rest += 360;
        }
        return rest == 360 ? 0.0 : rest + 0.0;
    }

    /**
     * The same angle in (-180, 180].
     *
     * @param degrees any finite angle
     * @return the angle in (-180, 180], never -0.0
     */
    public static double wrap180(double degrees) {
        double rest = Math.abs(degrees) <= 180 ? degrees : Math.IEEEremainder(degrees, 360);
        return rest == -180 ? 180.0 : rest + 0.0;
    }

    /**
     * An azimuth as a geologist writes it: three digits before the point and one after, {@code 007.5}.
     *
     * @param azimuth an angle in [0, 360)
     * @return the text, from 000.0 to 359.9
     */
    public static String azimuthText(double azimuth) {
        String text = String.format(Locale.ROOT, "%05.1f", azimuth);
        return text.equals("360.0") ? "000.0" : text;
    }

    /**
     * An angle with one digit after the point, {@code 62.4}.
     *
     * @param angle an angle in degrees
     * @return the text, never -0.0
     */
    public static String text(double angle) {
        String text = String.format(Locale.ROOT, "%.1f", angle);
        return text.equals("-0.0") ? "0.0" : text;
    }
}
