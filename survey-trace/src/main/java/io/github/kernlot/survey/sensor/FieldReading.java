package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * What three magnetometers of a tool read: the magnetic field in the axes of the tool, nanotesla.
 *
 * @param x across the tool, 90 degrees anticlockwise of y looking down-hole
 * @param y across the tool
 * @param z along the tool, down-hole
 */
public record FieldReading(double x, double y, double z) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite, or all are 0
     */
    public FieldReading {
        x = Require.finite("magnetometer x", x, "nT");
        y = Require.finite("magnetometer y", y, "nT");
        z = Require.finite("magnetometer z", z, "nT");
        Require.positive("total of the magnetometers", Math.hypot(Math.hypot(x, y), z), "nT");
    }

    /**
     * A reading in nanotesla.
     *
     * @param x across the tool
     * @param y across the tool, 90 degrees clockwise of x looking down-hole
     * @param z along the tool, down-hole
     * @return the reading
     * @throws IllegalArgumentException if a number is not finite, or all are 0
     */
    public static FieldReading of(double x, double y, double z) {
        return new FieldReading(x, y, z);
    }

    /**
     * The reading of a tool whose magnetometers count the other way, in the sense that this library takes: one that points along the
     * field reads +B.
     *
     * @return the reading with its three signs changed
     */
    public FieldReading negated() {
        return new FieldReading(-x, -y, -z);
    }

    /**
     * The total, to be compared with the field of the place.
     *
     * @return nanotesla, above 0
     */
    public double total() {
        return Math.hypot(Math.hypot(x, y), z);
    }

    Vector vector() {
        return new Vector(x, y, z);
    }

    /** The three: {@code 12000.0, -31000.5, 40211.3 nT}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.1f, %.1f, %.1f nT", x, y, z);
    }
}
