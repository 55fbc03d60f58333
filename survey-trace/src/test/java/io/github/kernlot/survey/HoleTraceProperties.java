package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;

/** What must hold of any hole: straight, drifting, turning hard, through vertical and upward. */
class HoleTraceProperties {

    private static final int STATIONS = 25;

    private static List<SurveyStation> stations(Random random) {
        return Traces.wandering(random, STATIONS);
    }

    private static double depth(Random random, List<SurveyStation> stations) {
        return Traces.lastDepth(stations) * random.nextDouble();
    }

    private static void assertSamePath(HoleTrace expected, HoleTrace found) {
        double last = Traces.lastDepth(expected.survey().stations());
        for (double depth = 0; depth <= last; depth += last / 41) {
            assertNear(expected.displacementAt(depth), found.displacementAt(depth));
            assertEquals(0, expected.directionAt(depth).angleTo(found.directionAt(depth)), 1e-10);
        }
    }

    private static void assertNear(Displacement one, Displacement other) {
        assertEquals(0, Traces.vector(one).distance(Traces.vector(other)), 1e-9);
    }

    @Property
    void aStationInsertedWhereTheTraceItselfAnswersChangesNothing(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations);
        List<SurveyStation> more = new ArrayList<>(stations);
        for (int i = 0; i < 5; i++) {
            double depth = depth(random, stations);
            more.add(new SurveyStation(depth, trace.directionAt(depth)));
        }

        HoleTrace split = Traces.of(more);

        assertSamePath(trace, split);
        for (int i = 0; i < 10; i++) {
            double from = depth(random, stations);
            double to = depth(random, stations);
            assertEquals(0, Traces.apart(0, trace.carriedFrameAt(to).turnFrom(split.carriedFrameAt(to))), 1e-9);
            // the low side is only as sharp as the hole is inclined
            double sharpness = Math.min(sharpness(trace, from), sharpness(trace, to));
            assertEquals(0, Traces.apart(trace.scribeTurn(from, to), split.scribeTurn(from, to)), 1e-9 / sharpness);
        }
    }

    private static double sharpness(HoleTrace trace, double depth) {
        return Math.sin(Math.toRadians(trace.directionAt(depth).inclination()));
    }

    @Property
    void aSurveyReversedMirrorsTheTrace(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations);
        double last = Traces.lastDepth(stations);
        List<SurveyStation> backwards = stations.stream()
                .map(station -> new SurveyStation(last - station.depth(), opposite(station.direction())))
                .toList();

        HoleTrace reversed = Traces.of(backwards);

        for (int i = 0; i < 20; i++) {
            double depth = depth(random, stations);
            Displacement there = Traces.way(trace, last, depth);
            assertNear(there, reversed.displacementAt(last - depth));
            assertEquals(0, opposite(trace.directionAt(depth)).angleTo(reversed.directionAt(last - depth)), 1e-10);
        }
    }

    private static HoleDirection opposite(HoleDirection direction) {
        return HoleDirection.ofInclination(180 - direction.inclination(), (direction.azimuth() + 180) % 360);
    }

    @Property
    void turningAllAzimuthsTurnsTheTraceAndLeavesTheScribe(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations);
        double turn = 360 * random.nextDouble();

        HoleTrace turned = Traces.of(stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(turn)))
                .toList());

        // the third axis points down: a positive rotation about it turns north to east, as an azimuth grows
        Rotation about = new Rotation(Vector3D.PLUS_K, Math.toRadians(turn), RotationConvention.VECTOR_OPERATOR);
        for (int i = 0; i < 20; i++) {
            double depth = depth(random, stations);
            double to = depth(random, stations);
            Vector3D expected = about.applyTo(Traces.vector(trace.displacementAt(depth)));
            assertEquals(0, expected.distance(Traces.vector(turned.displacementAt(depth))), 1e-9);
            assertEquals(0, trace.directionAt(depth).withAzimuthTurned(turn).angleTo(turned.directionAt(depth)), 1e-10);
            double sharpness = Math.min(sharpness(trace, depth), sharpness(trace, to));
            assertEquals(0, Traces.apart(trace.scribeTurn(depth, to), turned.scribeTurn(depth, to)), 1e-9 / sharpness);
        }
    }

    @Property
    void theTraceIsContinuousAtItsStations(@ForAll long seed) {
        List<SurveyStation> stations = stations(new Random(seed));
        HoleTrace trace = Traces.of(stations);

        for (SurveyStation station : stations.subList(1, stations.size())) {
            double at = station.depth();
            for (double beside : new double[] {Math.nextDown(at), Math.nextUp(at)}) {
                assertNear(trace.displacementAt(at), trace.displacementAt(beside));
                assertEquals(0, station.direction().angleTo(trace.directionAt(beside)), 1e-10);
                assertEquals(
                        0, Traces.apart(0, trace.carriedFrameAt(at).turnFrom(trace.carriedFrameAt(beside))), 1e-10);
            }
        }
    }

    @Property
    void theWayIsNeverLongerThanTheHoleAndADirectionIsItsSlope(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = stations(random);
        HoleTrace trace = Traces.of(stations);
        double step = 1e-3;
        for (int i = 0; i < 20; i++) {
            double depth = depth(random, stations);
            Displacement way = Traces.way(trace, depth, depth + step);
            // within 1 mm even a dogleg of 170 degrees in a metre bends the chord by less than 0.1 degrees
            assertEquals(step, way.length(), 1e-9);
            assertEquals(0, Traces.direction(Traces.vector(way)).angleTo(trace.directionAt(depth + step / 2)), 0.2);
        }
    }

    @Property
    void theAzimuthRecordedAtAVerticalStationIsOnlyALabel(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = new ArrayList<>(Traces.drifting(random, 7, 0.5));
        int place = 1 + random.nextInt(5);
        double vertical = stations.get(place).direction().inclination() < 90 ? 0 : 180;
        HoleTrace one = withVertical(stations, place, vertical, 360 * random.nextDouble());
        HoleTrace other = withVertical(stations, place, vertical, 360 * random.nextDouble());

        assertSamePath(one, other);
        double last = Traces.lastDepth(stations);
        for (double depth : new double[] {0, last}) {
            double apart = one.carriedFrameAt(depth).turnFrom(other.carriedFrameAt(depth));
            assertEquals(0, Traces.apart(apart, 0), 1e-9);
        }
        // the choice of the label cancels but for whole turns
        assertEquals(0, Traces.apart(one.scribeTurn(0, last), other.scribeTurn(0, last)), 1e-9);
    }

    private static HoleTrace withVertical(List<SurveyStation> stations, int place, double inclination, double azimuth) {
        List<SurveyStation> changed = new ArrayList<>(stations);
        changed.set(place, SurveyStation.ofInclination(stations.get(place).depth(), inclination, azimuth));
        return Traces.of(changed);
    }
}
