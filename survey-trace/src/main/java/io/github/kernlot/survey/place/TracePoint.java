package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.survey.HoleTrace;
import java.util.Locale;

/**
 * A point of a hole.
 *
 * @param depth metres along the hole, 0 or more
 * @param position the place on the grid
 * @param direction the direction of the hole there
 * @param extrapolated whether it lies beyond the stations, above the first or below the last, and so rests on what the hole was
 *     taken to do there
 */
public record TracePoint(double depth, Position position, HoleDirection direction, boolean extrapolated) {

    /**
     * Checks the depth.
     *
     * @throws IllegalArgumentException if the depth is negative or not finite
     */
    public TracePoint {
        depth = Require.notNegative("depth", depth, "m");
    }

    /**
     * The point of a trace at a depth.
     *
     * @param trace the trace
     * @param depth metres along the hole
     * @return the point
     * @throws IllegalArgumentException if the trace does not reach that depth
     */
    public static TracePoint at(HoleTrace trace, double depth) {
        return new TracePoint(depth, trace.positionAt(depth), trace.directionAt(depth), trace.isExtrapolated(depth));
    }

    /** Depth, place and direction, and whether it lies beyond the stations. */
    @Override
    public String toString() {
        return String.format(
                Locale.ROOT, "%.2f m: %s, %s%s", depth, position, direction, extrapolated ? ", extrapolated" : "");
    }
}
