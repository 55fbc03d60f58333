package io.github.kernlot.survey.uncertainty;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Vector;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;

/** The stations of a hole, the arcs between them, and where a depth falls among them. */
final class StationChain {

    final SurveyErrorSetup setup;
    private final HoleTrace trace;
    private final double[] depths;
    private final Vector[] tangents;
    private final SurveyedPoint[] points;
    private final int[] legs;
    private final ArcDerivative[] arcs;

    StationChain(HoleTrace trace, SurveyErrorSetup setup) {
        this.trace = trace;
        this.setup = setup;
        List<SurveyStation> stations = stations(trace);
        depths = stations.stream().mapToDouble(SurveyStation::depth).toArray();
        points = stations.stream()
                .map(station -> point(station.depth(), station.direction(), setup.toolfaceAt(station.depth())))
                .toArray(SurveyedPoint[]::new);
        tangents = Arrays.stream(points).map(SurveyedPoint::tangent).toArray(Vector[]::new);
        legs = Arrays.stream(depths).mapToInt(setup::legAt).toArray();
        arcs = new ArcDerivative[depths.length - 1];
        Arrays.setAll(arcs, i -> arc(i, 1));
    }

    /** The stations of a trace; of a branch those of its parent down to the kick-off, which counts as one of them, and its own. */
    private static List<SurveyStation> stations(HoleTrace trace) {
        if (trace.parent().isEmpty()) {
            return trace.survey().stations();
        }
        HoleTrace parent = trace.parent().get();
        double kickOff = trace.kickOffDepth().orElseThrow();
        List<SurveyStation> all = new ArrayList<>(stations(parent));
        all.removeIf(station -> station.depth() >= kickOff);
        all.add(new SurveyStation(kickOff, parent.directionAt(kickOff)));
        all.addAll(trace.survey().stations());
        return all;
    }

    List<SurveyStation> stations() {
        return stations(trace);
    }

    private SurveyedPoint point(double depth, HoleDirection direction, OptionalDouble toolface) {
        NorthReference north = trace.survey().north();
        boolean toTrue = north.convergence().isPresent();
        boolean toMagnetic = toTrue && north.declination().isPresent();
        double convergence = north.convergence().orElse(0);
        return new SurveyedPoint(
                depth,
                direction,
                trace.displacementAt(depth).down(),
                toTrue ? turned(direction, convergence) : OptionalDouble.empty(),
                toMagnetic ? turned(direction, convergence - north.declination().orElse(0)) : OptionalDouble.empty(),
                toolface,
                setup.earth());
    }

    private static OptionalDouble turned(HoleDirection direction, double angle) {
        return OptionalDouble.of(direction.withAzimuthTurned(angle).azimuth());
    }

    int size() {
        return depths.length;
    }

    double depth(int station) {
        return depths[station];
    }

    Vector tangent(int station) {
        return tangents[station];
    }

    SurveyedPoint point(int station) {
        return points[station];
    }

    int leg(int station) {
        return legs[station];
    }

    /** The whole arc below a station. */
    ArcDerivative arc(int station) {
        return arcs[station];
    }

    private ArcDerivative arc(int station, double fraction) {
        return ArcDerivative.of(
                tangents[station],
                tangents[station + 1],
                depths[station + 1] - depths[station],
                fraction,
                setup.linearisation());
    }

    /** Where a depth falls. */
    Place at(double depth) {
        // it refuses what the trace does not reach
        trace.displacementAt(depth);
        if (depth < depths[0]) {
            return new Place(0, depth / depths[0], null, null);
        }
        int last = depths.length - 1;
        if (depth > depths[last]) {
            HoleDirection direction = points[last].direction();
            return new Place(last, 1, null, point(depth, direction, points[last].toolface()));
        }
        int found = Arrays.binarySearch(depths, depth);
        if (found >= 0) {
            return new Place(found, 1, null, null);
        }
        int upper = -found - 2;
        double fraction = (depth - depths[upper]) / (depths[upper + 1] - depths[upper]);
        return new Place(upper, 1, arc(upper, fraction), null);
    }
}
