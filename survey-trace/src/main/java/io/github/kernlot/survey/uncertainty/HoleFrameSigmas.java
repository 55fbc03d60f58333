package io.github.kernlot.survey.uncertainty;

import java.util.Locale;

/**
 * Standard deviations and correlations in the frame of a hole.
 *
 * @param high across the hole towards its high side, metres
 * @param right across the hole to the right (lateral), metres
 * @param along along the hole, down-hole, metres
 * @param highRight correlation of the first two, in [-1, 1]; 0 where one of them does not vary, as in the others
 * @param highAlong correlation of high side and along
 * @param rightAlong correlation of right and along
 */
public record HoleFrameSigmas(
        double high, double right, double along, double highRight, double highAlong, double rightAlong) {

    /** The three sigmas. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "high side %.3f, right %.3f, along %.3f (sigma)", high, right, along);
    }
}
