package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.uncertainty.Covariance;
import java.util.Locale;

/**
 * How well the direction of a hole and the roll of a tool are known from a reading, to the first order in the sensors' errors, by exact
 * derivatives. The attitude as a whole is known in every hole, vertical ones included: an error of it is a small rotation, of which
 * {@link #rotation} is the covariance. Only its reading as azimuth and roll from the high side fails in a vertical hole.
 *
 * <p>With d, e and n the unit vectors down, east and north and H the horizontal field, errors dg and db turn the attitude by
 * {@code -(d x dg) / G + d (tan(dip) dg.e / G - db.e / H)}, docs/north.md section 5.
 */
public final class AttitudeUncertainty {

    /** The axis of the tool in the axes of the tool. */
    private static final Vector ALONG = new Vector(0, 0, 1);

    private final Vector north;
    private final Vector east;
    private final Vector down;
    private final double gravity;
    private final double horizontalField;
    private final double tangentOfDip;
    private final SensorSigmas sigmas;

    AttitudeUncertainty(SensorReading reading, SensorSigmas sigmas) {
        this.north = reading.north();
        this.east = reading.east();
        this.down = reading.down();
        this.gravity = reading.gravity().total();
        this.horizontalField = reading.field().vector().dot(north);
        this.tangentOfDip = reading.field().vector().dot(down) / horizontalField;
        this.sigmas = sigmas;
    }

    /**
     * The standard deviation of the inclination.
     *
     * @return degrees; in a vertical hole that of the tilt to any one side
     */
    public double inclinationSigma() {
        return degrees(right());
    }

    /**
     * The standard deviation of the azimuth from magnetic north, by the sensors alone.
     *
     * @return degrees; infinite where the tool hangs exactly vertical and the sensors err
     */
    public double azimuthSigma() {
        return degrees(highSide()) == 0 ? 0 : degrees(highSide()) / across();
    }

    /**
     * The standard deviation of the direction's swing to the side: of the azimuth, times sin I.
     *
     * @return degrees, finite in every hole
     */
    public double sidewaysSigma() {
        return degrees(highSide());
    }

    /**
     * The standard deviation of the roll from the high or the low side.
     *
     * @return degrees; infinite where the tool hangs exactly vertical and the sensors err
     */
    public double rollSigma() {
        // roll turns with the tool about its axis, less cos I times the azimuth; only gravity is left of both
        Vector turned = highSide().times(down.down()).plus(ALONG.times(across()));
        double sigma = degrees(turned);
        return sigma == 0 ? 0 : sigma / across();
    }

    /**
     * The standard deviation of the roll from north.
     *
     * @return degrees; infinite where the hole runs exactly along magnetic north and the sensors err
     */
    public double rollFromNorthSigma() {
        double sharpness = Math.hypot(north.north(), north.east());
        Vector towards =
                sharpness == 0 ? new Vector(0, 1, 0) : new Vector(north.north(), north.east(), 0).times(1 / sharpness);
        double sigma = degrees(towards.times(-north.down()).plus(ALONG.times(sharpness)));
        return sigma == 0 ? 0 : sigma / sharpness;
    }

    /**
     * The covariance of the unit vector along the hole, the azimuths from magnetic north.
     *
     * @return without a unit, finite in every hole
     */
    public Covariance tangent() {
        return covariance(ALONG.cross(north), ALONG.cross(east), ALONG.cross(down));
    }

    /**
     * The covariance of the small rotation that takes the true attitude to the measured one, along magnetic north, east and down.
     *
     * @return radians squared, finite in every hole
     */
    public Covariance rotation() {
        return covariance(north, east, down);
    }

    private Covariance covariance(Vector a, Vector b, Vector c) {
        return new Covariance(
                covariance(a, a),
                covariance(b, b),
                covariance(c, c),
                covariance(a, b),
                covariance(a, c),
                covariance(b, c));
    }

    private double across() {
        return Math.hypot(down.north(), down.east());
    }

    /** The high side in the axes of the tool; in a vertical hole, where all sides are alike, one of them. */
    private Vector highSide() {
        return across() == 0 ? new Vector(0, 1, 0) : new Vector(-down.north(), -down.east(), 0).times(1 / across());
    }

    private Vector right() {
        return ALONG.cross(highSide());
    }

    private double degrees(Vector axis) {
        return Math.toDegrees(Math.sqrt(covariance(axis, axis)));
    }

    /** The covariance of the rotations about two axes of the tool. */
    private double covariance(Vector one, Vector other) {
        Vector gravityOfOne = byGravity(one);
        Vector gravityOfOther = byGravity(other);
        Vector fieldOfOne = byField(one);
        Vector fieldOfOther = byField(other);
        return sum(gravityOfOne, gravityOfOther, sigmas.gravityAcross(), sigmas.gravityAlong())
                + sum(fieldOfOne, fieldOfOther, sigmas.fieldAcross(), sigmas.fieldAlong());
    }

    private static double sum(Vector one, Vector other, double across, double along) {
        return (one.north() * other.north() + one.east() * other.east()) * across * across
                + one.down() * other.down() * along * along;
    }

    /** How far each accelerometer's error turns the tool about an axis. */
    private Vector byGravity(Vector axis) {
        return down.cross(axis).plus(east.times(tangentOfDip * axis.dot(down))).times(1 / gravity);
    }

    /** How far each magnetometer's error turns the tool about an axis. */
    private Vector byField(Vector axis) {
        return east.times(-axis.dot(down) / horizontalField);
    }

    /** The three sigmas. */
    @Override
    public String toString() {
        return "inclination sigma " + text(inclinationSigma()) + ", azimuth sigma " + text(azimuthSigma())
                + ", roll sigma " + text(rollSigma()) + " degrees";
    }

    private static String text(double sigma) {
        return Double.isInfinite(sigma) ? "unbounded" : String.format(Locale.ROOT, "%.3f", sigma);
    }
}
