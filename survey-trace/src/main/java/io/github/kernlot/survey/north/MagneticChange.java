package io.github.kernlot.survey.north;

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
     * The drift of magnetic north.
     *
     * @return degrees a year, east positive; NaN never: 0 where the field has no horizontal part
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
     * @return nanotesla a year
     */
    public double total() {
        return (field.north() * north + field.east() * east + field.down() * down) / field.total();
    }

    /**
     * The change of the dip.
     *
     * @return degrees a year, positive where the field becomes steeper downwards
     */
    public double dip() {
        double total = field.total();
        return Math.toDegrees((field.horizontal() * down - field.down() * horizontal()) / (total * total));
    }

    /** The drift: {@code declination +0.12, dip -0.03 degrees a year}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "declination %+.3f, dip %+.3f degrees a year", declination(), dip());
    }
}
