package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.DesurveyMethod;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** Searches against a fine grid along the hole, which knows nothing of bounds and slopes. */
class TraceSearchProperties {

    private static final int GRID = 20_000;

    private static HoleTrace wandering(Random random) {
        DesurveyMethod[] methods = DesurveyMethod.values();
        return Traces.of(Traces.wandering(random, 2 + random.nextInt(15)), methods[random.nextInt(methods.length)]);
    }

    private static double last(HoleTrace trace) {
        return Traces.lastDepth(trace.survey().stations());
    }

    private static PlaneOrientation plane(Random random) {
        return switch (random.nextInt(4)) {
            case 0 -> PlaneOrientation.ofDipAndDirection(0, 0);
            case 1 -> PlaneOrientation.ofDipAndDirection(90, 360 * random.nextDouble());
            default -> PlaneOrientation.ofDipAndDirection(90 * random.nextDouble(), 360 * random.nextDouble());
        };
    }

    /** The normal by the textbook: the dip line and the strike line are across it. */
    private static Vector3D normal(PlaneOrientation plane) {
        double dip = Math.toRadians(plane.dip());
        double towards = Math.toRadians(plane.dipDirection());
        Vector3D dipLine =
                new Vector3D(Math.cos(dip) * Math.cos(towards), Math.cos(dip) * Math.sin(towards), Math.sin(dip));
        Vector3D strikeLine = new Vector3D(Math.sin(towards), -Math.cos(towards), 0);
        return dipLine.crossProduct(strikeLine);
    }

    @Property(tries = 300)
    void noCrossingOfAPlaneIsMissed(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = wandering(random);
        double end = last(trace);
        PlaneOrientation plane = plane(random);
        Position through = trace.positionAt(end * random.nextDouble());
        Vector3D normal = normal(plane);
        Vector3D origin = Traces.vector(through.minus(trace.collar()));

        List<Crossing> found = TraceSearch.of(trace).between(0, end).crossings(through, plane);

        for (Crossing crossing : found) {
            Vector3D way = Traces.vector(crossing.position().minus(through));
            assertEquals(0, way.dotProduct(normal), 5e-9, "not on the plane: " + crossing);
            Vector3D tangent = Traces.vector(crossing.direction());
            double alpha = 90
                    - Math.toDegrees(
                            Math.min(Vector3D.angle(tangent, normal), Vector3D.angle(tangent.negate(), normal)));
            assertEquals(alpha, crossing.alpha(), 1e-9);
        }
        double above = height(trace, 0, origin, normal);
        for (int i = 1; i <= GRID; i++) {
            double from = end * (i - 1) / GRID;
            double to = end * i / GRID;
            double below = height(trace, to, origin, normal);
            if (Math.min(Math.abs(above), Math.abs(below)) > 1e-7) {
                long inside = found.stream()
                        .filter(crossing -> crossing.depth() >= from && crossing.depth() <= to)
                        .filter(crossing -> crossing.meeting() == Meeting.CROSSES)
                        .count();
                assertEquals(above * below < 0 ? 1 : 0, inside % 2, "between " + from + " and " + to);
            }
            above = below;
        }
    }

    private static double height(HoleTrace trace, double depth, Vector3D origin, Vector3D normal) {
        return Traces.vector(trace.displacementAt(depth)).subtract(origin).dotProduct(normal);
    }

    @Property(tries = 300)
    void aDepthIsFoundAgainFromItsElevation(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = wandering(random);
        double depth = last(trace) * random.nextDouble();
        double down = trace.displacementAt(depth).down();

        List<Crossing> found = TraceSearch.of(trace).atVerticalDepth(down);

        double steepness = Math.abs(trace.directionAt(depth).down());
        double nearest = found.stream()
                .mapToDouble(crossing -> Math.abs(crossing.depth() - depth))
                .min()
                .orElse(Double.POSITIVE_INFINITY);
        assertEquals(0, nearest, steepness > 0.01 ? 1e-9 : 1e-3);
    }

