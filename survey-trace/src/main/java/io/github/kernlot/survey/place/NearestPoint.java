package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.Position;
import java.util.Locale;

/**
 * The point of a hole that is nearest to a place.
 *
 * @param point the point of the hole
 * @param way the way from there to the place
 */
public record NearestPoint(TracePoint point, Displacement way) {

    /**
     * The depth of the point.
     *
     * @return metres along the hole
     */
    public double depth() {
        return point.depth();
    }

    /**
     * The place of the point.
     *
     * @return the place on the grid
     */
    public Position position() {
        return point.position();
    }

    /**
     * How far the hole passes from the place.
     *
     * @return metres
     */
    public double distance() {
        return way.length();
    }

    /**
     * Whether the point lies beyond the stations.
     *
     * @return true above the first station and below the last
     */
    public boolean extrapolated() {
        return point.extrapolated();
    }

    /** The distance and the point. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "%.2f m away at %s", distance(), point);
    }
}
