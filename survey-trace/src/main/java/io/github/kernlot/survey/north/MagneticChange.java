package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * How the magnetic field of a place changes.
 *
 * @param field the field at the date
 * @param north change of the component towards north, nanotesla a year
 * @param east change of the component towards the east, nanotesla a year
 * @param down change of the component downwards, nanotesla a year
 */
public record MagneticChange(MagneticField field, double north, double east, double down) {

    /**
     * Checks the changes.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public MagneticChange {
        north = Require.finite("change towards north", north, "nT a year");
        east = Require.finite("change towards east", east, "nT a year");
        down = Require.finite("change downwards", down, "nT a year");
    }

    /**
     * The drift of magnetic north.
     *
     * @return degrees a year, east positive; 0 where the field has no horizontal part
     */
    public double declination() {
        double horizontal = field.horizontal();
        return horizontal == 0
                ? 0
                : Math.toDegrees((field.north() * east - field.east() * north) / (horizontal * horizontal));
    }

    /**
     * The change of the horizontal part.
     *
     * @return nanotesla a year
     */
    public double horizontal() {
        double horizontal = field.horizontal();
        return horizontal == 0 ? Math.hypot(north, east) : (field.north() * north + field.east() * east) / horizontal;
    }

    /**
     * The change of the total intensity.
     *
     * @return nanotesla a year; 0 where there is no field
     */
    public double total() {
        double total = field.total();
        return total == 0 ? 0 : (field.north() * north + field.east() * east + field.down() * down) / total;
    }

    /**
     * The change of the dip.
     *
     * @return degrees a year, positive where the field becomes steeper downwards; 0 where there is no field
     */
    public double dip() {
        double total = field.total();
        return total == 0
                ? 0
                : Math.toDegrees((field.horizontal() * down - field.down() * horizontal()) / (total * total));
    }

    /** The drift: {@code declination +0.12, dip -0.03 degrees a year}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "declination %+.3f, dip %+.3f degrees a year", declination(), dip());
    }
}
