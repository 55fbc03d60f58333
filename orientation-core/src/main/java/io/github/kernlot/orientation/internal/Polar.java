package io.github.kernlot.orientation.internal;

/**
 * How a direction without an arrow is named by two angles: one from an axis or from the plane across it, one round the axis. Where an
 * angle says nothing, or where two say the same, one is chosen here; scalars and columns choose alike.
 *
 * <p>{@code along} is the size of the component along the axis, {@code across} the length of the part across it, of a unit vector.
 */
public final class Polar {

    /** Sines below this are rounding: an angle of less than 6e-13 degrees. */
    public static final double ROUNDING = 1e-14;

    private Polar() {}

    /** The angle from the axis, degrees in [0, 90]. */
    public static double fromAxis(double along, double across) {
        if (across < ROUNDING) {
            return 0;
        }
        return along < ROUNDING ? 90 : Degrees.atan2(across, along);
    }

    /** The angle from the plane across the axis, degrees in [0, 90]. */
    public static double fromPlane(double along, double across) {
        if (across < ROUNDING) {
            return 90;
        }
        return along < ROUNDING ? 0 : Degrees.atan2(along, across);
    }

    /**
     * The angle round the axis, degrees in [0, 360).
     *
     * @param y the component at 90 degrees, of the end of the direction that is named
     * @param x the component at 0 degrees
     * @return the angle; 0 for a direction along the axis, and below 180 for one across it, whose two ends are alike
     */
    public static double round(double y, double x, double along, double across) {
        if (across < ROUNDING) {
            return 0;
        }
        double azimuth = Degrees.azimuth(y, x);
        return along < ROUNDING && azimuth >= 180 ? azimuth - 180 : azimuth;
    }

    /**
     * The trend of the pole of a plane.
     *
     * @param dip of the plane, degrees in [0, 90]
     * @param dipDirection of the plane, degrees in [0, 360)
     * @return degrees in [0, 360); 0 for a horizontal plane, below 180 for a vertical one
     */
    public static double poleTrend(double dip, double dipDirection) {
        if (dip == 0) {
            return 0;
        }
        double trend = Degrees.wrap360(dipDirection + 180);
        return dip == 90 && trend >= 180 ? trend - 180 : trend;
    }
}
