package io.github.kernlot.survey;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * One measurement of the direction of a hole.
 *
 * @param depth metres along the hole from the collar, 0 or more
 * @param direction the direction there
 */
public record SurveyStation(double depth, HoleDirection direction) {

    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public SurveyStation {
        depth = Require.notNegative("depth", depth, "m");
    }

    /**
     * A station from the dip of the hole.
     *
     * @param depth metres along the hole, 0 or more
     * @param dip angle from the horizontal, negative down, degrees in [-90, 90]
     * @param azimuth clockwise from the north of the survey, degrees in [0, 360]
     * @return the station
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static SurveyStation ofDip(double depth, double dip, double azimuth) {
        return new SurveyStation(depth, HoleDirection.ofDip(dip, azimuth));
    }

    /**
     * A station from the inclination of the hole.
     *
     * @param depth metres along the hole, 0 or more
     * @param inclination angle from vertically down, degrees in [0, 180]
     * @param azimuth clockwise from the north of the survey, degrees in [0, 360]
     * @return the station
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static SurveyStation ofInclination(double depth, double inclination, double azimuth) {
        return new SurveyStation(depth, HoleDirection.ofInclination(inclination, azimuth));
    }

    /** The depth and the direction: {@code 30.00 m -60.0/090.0 (dip/azimuth)}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f m %s", depth, direction);
    }
}
