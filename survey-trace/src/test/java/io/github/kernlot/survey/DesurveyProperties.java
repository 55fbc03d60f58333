package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Assume;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What must hold of a hole by each of the methods: in any direction, with doglegs up to 170 degrees, through vertical and north. */
class DesurveyProperties {

    private static final int STATIONS = 12;

    /** Stations in any direction, some of them vertical, some due along an axis. */
    private static List<SurveyStation> stations(Random random) {
        List<SurveyStation> stations = new ArrayList<>(Traces.wandering(random, STATIONS));
        for (int i = 0; i < 2; i++) {
            int place = random.nextInt(STATIONS);
            double inclination = 90.0 * random.nextInt(3);
            HoleDirection direction = HoleDirection.ofInclination(inclination, 90.0 * random.nextInt(4));
            stations.set(place, new SurveyStation(stations.get(place).depth(), direction));
        }
        for (int i = 1; i < STATIONS; i++) {
            Assume.that(stations.get(i - 1).direction().angleTo(stations.get(i).direction()) < 179.9);
        }
        return stations;
    }

    private static double within(Random random, List<SurveyStation> stations) {
        return Traces.lastDepth(stations) * random.nextDouble();
    }

    @Property(tries = 100)
    void thePositionIsTheIntegralOfTheDirection(@ForAll DesurveyMethod method, @ForAll long seed) {
        List<SurveyStation> stations = stations(new Random(seed));
        HoleTrace trace = Traces.of(stations, method);
        double[] breaks = trace.breakDepths();
        Vector3D end = Traces.vector(trace.displacementAt(breaks[0]));
        for (int i = 1; i < breaks.length; i++) {
            double middle = breaks[i - 1] + 0.37 * (breaks[i] - breaks[i - 1]);
            Vector3D part = end.add(Traces.integral(trace::directionAt, breaks[i - 1], middle));
            assertEquals(0, part.distance(Traces.vector(trace.displacementAt(middle))), 1e-9);
            end = part.add(Traces.integral(trace::directionAt, middle, breaks[i]));
            assertEquals(0, end.distance(Traces.vector(trace.displacementAt(breaks[i]))), 1e-9);
        }
    }

    @Property
    void thePositionHasNoJump(@ForAll DesurveyMethod method, @ForAll long seed) {
        HoleTrace trace = Traces.of(stations(new Random(seed)), method);
        for (double depth : trace.breakDepths()) {
            Vector3D at = Traces.vector(trace.displacementAt(depth));
            assertEquals(0, at.distance(Traces.vector(trace.displacementAt(Math.nextUp(depth)))), 1e-10);
            if (depth > 0) {
                assertEquals(0, at.distance(Traces.vector(trace.displacementAt(Math.nextDown(depth)))), 1e-10);
            }
        }
    }

    @Property(tries = 60)
    void theScribeAndTheCarriedFrameAreThoseOfParallelTransport(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = Traces.of(Traces.drifting(random, 10, 0.05), method);
        double[] breaks = trace.breakDepths();
        Vector3D tangent = Traces.vector(trace.directionAt(0));
        Vector3D scribe = lowSide(tangent);
        CoreFrame scribed = CoreFrame.at(trace.directionAt(0), 0);
        double inCarried = scribed.turnFrom(trace.carriedFrameAt(0));
        double total = 0;
        for (int i = 1; i < breaks.length; i++) {
            // just below a break, evenly on to just above the next, and onto that one: every corner in two steps
            int steps = 300;
            double first = Math.nextUp(breaks[i - 1]);
            double last = Math.nextDown(breaks[i]);
            for (int step = 0; step <= steps + 1; step++) {
                double depth = step > steps ? breaks[i] : Math.min(last, first + (last - first) * step / steps);
                Vector3D next = Traces.vector(trace.directionAt(depth));
                if (next.distance(tangent) > 0) {
                    scribe = new Rotation(tangent, next).applyTo(scribe);
                    tangent = next;
                }
                double angle = angle(tangent, scribe);
                total += Math.IEEEremainder(angle - total, 360);
                if (step % 50 == 1) {
                    assertEquals(total, trace.scribeTurn(0, depth), 1e-5);
                    double carried =
                            trace.carriedFrameAt(depth).turned(inCarried).lineAngle();
                    assertEquals(0, Traces.apart(angle, carried), 1e-5);
                }
            }
        }
    }

    private static Vector3D lowSide(Vector3D tangent) {
        return Vector3D.PLUS_K.subtract(tangent.scalarMultiply(tangent.getZ())).normalize();
    }

    private static double angle(Vector3D tangent, Vector3D scribe) {
        Vector3D low = lowSide(tangent);
        return Math.toDegrees(
                Math.atan2(Vector3D.dotProduct(tangent.crossProduct(low), scribe), Vector3D.dotProduct(low, scribe)));
    }

    @Property
    void theCarriedFrameTurnsAsTheScribeAndLiesAlongTheHole(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations, method);
        double from = within(random, stations);
        double to = within(random, stations);
        CoreFrame upper = trace.carriedFrameAt(from);
        CoreFrame lower = trace.carriedFrameAt(to);

