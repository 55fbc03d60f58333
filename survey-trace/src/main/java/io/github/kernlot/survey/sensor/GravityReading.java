package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import java.util.Locale;

/**
 * What three accelerometers of a tool at rest read: gravity in the axes of the tool, metres per second squared. By itself it is a core
 * orientation reading: inclination and roll, but no azimuth.
 *
 * <p>Without the tool's errors it is {@code (-G sin I sin r, -G sin I cos r, G cos I)} at inclination I and roll r.
 *
 * @param x across the tool, 90 degrees anticlockwise of y looking down-hole
 * @param y across the tool, the axis whose place is the roll
 * @param z along the tool, down-hole
 */
public record GravityReading(double x, double y, double z) {

    /** The standard acceleration of gravity, metres per second squared. */
    public static final double STANDARD = 9.80665;

    private static final double HALF_TURN = 180;

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is not finite, or all are 0
     */
    public GravityReading {
        x = Require.finite("accelerometer x", x, "m/s2");
        y = Require.finite("accelerometer y", y, "m/s2");
        z = Require.finite("accelerometer z", z, "m/s2");
        Require.positive("total of the accelerometers", Math.hypot(Math.hypot(x, y), z), "m/s2");
    }

    /**
     * A reading in metres per second squared.
     *
     * @param x across the tool
     * @param y across the tool, 90 degrees clockwise of x looking down-hole
     * @param z along the tool, down-hole
     * @return the reading
     * @throws IllegalArgumentException if a number is not finite, or all are 0
     */
    public static GravityReading of(double x, double y, double z) {
        return new GravityReading(x, y, z);
    }

    /**
     * A reading in units of standard gravity, 9.80665 m/s2.
     *
     * @param x across the tool
     * @param y across the tool, 90 degrees clockwise of x looking down-hole
     * @param z along the tool, down-hole
     * @return the reading
     * @throws IllegalArgumentException if a number is not finite, or all are 0
     */
    public static GravityReading ofStandardGravity(double x, double y, double z) {
        return new GravityReading(STANDARD * x, STANDARD * y, STANDARD * z);
    }

    /**
     * What a tool without errors reads.
     *
     * @param direction the direction of the hole; of a vertical one the azimuth is that from which the roll is counted
     * @param roll where the y axis lies, clockwise from the high side looking down-hole, degrees, any finite number
     * @param gravity metres per second squared, above 0
     * @return the reading
     * @throws IllegalArgumentException if a number lies outside its range
     */
    public static GravityReading simulated(HoleDirection direction, double roll, double gravity) {
        Vector down =
                ToolAxes.of(direction, Require.finite("roll", roll, "degrees")).inTool(Vector.DOWN);
        Vector read = down.times(Require.positive("gravity", gravity, "m/s2"));
        return new GravityReading(read.north(), read.east(), read.down());
    }

    /**
     * The reading of a tool whose accelerometers read the force that holds them up, +g where they point straight up, in the sense
     * that this library takes.
     *
     * @return the reading with its three signs changed
     */
    public GravityReading negated() {
        return new GravityReading(-x, -y, -z);
    }

    /**
     * The total, to be compared with the gravity of the place.
     *
     * @return metres per second squared, above 0
     */
    public double total() {
        return Math.hypot(across(), z);
    }

    /**
     * The total in units of standard gravity.
     *
     * @return a number above 0, near 1 for a sound tool at rest
     */
    public double totalInStandardGravity() {
        return total() / STANDARD;
    }

    /**
     * The inclination of the hole.
     *
     * @return from vertically down, degrees in [0, 180]
     */
    public double inclination() {
        return Degrees.atan2(across(), z);
    }

    /**
     * Whether the tool hangs exactly vertical, so that there is no high side to count a roll from.
     *
     * @return true where both accelerometers across read 0
     */
    public boolean isVertical() {
        return x == 0 && y == 0;
    }

    /**
     * The roll of the tool from the high side, also called its gravity toolface.
     *
     * @return where the y axis lies, clockwise from the high side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the tool hangs exactly vertical
     */
    public double roll() {
        if (isVertical()) {
            throw new IllegalArgumentException(
                    "a vertical hole has no high side; with a magnetometer the roll is told from north (rollFromNorth)");
        }
        return Degrees.azimuth(-x, -y);
    }

    /**
     * The roll of the tool from the low side, as a reference line of core is counted.
     *
     * @return where the y axis lies, clockwise from the low side looking down-hole, degrees in [0, 360)
     * @throws IllegalArgumentException if the tool hangs exactly vertical
     */
    public double rollFromLowSide() {
        return Degrees.wrap360(roll() + HALF_TURN);
    }

    /**
     * The standard deviation of the inclination.
     *
     * @param sigmas those of the sensors
     * @return degrees; in a vertical hole that of the tilt to any one side
     */
    public double inclinationSigma(SensorSigmas sigmas) {
        double total = total();
        return Math.toDegrees(
                Math.hypot(z / total * sigmas.gravityAcross(), across() / total * sigmas.gravityAlong()) / total);
    }

    /**
     * The standard deviation of the roll from the high or the low side, the sensors' over G sin I.
     *
     * @param sigmas those of the sensors
     * @return degrees; infinite where the tool hangs exactly vertical and the sensors err
     */
    public double rollSigma(SensorSigmas sigmas) {
        return sigmas.gravityAcross() == 0 ? 0 : Math.toDegrees(sigmas.gravityAcross() / across());
    }

    private double across() {
        return Math.hypot(x, y);
    }

    Vector vector() {
        return new Vector(x, y, z);
    }

    /** The three: {@code -4.2463, -2.4517, 8.4928 m/s2}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.4f, %.4f, %.4f m/s2", x, y, z);
    }
}
