package io.github.kernlot.survey.place;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.function.DoubleFunction;
import java.util.stream.DoubleStream;

/**
 * A path cut into legs on each of which it is smooth, has a known greatest curvature and turns by a right angle at most. Depth is
 * the length of the path.
 */
final class Legs {

    private static final double GREATEST_TURN = Math.PI / 2;

    private final double[] depths;
    private final Vector[] ways;
    private final double[] curvatures;
    private final List<Boolean> plane;
    private final DoubleFunction<Vector> way;
    private final DoubleFunction<Vector> tangent;

    private Legs(
            double[] depths,
            Vector[] ways,
            double[] curvatures,
            List<Boolean> plane,
            DoubleFunction<Vector> way,
            DoubleFunction<Vector> tangent) {
        this.depths = depths;
        this.ways = ways;
        this.curvatures = curvatures;
        this.plane = plane;
        this.way = way;
        this.tangent = tangent;
    }

    /** The legs of a trace between two depths. */
    static Legs of(HoleTrace trace, double from, double to) {
        double[] breaks = DoubleStream.concat(
                        DoubleStream.of(from, to),
                        DoubleStream.of(trace.breakDepths()).filter(depth -> depth > from && depth < to))
                .sorted()
                .toArray();
        List<Double> depths = new ArrayList<>(List.of(from));
        List<Double> curvatures = new ArrayList<>();
        List<Boolean> plane = new ArrayList<>();
        for (int i = 1; i < breaks.length; i++) {
            double length = breaks[i] - breaks[i - 1];
            Bend bend = Bend.of(trace, breaks[i - 1], breaks[i]);
            int parts = Math.max(1, (int) Math.ceil(bend.curvature() * length / GREATEST_TURN));
            for (int part = 1; part <= parts; part++) {
                depths.add(part == parts ? breaks[i] : breaks[i - 1] + length * part / parts);
                curvatures.add(bend.curvature());
                plane.add(bend.isPlane());
            }
        }
        DoubleFunction<Vector> way = depth -> vector(trace.displacementAt(depth));
        return new Legs(
                depths.stream().mapToDouble(Double::doubleValue).toArray(),
                depths.stream().map(way::apply).toArray(Vector[]::new),
                curvatures.stream().mapToDouble(Double::doubleValue).toArray(),
                plane,
                way,
                depth -> vector(trace.directionAt(depth)));
    }

    /** A path of no length. */
    static Legs ofPoint(Vector place) {
        return new Legs(
                new double[] {0, 0},
                new Vector[] {place, place},
                new double[] {0},
                List.of(true),
                depth -> place,
                depth -> new Vector(0, 0, 0));
    }

    static Vector vector(Displacement way) {
        return new Vector(way.north(), way.east(), way.down());
    }

    static Vector vector(HoleDirection direction) {
        return Vector.ofInclination(direction.inclination(), direction.azimuth());
    }

    static Displacement displacement(Vector way) {
        return new Displacement(way.north(), way.east(), way.down());
    }

    Legs movedBy(Vector shift) {
        Vector[] moved = new Vector[ways.length];
        for (int i = 0; i < moved.length; i++) {
            moved[i] = ways[i].plus(shift);
        }
        return new Legs(
                depths, moved, curvatures, plane, depth -> way.apply(depth).plus(shift), tangent);
    }

    int count() {
        return curvatures.length;
    }

    /** The leg that holds a depth. */
    int at(double depth) {
        int found = Arrays.binarySearch(depths, depth);
        return Math.max(0, Math.min(count() - 1, found >= 0 ? found : -found - 2));
    }

    /** Where a leg begins; at the count of legs, where the last one ends. */
    double depth(int leg) {
        return depths[leg];
    }

    /** The way to where a leg begins; at the count of legs, to where the last one ends. */
    Vector wayTo(int leg) {
        return ways[leg];
    }

    /** The greatest curvature on a leg, radians in a metre. */
    double curvature(int leg) {
        return curvatures[leg];
    }

    /** Whether a leg is a circular arc or straight, and not a curve on a cylinder. */
    boolean isPlane(int leg) {
        return plane.get(leg);
    }

    double from() {
        return depths[0];
    }

    double to() {
        return depths[depths.length - 1];
    }

    Vector way(double depth) {
        return way.apply(depth);
    }

    /** The direction at a depth; at a break it may be that of neither side. */
    Vector tangent(double depth) {
        return tangent.apply(depth);
    }
}
