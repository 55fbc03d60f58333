package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.internal.Degrees;
import java.util.Locale;

/**
 * One of the places where a known fabric may put the reference line.
 *
 * @param carriedAngle where the line lies, clockwise from the line of the hole's carried frame looking down-hole, degrees in [0, 360)
 * @param weight how probable this place is beside the others, in (0, 1]
 * @param sigma standard deviation of the line about this place, degrees
 */
public record FabricLineMode(double carriedAngle, double weight, double sigma) {

    /** The angle, weight and sigma: {@code 146.7 in the carried frame, weight 1.00, sigma 3.2}. */
    @Override
    public String toString() {
        return Degrees.azimuthText(carriedAngle) + " in the carried frame, weight "
                + String.format(Locale.ROOT, "%.2f", weight) + ", sigma " + Degrees.text(sigma);
    }
}
