package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import java.util.ArrayList;
import java.util.List;
import java.util.stream.DoubleStream;

/**
 * Where a path meets a plane. The height f above the plane is cut where it could turn; between two cuts it goes one way, so that a
 * change of its sign is one crossing and no change is none.
 *
 * <p>On an arc the slope f' = n . t is a sinusoid with half a period of 180 degrees, and a leg turns by 90 at most: f' has one zero
 * there where its signs at the ends differ, and else none. On a curve on a cylinder f' is followed down to where it is surely not
 * zero or f is flat, see {@link Turns#on}.
 */
final class PlaneSearch {

    static final double TOLERANCE = 1e-9;
    private static final double LEAST_STRETCH = 0.01;

    private final HoleTrace trace;
    private final Legs legs;
    private final Vector normal;
    private final double offset;
    private final double tolerance;

    /** The plane of all ways w with {@code normal . w = offset}; the normal is a unit vector. */
    PlaneSearch(HoleTrace trace, Legs legs, Vector normal, double offset) {
        this(trace, legs, normal, offset, TOLERANCE);
    }

    PlaneSearch(HoleTrace trace, Legs legs, Vector normal, double offset, double tolerance) {
        this.trace = trace;
        this.legs = legs;
        this.normal = normal;
        this.offset = offset;
        this.tolerance = tolerance;
    }

    /** How far from a plane a place may lie that was meant to be on it, the coordinates being doubles. */
    static double roundingOf(Position... places) {
        double rounding = TOLERANCE;
        for (Position place : places) {
            double largest = Math.max(
                    Math.max(Math.abs(place.easting()), Math.abs(place.northing())), Math.abs(place.elevation()));
            rounding = Math.max(rounding, 4 * Math.ulp(largest));
        }
        return rounding;
    }

    private double height(double depth) {
        return normal.dot(legs.way(depth)) - offset;
    }

    private double slope(double depth) {
        return normal.dot(legs.tangent(depth));
    }

    /** The depths between which the height goes one way, with the heights there; where it comes near the plane, or all. */
    private void cut(boolean all, List<Double> depths, List<Double> heights) {
        double above = normal.dot(legs.wayTo(0)) - offset;
        depths.add(legs.from());
        heights.add(above);
        for (int leg = 0; leg < legs.count(); leg++) {
            double below = normal.dot(legs.wayTo(leg + 1)) - offset;
            double length = legs.depth(leg + 1) - legs.depth(leg);
            // to the plane and on to the other end is at least |above| + |below|
            boolean far = !all && above * below > 0 && Math.abs(above) + Math.abs(below) > length + 2 * tolerance;
            if (!far) {
                for (double turn : Turns.on(legs, leg, this::slope)) {
                    depths.add(turn);
                    heights.add(height(turn));
                }
            }
            depths.add(legs.depth(leg + 1));
            heights.add(below);
            above = below;
        }
    }

    List<Crossing> crossings() {
        List<Double> depths = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        cut(false, depths, heights);
        List<Crossing> found = new ArrayList<>();
        int last = depths.size() - 1;
        for (int i = 0; i <= last; i++) {
            if (side(heights.get(i)) == 0) {
                int end = i;
                while (end < last && side(heights.get(end + 1)) == 0) {
                    end++;
                }
                found.add(meeting(depths, heights, i, end));
                i = end;
            } else if (i < last && side(heights.get(i)) * side(heights.get(i + 1)) < 0) {
                found.add(crossing(depths.get(i), depths.get(i + 1)));
            }
        }
        return List.copyOf(found);
    }

    /** The depths, by increasing depth, where {@code zero} less the height is a whole multiple of a step. */
    double[] levels(double zero, double step) {
        List<Double> depths = new ArrayList<>();
        List<Double> heights = new ArrayList<>();
        cut(true, depths, heights);
        DoubleStream.Builder found = DoubleStream.builder();
        for (int i = 1; i < depths.size(); i++) {
            double above = depths.get(i - 1);
            double below = depths.get(i);
            double start = (zero - heights.get(i - 1)) / step;
            double end = (zero - heights.get(i)) / step;
            long first = (long) Math.ceil(Math.min(start, end));
            long last = (long) Math.floor(Math.max(start, end));
            for (long k = first; k <= last; k++) {
                double level = zero - (start < end ? k : first + last - k) * step;
                double from = heights.get(i - 1) - level;
                double to = heights.get(i) - level;
                if (from * to < 0) {
                    found.add(Turns.zero(depth -> height(depth) - level, above, below));
                } else if (from == 0) {
                    found.add(above);
                }
            }
        }
        return found.build().distinct().toArray();
    }

    private int side(double height) {
        return Math.abs(height) <= tolerance ? 0 : height > 0 ? 1 : -1;
    }

    /** Where the path is on the plane at the cuts from {@code first} to {@code last} and at neither neighbour of them. */
    private Crossing meeting(List<Double> depths, List<Double> heights, int first, int last) {
        if (depths.get(last) - depths.get(first) >= LEAST_STRETCH) {
            return crossing(depths.get(first), depths.get(last), Meeting.LIES_IN);
        }
        boolean inside = first > 0 && last < depths.size() - 1;
        if (inside && side(heights.get(first - 1)) * side(heights.get(last + 1)) < 0) {
            return crossing(depths.get(first - 1), depths.get(last + 1));
        }
        int nearest = first;
        for (int i = first + 1; i <= last; i++) {
            if (Math.abs(heights.get(i)) < Math.abs(heights.get(nearest))) {
                nearest = i;
            }
        }
        return crossing(depths.get(nearest), depths.get(nearest), Meeting.TOUCHES);
    }

    private Crossing crossing(double above, double below) {
        double depth = Turns.zero(this::height, above, below);
        return crossing(depth, depth, Meeting.CROSSES);
    }

    private Crossing crossing(double from, double to, Meeting meeting) {
        TracePoint first = TracePoint.at(trace, from);
        Vector tangent = Legs.vector(first.direction());
        // alpha = atan2(|n . t|, |n x t|)
        double alpha = Math.toDegrees(
                Math.atan2(Math.abs(normal.dot(tangent)), normal.cross(tangent).length()));
        return new Crossing(first, to == from ? first : TracePoint.at(trace, to), alpha, meeting);
    }
}
