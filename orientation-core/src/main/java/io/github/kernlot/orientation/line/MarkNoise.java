package io.github.kernlot.orientation.line;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.internal.Require;

/**
 * What makes a mark miss the side that it stands for, cause by cause, each as one standard deviation.
 *
 * @param sensor error across the hole of the sensor that finds the side, degrees; it turns the mark by its value over the
 *     {@linkplain WallReference#sharpness sharpness} of the side, 1/sin I for the low side
 * @param level error of the jig's level when the mark is drawn, degrees
 * @param pencilMillimetres error by the width of the pencil (about half of it), mm round the core
 * @param transferMillimetres carrying the mark to the line, mm round the core
 * @param bias error that all marks of a hole share, degrees: no comparison of marks shows it
 */
public record MarkNoise(
        double sensor, double level, double pencilMillimetres, double transferMillimetres, double bias) {

    /**
     * Checks the values.
     *
     * @throws IllegalArgumentException if one is negative or not finite, or if the first four are all 0
     */
    public MarkNoise {
        sensor = Require.notNegative("sensor sigma", sensor, "degrees");
        level = Require.notNegative("level sigma", level, "degrees");
        pencilMillimetres = Require.notNegative("pencil sigma", pencilMillimetres, "mm");
        transferMillimetres = Require.notNegative("transfer sigma", transferMillimetres, "mm");
        bias = Require.notNegative("bias sigma", bias, "degrees");
        Require.positive("sum of the mark's sigmas", sensor + level + pencilMillimetres + transferMillimetres, "");
    }

    /**
     * Values to begin with, assumed and not measured, to be replaced by one's own: sensor 1 degree, level 2 degrees, pencil 0.5
     * mm, transfer 1 mm, bias 1 degree.
     *
     * @return the assumed noise
     */
    public static MarkNoise assumed() {
        return new MarkNoise(1, 2, 0.5, 1, 1);
    }

    /**
     * The standard deviation of one mark, without the bias: the causes in quadrature, mm as degrees by 360 mm / (pi diameter).
     *
     * @param direction the direction of the hole at the mark
     * @param side the side that the mark stands for
     * @param diameter the diameter of the core at the mark
     * @return degrees
     * @throws IllegalArgumentException if the side does not exist in that direction
     */
    public double sigma(HoleDirection direction, WallReference side, CoreDiameter diameter) {
        double sharpness = side.sharpness(direction);
        if (!(sharpness > 0)) {
            throw new IllegalArgumentException("there is no " + side + " in a hole of " + direction);
        }
        double across = Math.hypot(diameter.toDegrees(pencilMillimetres), diameter.toDegrees(transferMillimetres));
        return Math.hypot(Math.hypot(sensor / sharpness, level), across);
    }
}
