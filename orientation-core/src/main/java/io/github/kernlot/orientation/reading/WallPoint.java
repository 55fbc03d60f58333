package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * A point on the wall of core, where a trace was seen.
 *
 * @param angle clockwise looking down-hole, from the reference line, degrees in [0, 360)
 * @param depth along the core, growing down-hole, from any point that all of a reading share, metres in [-100 000, 100 000]
 */
public record WallPoint(double angle, double depth) {

    static final double DEEPEST = 100_000;

    /**
     * Checks both numbers.
     *
     * @throws IllegalArgumentException if the angle lies outside [0, 360] or the depth outside its range; an angle of 360 becomes 0
     */
    public WallPoint {
        angle = Require.azimuth("angle on the wall", angle);
        depth = Require.inRange("depth", depth, -DEEPEST, DEEPEST, "m");
    }

    /**
     * A point by its angle and its depth.
     *
     * @param angle clockwise looking down-hole, from the reference line, degrees in [0, 360]
     * @param depth along the core, metres in [-100 000, 100 000]
     * @return the point
     * @throws IllegalArgumentException if the angle or the depth lies outside its range
     */
    public static WallPoint of(double angle, double depth) {
        return new WallPoint(angle, depth);
    }

    /**
     * A point by its angle and its distance along the core, as it is read with a ruler.
     *
     * @param angle clockwise looking down-hole, from the reference line, degrees in [0, 360]
     * @param millimetres along the core, growing down-hole, from where the ruler begins
     * @return the point, its depth counted from where the ruler begins
     * @throws IllegalArgumentException if the angle or the distance lies outside its range
     */
    public static WallPoint ofMillimetres(double angle, double millimetres) {
        return new WallPoint(angle, millimetres / 1000);
    }

    /** The angle and the depth: {@code 213.0 at 12.4035 m}. */
    @Override
    public String toString() {
        return Degrees.azimuthText(angle) + " at " + String.format(Locale.ROOT, "%.4f m", depth);
    }
}