        assertEquals(0, lower.direction().angleTo(trace.directionAt(to)), 1e-10);
        double sharpness = Math.min(sharpness(trace, from), sharpness(trace, to));
        Assume.that(sharpness > 0);
        assertEquals(
                0, Traces.apart(lower.lineAngle() - upper.lineAngle(), trace.scribeTurn(from, to)), 1e-8 / sharpness);
    }

    private static double sharpness(HoleTrace trace, double depth) {
        return trace.directionAt(depth).isVertical()
                ? 0
                : Math.sin(Math.toRadians(trace.directionAt(depth).inclination()));
    }

    @Property
    void theCurvatureIsTheSlopeOfTheDirection(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        HoleTrace trace = Traces.of(Traces.drifting(random, 6, 2), method);
        double depth = 150 * random.nextDouble();
        double step = 1e-3;
        for (double corner : trace.breakDepths()) {
            Assume.that(Math.abs(corner - depth) > 2 * step);
        }
        HoleDirection above = trace.directionAt(depth - step);
        HoleDirection below = trace.directionAt(depth + step);

        Curvature curvature = trace.curvatureAt(depth);

        double perStep = 30 / (2 * step);
        double build = perStep * (below.inclination() - above.inclination());
        double turn = perStep * Math.IEEEremainder(below.azimuth() - above.azimuth(), 360);
        assertEquals(above.angleTo(below) * perStep, curvature.doglegSeverity(), 1e-6);
        assertEquals(build, curvature.build(), 1e-6);
        assertEquals(turn, curvature.turn().orElseThrow(), 1e-5);
        double across = turn * Math.sin(Math.toRadians(trace.directionAt(depth).inclination()));
        if (curvature.toolface().isPresent()) {
            double toolface = Math.toDegrees(Math.atan2(across, build));
            // the slope is known to a millionth of a degree per 30 m
            double tolerance = Math.toDegrees(2e-6 / curvature.doglegSeverity());
            assertEquals(0, Traces.apart(toolface, curvature.toolface().getAsDouble()), tolerance);
        } else {
            assertEquals(0, curvature.doglegSeverity());
        }
    }

    @Property
    void turningAllAzimuthsTurnsTheTrace(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations, method);
        // half a turn of the azimuth is settled in one sense, and rounding must not make it another
        Assume.that(trace.notes().stream().noneMatch(note -> note.what().contains("half a turn")));
        double turn = 360 * random.nextDouble();

        HoleTrace turned = Traces.of(
                stations.stream()
                        .map(station -> new SurveyStation(
                                station.depth(), station.direction().withAzimuthTurned(turn)))
                        .toList(),
                method);

        Rotation about = new Rotation(Vector3D.PLUS_K, Math.toRadians(turn), RotationConvention.VECTOR_OPERATOR);
        for (int i = 0; i < 10; i++) {
            double depth = within(random, stations);
            Vector3D expected = about.applyTo(Traces.vector(trace.displacementAt(depth)));
            assertEquals(0, expected.distance(Traces.vector(turned.displacementAt(depth))), 1e-9);
            assertEquals(0, trace.directionAt(depth).withAzimuthTurned(turn).angleTo(turned.directionAt(depth)), 1e-9);
        }
    }

    /** Tangential looks down alone: reversed it is another path. */
    @Property
    void aSurveyReversedMirrorsTheTraceByEveryMethodButTangential(@ForAll DesurveyMethod method, @ForAll long seed) {
        Assume.that(method != DesurveyMethod.TANGENTIAL);
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations, method);
        Assume.that(trace.notes().stream().noneMatch(note -> note.what().contains("half a turn")));
        double last = Traces.lastDepth(stations);

        HoleTrace reversed = Traces.of(
                stations.stream()
                        .map(station -> new SurveyStation(last - station.depth(), opposite(station.direction())))
                        .toList(),
                method);

        for (int i = 0; i < 10; i++) {
            double depth = within(random, stations);
            Vector3D there = Traces.vector(Traces.way(trace, last, depth));
            assertEquals(0, there.distance(Traces.vector(reversed.displacementAt(last - depth))), 1e-9);
        }
    }

    private static HoleDirection opposite(HoleDirection direction) {
        return HoleDirection.ofInclination(180 - direction.inclination(), (direction.azimuth() + 180) % 360);
    }

    @Property
    void aStationInsertedWhereTheTraceItselfAnswersChangesNeitherArcsNorCylinders(
            @ForAll boolean isArc, @ForAll long seed) {
        DesurveyMethod method = isArc ? DesurveyMethod.MINIMUM_CURVATURE : DesurveyMethod.RADIUS_OF_CURVATURE;
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, STATIONS, 1);
        HoleTrace trace = Traces.of(stations, method);
        List<SurveyStation> more = new ArrayList<>(stations);
        for (int i = 0; i < 5; i++) {
            double depth = within(random, stations);
            more.add(new SurveyStation(depth, trace.directionAt(depth)));
        }

        HoleTrace split = Traces.of(more, method);

        for (int i = 0; i < 20; i++) {
            double depth = within(random, stations);
            Vector3D expected = Traces.vector(trace.displacementAt(depth));
            assertEquals(0, expected.distance(Traces.vector(split.displacementAt(depth))), 1e-9);
            assertEquals(0, trace.directionAt(depth).angleTo(split.directionAt(depth)), 1e-9);
            assertEquals(trace.scribeTurn(0, depth), split.scribeTurn(0, depth), 1e-8);
        }
    }

    @Property
    void theLengthIsKept(@ForAll DesurveyMethod method, @ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations, method);
        double depth = within(random, stations);

        double length = Traces.way(trace, depth, depth + 1e-4).length();

        // a chord is never longer, and shorter only where a corner falls into it
        assertTrue(length <= 1e-4 + 1e-12);
        boolean hasCorner = java.util.stream.DoubleStream.of(trace.breakDepths())
                .anyMatch(corner -> corner > depth && corner < depth + 1e-4);
        assertTrue(hasCorner || length > 1e-4 * (1 - 1e-6), length + " at " + depth);
    }
}
