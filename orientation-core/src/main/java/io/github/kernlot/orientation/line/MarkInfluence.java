package io.github.kernlot.orientation.line;

import java.util.Locale;

/**
 * What one mark is worth for the line at one depth.
 *
 * @param mark the mark
 * @param weight how far the line moves for each degree that the mark alone would move it: near 1 where the mark alone decides, near
 *     0 where it is not believed or far away
 */
public record MarkInfluence(OrientationMark mark, double weight) {

    /** The mark and its weight: {@code 0.35 for the mark at 95.88 m}. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f for the mark at %.2f m", weight, mark.depth());
    }
}
