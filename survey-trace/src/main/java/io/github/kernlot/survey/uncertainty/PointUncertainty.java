package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Arrays;
import java.util.Locale;
import java.util.OptionalDouble;

/** How well place and direction of a hole are known at one depth, to first order. */
public final class PointUncertainty {

    /** The standard deviation of an angle that may be anything: 360 / sqrt(12). */
    private static final double ANY_ANGLE = 360 / Math.sqrt(12);

    private final double depth;
    private final HoleDirection direction;
    private final double[][] joint;

    PointUncertainty(double depth, HoleDirection direction, double[][] joint) {
        this.depth = depth;
        this.direction = direction;
        this.joint = joint;
    }

    /**
     * The depth asked.
     *
     * @return metres along the hole
     */
    public double depth() {
        return depth;
    }

    /**
     * The direction of the hole there.
     *
     * @return the direction, from grid north
     */
    public HoleDirection direction() {
        return direction;
    }

    /**
     * The covariance of the place.
     *
     * @return north, east, down, metres squared
     */
    public Covariance place() {
        return Covariance.corner(joint, 0);
    }

    /**
     * The covariance of the unit vector along the hole. It lies across the hole: along it there is none.
     *
     * @return north, east, down, radians squared for small angles
     */
    public Covariance tangent() {
        return Covariance.corner(joint, 3);
    }

    /**
     * The covariance of place and direction together.
     *
     * @return six rows of six: place north, east, down in metres, then the unit vector north, east, down; a copy
     */
    public double[][] joint() {
        return Arrays.stream(joint).map(double[]::clone).toArray(double[][]::new);
    }

    /**
     * The standard deviation of the inclination. In a vertical hole it is that of the direction towards the recorded azimuth.
     *
     * @return degrees
     */
    public double inclinationSigma() {
        return across(Vector.ofInclination(direction.inclination() + 90, direction.azimuth()));
    }

    /**
     * The standard deviation of the direction sideways, to the right of the high side, an angle in the ground.
     *
     * @return degrees, defined in a vertical hole too
     */
    public double lateralSigma() {
        return across(Vector.ofAzimuth(direction.azimuth() + 90));
    }

    /**
     * The standard deviation of the azimuth.
     *
     * @return degrees; empty where it would be 104 degrees or more, that of an azimuth of which nothing is known, so always in a
     *     vertical hole whose direction is not exact
     */
    public OptionalDouble azimuthSigma() {
        double lateral = lateralSigma();
        double sine = Degrees.sin(direction.inclination());
        return lateral < ANY_ANGLE * sine ? OptionalDouble.of(lateral / sine) : OptionalDouble.empty();
    }

    private double across(Vector side) {
        return Math.toDegrees(Math.sqrt(Math.max(0, tangent().between(side, side))));
    }

    /**
     * The standard deviation of the place in the horizontal plane: the root of the sum of its two variances.
     *
     * @return metres
     */
    public double horizontalSigma() {
        return place().horizontalSigma();
    }

    /**
     * The standard deviation of the elevation.
     *
     * @return metres
     */
    public double verticalSigma() {
        return place().verticalSigma();
    }

    /** One line: {@code at 120.00 m: horizontal 1.23 m, vertical 0.45 m, inclination 0.3, azimuth 1.1 degrees (sigma)}. */
    @Override
    public String toString() {
        OptionalDouble azimuth = azimuthSigma();
        return String.format(
                Locale.ROOT,
                "at %.2f m: horizontal %.2f m, vertical %.2f m, inclination %.2f, azimuth %s (sigma)",
                depth,
                horizontalSigma(),
                verticalSigma(),
                inclinationSigma(),
                azimuth.isPresent() ? String.format(Locale.ROOT, "%.2f degrees", azimuth.getAsDouble()) : "undefined");
    }
}
