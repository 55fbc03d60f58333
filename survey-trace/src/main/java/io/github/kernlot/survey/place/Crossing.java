package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.Position;
import java.util.Locale;

/**
 * A place where a hole meets a plane. Where the hole lies in the plane along a stretch, it is the whole stretch.
 *
 * @param first the point where they meet, or the upper end of the stretch
 * @param last the lower end of the stretch; {@code first} where there is none
 * @param alpha the angle between hole and plane at the first point, degrees in [0, 90]: the alpha that core of this plane should
 *     show
 * @param meeting how they meet
 */
public record Crossing(TracePoint first, TracePoint last, double alpha, Meeting meeting) {

    /**
     * The depth where they meet, or where the stretch begins.
     *
     * @return metres along the hole
     */
    public double depth() {
        return first.depth();
    }

    /**
     * The place where they meet, or where the stretch begins.
     *
     * @return the place on the grid
     */
    public Position position() {
        return first.position();
    }

    /**
     * The direction of the hole where they meet.
     *
     * @return the direction
     */
    public HoleDirection direction() {
        return first.direction();
    }

    /**
     * Whether any of it lies beyond the stations.
     *
     * @return true above the first station and below the last
     */
    public boolean extrapolated() {
        return first.extrapolated() || last.extrapolated();
    }

    /** How, where and under which angle they meet. */
    @Override
    public String toString() {
        String how =
                switch (meeting) {
                    case CROSSES -> "crosses at " + first;
                    case TOUCHES -> "touches at " + first;
                    case LIES_IN -> String.format(Locale.ROOT, "lies in it to %.2f m from %s", last.depth(), first);
                };
        return String.format(Locale.ROOT, "%s, alpha %.1f", how, alpha);
    }
}
