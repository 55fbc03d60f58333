package io.github.kernlot.orientation.reading;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * How well a point on the wall is read.
 *
 * @param depthMillimetres standard deviation along the core, millimetres, 0 or more
 * @param angle standard deviation round the core, degrees, 0 or more
 */
public record WallSigmas(double depthMillimetres, double angle) {

    /**
     * Checks both numbers.
     *
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public WallSigmas {
        depthMillimetres = Require.notNegative("sigma of the depth", depthMillimetres, "mm");
        angle = Require.notNegative("sigma of the angle", angle, "degrees");
    }

    /**
     * Sigmas along and round the core.
     *
     * @param depthMillimetres along the core, millimetres, 0 or more
     * @param angle round the core, degrees, 0 or more
     * @return the sigmas
     * @throws IllegalArgumentException if a sigma is negative or not finite
     */
    public static WallSigmas of(double depthMillimetres, double angle) {
        return new WallSigmas(depthMillimetres, angle);
    }

    /**
     * The same length along and round the core, as of a pencil mark.
     *
     * @param millimetres on the wall, 0 or more
     * @param core the diameter of the core
     * @return the sigmas
     * @throws IllegalArgumentException if the length is negative or not finite
     */
    public static WallSigmas onWall(double millimetres, CoreDiameter core) {
        return new WallSigmas(millimetres, core.toDegrees(millimetres));
    }

    WallSigmas times(double factor) {
        return new WallSigmas(depthMillimetres * factor, angle * factor);
    }

    /** Both: {@code 0.50 mm along and 1.20 degrees round the core}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f mm along and %.2f degrees round the core", depthMillimetres, angle);
    }
}
