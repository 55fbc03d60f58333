package io.github.kernlot.survey;

import java.util.Locale;

/**
 * How a hole is taken to run from one station to the next. Each method gives a path that is the integral of its direction over the
 * depth; the formulas at the stations are textbook-standard, and those that hold between them are derived in docs/desurvey.md.
 */
public enum DesurveyMethod {
    /**
     * A circular arc from one direction to the other: the default, and the only method that is unchanged when a station is inserted
     * where it answers itself.
     */
    MINIMUM_CURVATURE,
    /**
     * A curve on a vertical cylinder: the inclination grows evenly with depth and the azimuth evenly with the horizontal length, the
     * shorter way round north. Its displacement is the textbook's {@code dN = L (cos I1 - cos I2)(sin A2 - sin A1) / (dI dA)}. It
     * takes the azimuth of a vertical station from its neighbour.
     */
    RADIUS_OF_CURVATURE,
    /**
     * One straight piece along the mean inclination and the mean azimuth, the shorter way round north. It takes the azimuth of a
     * vertical station from its neighbour.
     */
    AVERAGE_ANGLE,
    /** The upper station's direction over the first half of the interval, the lower one's over the second. */
    BALANCED_TANGENTIAL,
    /** The lower station's direction over the whole interval. */
    TANGENTIAL;

    /** The name in words: {@code minimum curvature}. */
    @Override
    public String toString() {
        return name().toLowerCase(Locale.ROOT).replace('_', ' ');
    }
}
