package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * The gravity and the magnetic field that a tool feels at a place.
 *
 * @param gravity metres per second squared, above 0
 * @param field total intensity of the magnetic field, nanotesla, above 0
 * @param dip the field's angle below the horizontal, degrees in [-89.9, 89.9]: nearer to a magnetic pole there is no azimuth to measure
 */
public record EarthReference(double gravity, double field, double dip) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one lies outside its range
     */
    public EarthReference {
        gravity = Require.positive("gravity", gravity, "m/s2");
        field = Require.positive("magnetic field", field, "nT");
        dip = Require.inRange("dip of the magnetic field", dip, -89.9, 89.9, "degrees");
    }

    /**
     * The horizontal part of the magnetic field, which tells north.
     *
     * @return nanotesla, above 0
     */
    public double horizontalField() {
        return field * Degrees.cos(dip);
    }

    /** The three: {@code 9.8066 m/s2, 50000 nT dipping 72.0}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.4f m/s2, %.0f nT dipping %s", gravity, field, Degrees.text(dip));
    }
}
