package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import java.util.List;
import java.util.Locale;

/**
 * The depths of a hole that answer a question: at an elevation, on a plane, nearest to a point or to another hole. It holds the
 * breaks of the trace ready, so one search serves many questions.
 *
 * <p>It looks along the whole reach of the trace, what lies beyond the stations included, as far and in the way that the trace was
 * told to go there; each answer says whether it is extrapolated. {@link #between} looks along a part. Where an answer guides what
 * is drilled, the position uncertainty of both ends belongs to it, and a qualified person decides.
 */
public final class TraceSearch {

    private final HoleTrace trace;
    private final Legs legs;

    private TraceSearch(HoleTrace trace, Legs legs) {
        this.trace = trace;
        this.legs = legs;
    }

    /**
     * A search along the whole reach of a trace.
     *
     * @param trace the trace
     * @return the search
     */
    public static TraceSearch of(HoleTrace trace) {
        return new TraceSearch(trace, Legs.of(trace, 0, trace.reach()));
    }

    /**
     * The same search along a part of the hole.
     *
     * @param from where the part begins, metres along the hole
     * @param to where it ends, metres along the hole, not above {@code from}
     * @return the search
     * @throws IllegalArgumentException if the trace does not reach a depth, or {@code to} is less than {@code from}
     */
    public TraceSearch between(double from, double to) {
        double checked = Require.inRange("from", from, 0, trace.reach(), "m");
        return new TraceSearch(trace, Legs.of(trace, checked, Require.inRange("to", to, checked, trace.reach(), "m")));
    }

    /**
     * The trace that is searched.
     *
     * @return the trace
     */
    public HoleTrace trace() {
        return trace;
    }

    /**
     * Where the hole has an elevation: each crossing of the horizontal plane there, see {@link #crossings}.
     *
     * @param elevation metres, positive up
     * @return none, one or several by increasing depth; a horizontal stretch at that elevation is one of them, as a whole
     * @throws IllegalArgumentException if the elevation is not finite
     */
    public List<Crossing> atElevation(double elevation) {
        return level(trace.collar().elevation() - Require.finite("elevation", elevation, "m"));
    }

    /**
     * Where the hole has a vertical depth below the collar: each crossing of the horizontal plane there, see {@link #crossings}.
     *
     * @param verticalDepth metres below the collar, negative above
     * @return none, one or several by increasing depth
     * @throws IllegalArgumentException if the vertical depth is not finite
     */
    public List<Crossing> atVerticalDepth(double verticalDepth) {
        return level(Require.finite("vertical depth", verticalDepth, "m"));
    }

    private List<Crossing> level(double down) {
        return new PlaneSearch(trace, legs, Vector.DOWN, down).crossings();
    }

    /**
     * Where the hole meets a plane. The depth of a crossing is exact to 1e-9 m divided by the sine of alpha. A hole that comes
     * within 1e-9 m of the plane (or 4 units in the last place of the coordinates, if that is more) without going through touches
     * it; one that stays within that for a centimetre or more lies in it, which is told as one stretch.
     *
     * @param through a place on the plane
     * @param plane the orientation of the plane
     * @return none, one or several by increasing depth
     */
    public List<Crossing> crossings(Position through, PlaneOrientation plane) {
        Vector normal = Vector.ofInclination(plane.dip(), plane.dipDirection() + 180);
        Vector way = Legs.vector(through.minus(trace.collar()));
        return new PlaneSearch(trace, legs, normal, normal.dot(way), PlaneSearch.roundingOf(through, trace.collar()))
                .crossings();
    }

    /**
     * The point of the hole that is nearest to a place. Its depth is refined to where the distance no longer falls; no other point is
     * nearer by more than 1e-6 m. Of several that are as near within 1e-9 m, it is the one of least depth.
     *
     * @param place the place
     * @return the point and the way from it to the place
     */
    public NearestPoint nearestTo(Position place) {
        Vector way = Legs.vector(place.minus(trace.collar()));
        ApproachSearch.Link link = new ApproachSearch(legs, Legs.ofPoint(way)).closest();
        return new NearestPoint(
                TracePoint.at(trace, link.depth()), Legs.displacement(way.minus(legs.way(link.depth()))));
    }

    /**
     * Where this hole comes closest to another one. The depths are refined to where the distance no longer falls; no other two
     * points are closer by more than 1e-6 m. Of several places that are as close within 1e-9 m, it is the one of least depth in this
     * hole: of two branches with the same upper part it is the beginning of what they share. Ask {@link #between} for the part below.
     *
     * @param other a search along the other hole, or along a part of it
     * @return both points and the way between them
     */
    public Approach closestTo(TraceSearch other) {
        Vector apart = Legs.vector(other.trace.collar().minus(trace.collar()));
        Legs others = other.legs.movedBy(apart);
        ApproachSearch.Link link = new ApproachSearch(legs, others).closest();
        return new Approach(
                TracePoint.at(trace, link.depth()),
                TracePoint.at(other.trace, link.otherDepth()),
                Legs.displacement(others.way(link.otherDepth()).minus(legs.way(link.depth()))));
    }

    /** The trace and the depths that are searched. */
    @Override
    public String toString() {
        return String.format(Locale.ROOT, "search from %.2f to %.2f m of the %s", legs.from(), legs.to(), trace);
    }
}
