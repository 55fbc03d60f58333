package io.github.kernlot.orientation.internal;

import java.util.Locale;

/** Trigonometry of angles in degrees, reduced exactly before the radians begin, and the wrapping of angles. */
public final class Degrees {

    private static final double RADIANS = Math.PI / 180;

    private Degrees() {}

    /**
     * Sine of an angle in degrees, within 2 ulp; exact at every multiple of 30 where the sine is 0, 1/2 or 1.
     *
     * @param degrees any finite angle
     * @return the sine, never -0.0
     */
    public static double sin(double degrees) {
        double reduced = reduced(degrees);
        int quarter = (int) Math.rint(reduced / 90);
        return quarterTurned(reduced - 90 * quarter, quarter);
    }

    /**
     * Cosine of an angle in degrees, within 2 ulp; exact at every multiple of 30 where the cosine is 0, 1/2 or 1.
     *
     * @param degrees any finite angle
     * @return the cosine, never -0.0
     */
    public static double cos(double degrees) {
        double reduced = reduced(degrees);
        int quarter = (int) Math.rint(reduced / 90);
        return quarterTurned(reduced - 90 * quarter, quarter + 1);
    }

    /** The subtraction of whole quarters is exact below this bound (Sterbenz), and the slow remainder is not needed. */
    private static double reduced(double degrees) {
        return Math.abs(degrees) < 1e9 ? degrees : Math.IEEEremainder(degrees, 360);
    }

    /** sin(90 quarter + rest) with |rest| at most 45. */
    private static double quarterTurned(double rest, int quarter) {
        double value = (quarter & 1) == 0 ? smallSin(rest) : Math.cos(rest * RADIANS);
        if ((quarter & 1) != 0 && Math.abs(rest) == 30) {
            value = Math.sqrt(0.75);
        }
        return ((quarter & 2) == 0 ? value : -value) + 0.0;
    }

    private static double smallSin(double rest) {
        return Math.abs(rest) == 30 ? Math.copySign(0.5, rest) : Math.sin(rest * RADIANS);
    }

    /**
     * Angle of the vector (x, y), counted from x towards y.
     *
     * @param y the component at 90 degrees
     * @param x the component at 0 degrees
     * @return the angle in degrees, in [-180, 180]; 0 for the null vector
     */
    public static double atan2(double y, double x) {
        // of (0.0, -0.0) Math.atan2 makes pi
        return Math.toDegrees(Math.atan2(y + 0.0, x + 0.0)) + 0.0;
    }

    /**
     * Angle of the vector (x, y) as an azimuth.
     *
     * @param y the component at 90 degrees
     * @param x the component at 0 degrees
     * @return the angle in degrees, in [0, 360)
     */
    public static double azimuth(double y, double x) {
        return wrap360(atan2(y, x));
    }

    /**
     * The same angle in [0, 360).
     *
     * @param degrees any finite angle
     * @return the angle in [0, 360), never -0.0
     */
    public static double wrap360(double degrees) {
        double rest = degrees % 360;
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
        double rest = Math.IEEEremainder(degrees, 360);
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
