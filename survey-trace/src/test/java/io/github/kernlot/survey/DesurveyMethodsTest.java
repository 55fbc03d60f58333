package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The five methods against worked examples and closed forms; lengths in the unit of the source, which does not matter here. */
class DesurveyMethodsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "desurvey-positions.csv", useHeadersInDisplayName = true)
    void positionsFromTheFirstStationMeetTheirCheckValues(
            DesurveyMethod method,
            String hole,
            String stations,
            double depth,
            Double north,
            Double east,
            Double down,
            double tolerance,
            String source) {
        HoleTrace trace = Traces.of(stations, method);

        Displacement way = Traces.way(trace, trace.survey().stations().get(0).depth(), depth);

        assertMeets(north, way.north(), tolerance, hole + ", north, " + source);
        assertMeets(east, way.east(), tolerance, hole + ", east, " + source);
        assertMeets(down, way.down(), tolerance, hole + ", down, " + source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "desurvey-curvatures.csv", useHeadersInDisplayName = true)
    void curvaturesMeetTheirCheckValues(
            String hole,
            String stations,
            double depth,
            Double severity,
            Double toolface,
            double tolerance,
            String source) {
        Curvature curvature = Traces.of(stations).curvatureAt(depth);

        assertMeets(severity, curvature.doglegSeverity(), tolerance, hole + ", dogleg severity, " + source);
        assertMeets(toolface, curvature.toolface().orElseThrow(), tolerance, hole + ", toolface, " + source);
        List<SurveyStation> both = Traces.stations(stations);
        Curvature mean = Curvature.between(both.get(0), both.get(1));
        assertMeets(severity, mean.doglegSeverity(), tolerance, hole + ", mean, " + source);
        if (depth == both.get(0).depth()) {
            assertMeets(toolface, mean.toolface().orElseThrow(), tolerance, hole + ", mean, " + source);
        }
    }

    /** A blank cell checks nothing. */
    private static void assertMeets(Double expected, double found, double tolerance, String what) {
        if (expected != null) {
            assertEquals(expected, found, tolerance, what);
        }
    }

    @ParameterizedTest
    @CsvSource({
        "TANGENTIAL, 1",
        "BALANCED_TANGENTIAL, 2",
        "AVERAGE_ANGLE, 2",
        "RADIUS_OF_CURVATURE, 2",
        "MINIMUM_CURVATURE, 2"
    })
    void closerStationsBringAllMethodsToOnePathByTheirOrder(DesurveyMethod method, double order) {
        Vector3D truth = Traces.integral(DesurveyMethodsTest::smooth, 0, 1000);

        double coarse = Traces.vector(sampled(method, 80).displacementAt(1000)).distance(truth);
        double fine = Traces.vector(sampled(method, 160).displacementAt(1000)).distance(truth);

        assertEquals(order, Math.log(coarse / fine) / Math.log(2), 0.03);
        assertTrue(fine < (order == 1 ? 4 : 0.02), fine + " m");
    }

    private static HoleTrace sampled(DesurveyMethod method, int intervals) {
        return Traces.of(
                IntStream.rangeClosed(0, intervals)
                        .mapToObj(i -> new SurveyStation(1000.0 * i / intervals, smooth(1000.0 * i / intervals)))
                        .toList(),
                method);
    }

    /** A hole that builds, swings across north and drops a little. */
    private static HoleDirection smooth(double depth) {
        double along = depth / 1000;
        double azimuth = 320 + 130 * along * along;
        return HoleDirection.ofInclination(12 + 70 * along - 40 * along * along, azimuth % 360);
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 90 20; 100 90 199.89",
                "0 90 20; 100 90 200.11",
                "0 0.05 70; 100 179.94 70",
                "0 0.05 70; 100 179.83 250",
                "0 0 70; 100 179.89 250",
                "0 60 10; 100 119.85 190",
                "0 179.99 300; 100 0.15 120"
            })
    void aHoleThatTurnsBackAllButCompletelyIsStillTheIntegralOfItsDirection(String stations) {
        for (DesurveyMethod method : DesurveyMethod.values()) {
            HoleTrace trace = Traces.of(stations, method);
            Vector3D end = Vector3D.ZERO;
            double from = 0;
            for (double to = 5; to <= 100; to += 5) {
                end = end.add(Traces.integral(trace::directionAt, from, to));
                assertEquals(0, end.distance(Traces.vector(trace.displacementAt(to))), 1e-9, method + " at " + to);
                from = to;
            }
        }
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void atAStationEveryMethodAnswersWhatWasMeasured(DesurveyMethod method) {
        HoleTrace trace = Traces.of("5 30.1 77.7; 30 31.3 98.8; 60 0 123; 90 20 300; 120 20 300", method);

        trace.survey()
                .stations()
                .forEach(station -> assertEquals(station.direction(), trace.directionAt(station.depth())));
    }

    @Test
    void betweenStationsEachMethodGoesItsOwnWay() {
        String hole = "0 20 40; 100 40 80";

        assertEquals(
                HoleDirection.ofInclination(40, 80),
                Traces.of(hole, DesurveyMethod.TANGENTIAL).directionAt(1));
        assertEquals(
                HoleDirection.ofInclination(20, 40),
                Traces.of(hole, DesurveyMethod.BALANCED_TANGENTIAL).directionAt(49.9));
        assertEquals(
                HoleDirection.ofInclination(40, 80),
                Traces.of(hole, DesurveyMethod.BALANCED_TANGENTIAL).directionAt(50));
        assertEquals(
                HoleDirection.ofInclination(30, 60),
                Traces.of(hole, DesurveyMethod.AVERAGE_ANGLE).directionAt(1));
        HoleDirection radius =
                Traces.of(hole, DesurveyMethod.RADIUS_OF_CURVATURE).directionAt(50);
        assertEquals(30, radius.inclination(), 1e-12);
        // the azimuth goes with the horizontal length: (cos 20 - cos 30)/(cos 20 - cos 40) of 40 degrees
        double share = (Math.cos(Math.toRadians(20)) - Math.sqrt(0.75))
                / (Math.cos(Math.toRadians(20)) - Math.cos(Math.toRadians(40)));
        assertEquals(40 + 40 * share, radius.azimuth(), 1e-12);
    }

    @Test
    void methodsThatAverageAnglesTellWhatTheyTookForTheAzimuthOfAVerticalStation() {
        String hole = "0 10 90; 30 0 0; 60 0 0; 90 10 200; 120 12 200";
        for (DesurveyMethod method : DesurveyMethod.values()) {
            List<Double> depths = Traces.of(hole, method).notes().stream()
                    .map(TraceNote::depth)
                    .toList();
            boolean isOfAngles = method == DesurveyMethod.AVERAGE_ANGLE || method == DesurveyMethod.RADIUS_OF_CURVATURE;
            assertEquals(isOfAngles ? List.of(30.0, 60.0) : List.of(), depths, method.toString());
        }
        assertEquals(
                "at 30.00 m: the hole is vertical: average angle takes its azimuth from the neighbouring stations",
                Traces.of(hole, DesurveyMethod.AVERAGE_ANGLE).notes().get(0).toString());
    }

    @ParameterizedTest
    @CsvSource({"0", "90.3", "180", "271.7", "359.99"})
    void anAzimuthThatTurnsByHalfIsTakenAsFallingAndTold(double azimuth) {
        String hole = "0 5 " + azimuth + "; 100 5 " + (azimuth + 180) % 360;
        for (DesurveyMethod method : List.of(DesurveyMethod.AVERAGE_ANGLE, DesurveyMethod.RADIUS_OF_CURVATURE)) {
            HoleTrace trace = Traces.of(hole, method);

            assertEquals(0, Traces.apart(azimuth - 90, trace.directionAt(50).azimuth()), 1e-9);
            assertEquals(1, trace.notes().size());
            assertEquals(100, trace.notes().get(0).depth());
            assertTrue(trace.notes().get(0).what().contains("half a turn"));
        }
        assertTrue(Traces.of(hole).notes().isEmpty());
    }

    @Test
    void thePathIsSmoothBetweenItsBreaks() {
        String hole = "10 30 40; 40 33 44; 100 30 50";

        for (DesurveyMethod method : DesurveyMethod.values()) {
            double[] expected = method == DesurveyMethod.BALANCED_TANGENTIAL
                    ? new double[] {10, 25, 40, 70, 100}
                    : new double[] {10, 40, 100};
            assertArrayEquals(expected, Traces.of(hole, method).breakDepths(), method.toString());
        }
    }

    @Test
    void aTracePrintsItsMethodWhereItIsNotTheUsualOne() {
        assertTrue(Traces.of("0 30 40; 30 31 41", DesurveyMethod.RADIUS_OF_CURVATURE)
                .toString()
                .contains(", by radius of curvature, reaching"));
    }
}
