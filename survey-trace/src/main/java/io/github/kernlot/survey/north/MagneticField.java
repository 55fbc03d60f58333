package io.github.kernlot.survey.north;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * The magnetic field at a place and a date.
 *
 * @param north component towards true north, nanotesla
 * @param east component towards the east, nanotesla
 * @param down component downwards, nanotesla
 */
public record MagneticField(double north, double east, double down) {

    /**
     * Checks the components.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public MagneticField {
        north = Require.finite("field towards north", north, "nT");
        east = Require.finite("field towards east", east, "nT");
        down = Require.finite("field downwards", down, "nT");
    }

    /**
     * The horizontal part, which a compass obeys.
     *
     * @return nanotesla, 0 or more
     */
    public double horizontal() {
        return Math.hypot(north, east);
    }

    /**
     * The total intensity.
     *
     * @return nanotesla, 0 or more
     */
    public double total() {
        return Math.hypot(horizontal(), down);
    }

    /**
     * The angle of the field below the horizontal, which geomagneticians call inclination.
     *
     * @return degrees in [-90, 90], positive down (in most of the northern hemisphere)
     */
    public double dip() {
        return Degrees.atan2(down, horizontal());
    }

    /**
     * Where magnetic north lies from true north.
     *
     * @return degrees in (-180, 180], east positive; 0 where the field has no horizontal part, and then without a meaning
     */
    public double declination() {
        double angle = Degrees.atan2(east, north);
        return angle == -180 ? 180 : angle;
    }

    /**
     * How far a compass can be trusted here.
     *
     * @return the reach of the horizontal part
     */
    public CompassReach compass() {
        return CompassReach.of(horizontal());
    }

    /** The usual elements: {@code 25000 nT horizontal, 57000 nT total, dip -64.10, declination 0.50}. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.0f nT horizontal, %.0f nT total, dip %.2f, declination %.2f",
                horizontal(),
                total(),
                dip() + 0.0,
                declination());
    }
}
