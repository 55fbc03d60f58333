package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * The horizontal straight line from the collar to a point of the hole.
 *
 * @param distance metres, 0 or more
 * @param bearing clockwise from grid north, degrees in [0, 360); 0 and without meaning where the distance is 0
 */
public record Closure(double distance, double bearing) {

    /**
     * Checks both.
     *
     * @throws IllegalArgumentException if the distance is negative or not finite, or the bearing outside [0, 360]; 360 becomes 0
     */
    public Closure {
        distance = Require.notNegative("distance", distance, "m");
        bearing = Require.azimuth("bearing", bearing);
    }

    /** Distance and bearing: {@code 33.45 m towards 035.6}; straight below the collar the distance alone. */
    @Override
    public String toString() {
        return distance == 0
                ? "0.00 m"
                : String.format(Locale.ROOT, "%.2f m towards %s", distance, Degrees.azimuthText(bearing));
    }
}
