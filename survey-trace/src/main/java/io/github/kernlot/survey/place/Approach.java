package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Displacement;
import java.util.Locale;

/**
 * Where two holes come closest to each other.
 *
 * @param here the point of the hole that was asked
 * @param there the point of the other hole
 * @param separation the way from here to there
 */
public record Approach(TracePoint here, TracePoint there, Displacement separation) {

    private static final double PARALLEL = 1e-6;

    /**
     * The depth in the hole that was asked.
     *
     * @return metres along that hole
     */
    public double depth() {
        return here.depth();
    }

    /**
     * The depth in the other hole.
     *
     * @return metres along the other hole
     */
    public double otherDepth() {
        return there.depth();
    }

    /**
     * How far the two points lie from each other, measured between the axes of the holes.
     *
     * @return metres
     */
    public double distance() {
        return separation.length();
    }

    /**
     * Whether the two holes run side by side there, so that other depths may be as near: the two directions, or one and the
     * reverse of the other, agree within 1e-6 degrees. Holes that share their upper part answer true.
     *
     * @return true where they run side by side
     */
    public boolean isParallel() {
        double angle = here.direction().angleTo(there.direction());
        return angle < PARALLEL || angle > 180 - PARALLEL;
    }

    /**
     * Whether one of the two points lies beyond the stations of its hole.
     *
     * @return true above the first station and below the last
     */
    public boolean extrapolated() {
        return here.extrapolated() || there.extrapolated();
    }

    /** The distance, the two depths and what to know of them. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT,
                "%.2f m between %.2f m here and %.2f m there%s%s",
                distance(),
                depth(),
                otherDepth(),
                isParallel() ? ", running side by side" : "",
                extrapolated() ? ", extrapolated" : "");
    }
}
