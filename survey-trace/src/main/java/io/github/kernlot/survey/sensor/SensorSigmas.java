package io.github.kernlot.survey.sensor;

import io.github.kernlot.orientation.internal.Require;
import java.util.Locale;

/**
 * The standard deviations of a tool's sensors, each independent of the others; those of x and y are alike.
 *
 * @param gravityAcross of the accelerometers x and y, m/s2, 0 or more
 * @param gravityAlong of the accelerometer z, m/s2, 0 or more
 * @param fieldAcross of the magnetometers x and y, nT, 0 or more
 * @param fieldAlong of the magnetometer z, nT, 0 or more
 */
public record SensorSigmas(double gravityAcross, double gravityAlong, double fieldAcross, double fieldAlong) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public SensorSigmas {
        gravityAcross = Require.notNegative("sigma of the accelerometers across", gravityAcross, "m/s2");
        gravityAlong = Require.notNegative("sigma of the accelerometer along", gravityAlong, "m/s2");
        fieldAcross = Require.notNegative("sigma of the magnetometers across", fieldAcross, "nT");
        fieldAlong = Require.notNegative("sigma of the magnetometer along", fieldAlong, "nT");
    }

    /**
     * Sensors that are alike on all three axes.
     *
     * @param gravity of each accelerometer, m/s2, 0 or more
     * @param field of each magnetometer, nT, 0 or more
     * @return the sigmas
     * @throws IllegalArgumentException if one is negative or not finite
     */
    public static SensorSigmas of(double gravity, double field) {
        return new SensorSigmas(gravity, gravity, field, field);
    }

    /** The four with their units. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "accelerometers %s across and %s along m/s2, magnetometers %s across and %s along nT",
                gravityAcross,
                gravityAlong,
                fieldAcross,
                fieldAlong);
    }
}
