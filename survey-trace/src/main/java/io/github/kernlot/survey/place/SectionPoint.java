package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A place as a vertical section shows it.
 *
 * @param along how far it lies along the section from its origin, metres, positive towards the section's azimuth
 * @param offset how far it lies off the section, metres, positive to the right looking along the azimuth
 * @param elevation metres, positive up
 */
public record SectionPoint(double along, double offset, double elevation) {

    /**
     * Checks the coordinates.
     *
     * @throws IllegalArgumentException if one is not finite
     */
    public SectionPoint {
        along = Require.finite("along", along, "m");
        offset = Require.finite("offset", offset, "m");
        elevation = Require.finite("elevation", elevation, "m");
    }

    /** The coordinates with their names. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "along %.2f, offset %.2f, elevation %.2f m", along, offset, elevation);
    }
}