    @Property(tries = 300)
    void nothingOnAFineGridIsNearer(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = wandering(random);
        double end = last(trace);
        double far = Math.pow(10, 4 * random.nextDouble() - 1);
        Position place = trace.positionAt(end * random.nextDouble())
                .plus(new Displacement(
                        far * random.nextGaussian(), far * random.nextGaussian(), far * random.nextGaussian()));

        NearestPoint found = TraceSearch.of(trace).between(0, end).nearestTo(place);

        assertEquals(found.distance(), place.minus(found.position()).length(), 1e-8);
        double least = Double.POSITIVE_INFINITY;
        for (int i = 0; i <= GRID; i++) {
            least = Math.min(
                    least, place.minus(trace.positionAt(end * i / GRID)).length());
        }
        assertTrue(found.distance() <= least + 1e-6, found + " and " + least);
        assertTrue(found.distance() >= least - end / GRID, found + " and " + least);
        // at the foot of a perpendicular, at an end, or at a station, where other methods have a corner
        Vector3D way = Traces.vector(found.way());
        boolean inside = found.depth() > 0
                && found.depth() < end
                && Arrays.stream(trace.breakDepths()).allMatch(at -> Math.abs(at - found.depth()) > 1e-6);
        if (inside) {
            double along = way.dotProduct(Traces.vector(found.point().direction()));
            assertEquals(0, along, 1e-9 * (1 + found.distance()));
        }
    }

    @Property(tries = 200)
    void aPlaceMadeOnTheHoleIsFoundAtItsDepth(@ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = Traces.of(Traces.drifting(random, 12, 5));
        double depth = last(trace) * random.nextDouble();

        NearestPoint found = TraceSearch.of(trace).nearestTo(trace.positionAt(depth));

        assertEquals(depth, found.depth(), 1e-8);
        assertEquals(0, found.distance(), 1e-8);
    }

    @Property(tries = 200)
    void whereTheHoleStandsAndNorthLiesDoesNotMatter(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 10);
        HoleTrace trace = Traces.of(stations);
        double turn = 360 * random.nextDouble();
        HoleTrace turned = Traces.of(stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(turn)))
                .toList());
        double depth = last(trace) * random.nextDouble();
        PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(20 + 60 * random.nextDouble(), 100);
        Displacement aside =
                new Displacement(10 * random.nextGaussian(), 10 * random.nextGaussian(), 10 * random.nextGaussian());

        List<Crossing> here = TraceSearch.of(trace).crossings(trace.positionAt(depth), plane);
        List<Crossing> there =
                TraceSearch.of(turned).crossings(turned.positionAt(depth), plane.withAzimuthTurned(turn));
        NearestPoint near =
                TraceSearch.of(trace).nearestTo(trace.positionAt(depth).plus(aside));
        NearestPoint nearThere =
                TraceSearch.of(turned).nearestTo(turned.positionAt(depth).plus(rotated(aside, turn)));

        List<Double> sharp = sharp(here);
        List<Double> sharpThere = sharp(there);
        assertEquals(sharp.size(), sharpThere.size());
        for (int i = 0; i < sharp.size(); i++) {
            assertEquals(sharp.get(i), sharpThere.get(i), 1e-7);
        }
        assertEquals(near.distance(), nearThere.distance(), 2e-6);
    }

    /** Depths of crossings that are not grazing, which rounding could add or take. */
    private static List<Double> sharp(List<Crossing> crossings) {
        List<Double> depths = new ArrayList<>();
        for (Crossing crossing : crossings) {
            if (crossing.alpha() > 0.5) {
                depths.add(crossing.depth());
            }
        }
        return depths;
    }

    private static Displacement rotated(Displacement way, double turn) {
        double cosine = Math.cos(Math.toRadians(turn));
        double sine = Math.sin(Math.toRadians(turn));
        return new Displacement(
                way.north() * cosine - way.east() * sine, way.north() * sine + way.east() * cosine, way.down());
    }
}
