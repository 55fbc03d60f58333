package io.github.kernlot.orientation.internal;

import java.util.Locale;

/** The checks at the door: a positive test, which refuses NaN too, and a message with name, value, unit and range. */
public final class Require {

    private Require() {}

    /**
     * Refuses a value outside a closed range.
     *
     * @param name what the value is
     * @param value the value
     * @param low the least value that is accepted
     * @param high the greatest value that is accepted, Double.MAX_VALUE for any finite one
     * @param unit the unit of the three
     * @return the value, with -0.0 made 0.0
     * @throws IllegalArgumentException if the value lies outside the range or is NaN
     */
    public static double inRange(String name, double value, double low, double high, String unit) {
        if (!(value >= low && value <= high)) {
            String range = high == Double.MAX_VALUE
                    ? number(low) + " or above"
                    : "within [" + number(low) + ", " + number(high) + "]";
            throw refused(name, value, unit, range);
        }
        return value + 0.0;
    }

    /**
     * Refuses a share or a probability that is nothing or all.
     *
     * @param name what the value is
     * @param value the value
     * @return the value
     * @throws IllegalArgumentException if the value is not above 0 and below 1
     */
    public static double share(String name, double value) {
        if (!(value > 0 && value < 1)) {
            throw refused(name, value, "", "above 0 and below 1");
        }
        return value;
    }

    /**
     * Refuses an angle round a circle that is not written as one.
     *
     * @param name what the angle is
     * @param degrees the angle
     * @return the angle in [0, 360): 360 becomes 0
     * @throws IllegalArgumentException if the angle lies outside [0, 360] or is NaN
     */
    public static double azimuth(String name, double degrees) {
        double checked = inRange(name, degrees, 0, 360, "degrees");
        return checked == 360 ? 0.0 : checked;
    }

    /**
     * Refuses NaN and infinity.
     *
     * @param name what the value is
     * @param value the value
     * @param unit its unit
     * @return the value, with -0.0 made 0.0
     * @throws IllegalArgumentException if the value is not finite
     */
    public static double finite(String name, double value, String unit) {
        if (!Double.isFinite(value)) {
            throw refused(name, value, unit, "a finite number");
        }
        return value + 0.0;
    }

    /**
     * Refuses what is not a finite number above zero.
     *
     * @param name what the value is
     * @param value the value
     * @param unit its unit
     * @return the value
     * @throws IllegalArgumentException if the value is zero, negative or not finite
     */
    public static double positive(String name, double value, String unit) {
        if (!(value > 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(name, value, unit, "a finite number above 0");
        }
        return value;
    }

    /**
     * Refuses what is not a finite number, zero or above.
     *
     * @param name what the value is
     * @param value the value
     * @param unit its unit
     * @return the value, with -0.0 made 0.0
     * @throws IllegalArgumentException if the value is negative or not finite
     */
    public static double notNegative(String name, double value, String unit) {
        if (!(value >= 0 && value < Double.POSITIVE_INFINITY)) {
            throw refused(name, value, unit, "a finite number, 0 or above");
        }
        return value + 0.0;
    }

    private static IllegalArgumentException refused(String name, double value, String unit, String expected) {
        String measure = unit.isEmpty() ? number(value) : number(value) + " " + unit;
        return new IllegalArgumentException(name + " is " + measure + "; expected " + expected);
    }

    private static String number(double value) {
        return value == Math.rint(value) && Math.abs(value) < 1e15
                ? String.format(Locale.ROOT, "%.0f", value)
                : Double.toString(value);
    }
}
