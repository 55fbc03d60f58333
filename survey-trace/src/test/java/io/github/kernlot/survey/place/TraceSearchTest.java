package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.Arrays;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

class TraceSearchTest {

    private static final double LEVEL = Traces.COLLAR.elevation();

    private static List<Crossing> atElevation(String stations, double elevation) {
        return TraceSearch.of(Traces.of(stations)).atElevation(elevation);
    }

    private static double[] depths(List<Crossing> crossings) {
        return crossings.stream().mapToDouble(Crossing::depth).toArray();
    }

    @ParameterizedTest
    @CsvFileSource(resources = "depths-at-a-vertical-depth.csv", useHeadersInDisplayName = true)
    void depthsAtAVerticalDepthMeetTheirCheckValues(
            String hole, String stations, double down, String depths, Double north, double tolerance, String source) {
        HoleTrace trace = Traces.of(stations);
        List<SurveyStation> surveyed = trace.survey().stations();
        double first = surveyed.get(0).depth();
        TraceSearch search = TraceSearch.of(trace).between(first, Traces.lastDepth(surveyed));
        double level = trace.displacementAt(first).down() + down;

        List<Crossing> found = search.atVerticalDepth(level);

        double[] expected = depths == null
                ? new double[0]
                : Arrays.stream(depths.split(" "))
                        .mapToDouble(Double::parseDouble)
                        .toArray();
        assertEquals(expected.length, found.size(), hole + ", " + source);
        for (int i = 0; i < expected.length; i++) {
            assertEquals(expected[i], found.get(i).depth(), expected.length == 1 ? 1e-4 : tolerance, source);
        }
        if (north != null) {
            assertEquals(
                    north, Traces.way(trace, first, found.get(0).depth()).north(), tolerance, hole + ", " + source);
        }
    }

    /** Position and direction published for the crossing at 47 ft below the first station. */
    @Test
    void theCrossingTellsPlaceAndDirection() {
        HoleTrace trace = Traces.of("3500 15 20; 3600 25 45");
        Crossing found = TraceSearch.of(trace)
                .atVerticalDepth(trace.displacementAt(3500).down() + 47)
                .get(0);

        assertEquals(3549.201805, found.depth(), 5e-7);
        assertEquals(19.506541, found.direction().inclination(), 5e-7);
        assertEquals(35.359907, found.direction().azimuth(), 5e-7);
        assertEquals(90 - 19.506541, found.alpha(), 5e-7);
        assertEquals(Meeting.CROSSES, found.meeting());
        assertFalse(found.extrapolated());
        assertEquals(6.938734, Traces.way(trace, 3500, found.depth()).east(), 5e-7);
    }

    @Test
    void anArcThroughHorizontalHasTwoDepthsAtOneElevation() {
        List<Crossing> found = atElevation("0 80 0; 100 100 0", LEVEL - 4);

        assertEquals(2, found.size());
        assertEquals(100, found.get(0).depth() + found.get(1).depth(), 1e-9);
        for (Crossing crossing : found) {
            assertEquals(LEVEL - 4, crossing.position().elevation(), 1e-9);
        }
    }

    @Test
    void theDeepestPlaceOfAnArcTouchesItsElevation() {
        Crossing deepest =
                atElevation("0 80 0; 100 100 0", LEVEL - 4.352258168604).get(0);

        assertEquals(Meeting.TOUCHES, deepest.meeting());
        assertEquals(50, deepest.depth(), 1e-9);
        assertEquals(0, deepest.alpha(), 1e-9);
        assertTrue(atElevation("0 80 0; 100 100 0", LEVEL - 4.35226).isEmpty());
    }

    @Test
    void aHorizontalStretchIsOneAnswer() {
        String stations = "0 60 10; 40 90 20; 70 90 50; 120 60 40";
        double level = Traces.of(stations).positionAt(55).elevation();

        List<Crossing> found =
                TraceSearch.of(Traces.of(stations)).between(0, 120).atElevation(level);

        assertEquals(1, found.size());
        assertEquals(Meeting.LIES_IN, found.get(0).meeting());
        assertEquals(40, found.get(0).first().depth());
        assertEquals(70, found.get(0).last().depth());
        assertEquals(0, found.get(0).alpha(), 1e-12);
    }

    /** Hole and dip line lie in one vertical plane: the angle between them is 90 - inclination - dip, derived. */
    @ParameterizedTest
    @CsvSource({"0, 30, 60", "90, 30, 30", "180, 30, 60", "0, 0, 90", "60, 60, 30", "150, 40, 80"})
    void aStraightHoleMeetsAPlaneUnderItsAlpha(double inclination, double dip, double alpha) {
        HoleTrace trace = Traces.of("0 " + inclination + " 90");
        Position ahead = trace.positionAt(120);

        List<Crossing> found = TraceSearch.of(trace).crossings(ahead, PlaneOrientation.ofDipAndDirection(dip, 90));

        assertEquals(1, found.size());
        assertEquals(120, found.get(0).depth(), 1e-9);
        assertEquals(alpha, found.get(0).alpha(), 1e-9);
        assertTrue(found.get(0).extrapolated());
    }

    @Test
    void aHoleThatStartsInThePlaneTouchesItAtItsCollar() {
        TraceSearch search = TraceSearch.of(Traces.of("0 30 90; 100 40 90"));

        List<Crossing> found = search.crossings(Traces.COLLAR, PlaneOrientation.ofDipAndDirection(30, 90));

        assertEquals(1, found.size());
        assertEquals(0, found.get(0).depth());
        assertEquals(Meeting.TOUCHES, found.get(0).meeting());
        assertEquals(30, found.get(0).alpha(), 1e-9);
    }

    @Test
    void aHoleInAVerticalPlaneLiesInItWhole() {
        HoleTrace trace = Traces.of("0 10 40; 200 60 40; 400 20 40; 500 5 220");

        Crossing found = TraceSearch.of(trace)
                .between(0, 500)
                .crossings(trace.positionAt(150), PlaneOrientation.ofDipAndDirection(90, 130))
                .get(0);

        assertEquals(Meeting.LIES_IN, found.meeting());
        assertEquals(0, found.first().depth());
        assertEquals(500, found.last().depth());
    }

    @Test
    void oneStationIsAHoleThatGoesStraightOn() {
        HoleTrace trace = HoleTrace.minimumCurvature(
                Traces.COLLAR, Survey.of(List.of(SurveyStation.ofDip(10, -90, 0)), NorthReference.grid()));
        TraceSearch search = TraceSearch.of(trace);

        Crossing found = search.atVerticalDepth(25).get(0);

        assertEquals(25, found.depth(), 1e-12);
        assertEquals(90, found.alpha());
        assertTrue(found.extrapolated());
        assertTrue(search.atVerticalDepth(40.1).isEmpty());
        assertTrue(search.atElevation(LEVEL + 1).isEmpty());
    }

    @Test
    void anUpwardHoleIsFoundAboveItsCollar() {
        double[] found = depths(atElevation("0 150 20; 80 150 20", LEVEL + 60 * Math.sqrt(0.75)));

        assertEquals(1, found.length);
        assertEquals(60, found[0], 1e-9);
    }

    @Test
    void whatLiesBeyondTheStationsIsTold() {
        HoleTrace trace = HoleTrace.minimumCurvature(
                Traces.COLLAR,
                Survey.of(
                        List.of(SurveyStation.ofDip(0, -90, 0), SurveyStation.ofDip(50, -90, 0)),
                        NorthReference.grid()));
        TraceSearch search = TraceSearch.of(trace);

        assertFalse(search.atVerticalDepth(50).get(0).extrapolated());
        assertTrue(search.atVerticalDepth(50.5).get(0).extrapolated());
        assertTrue(search.nearestTo(trace.positionAt(70)).extrapolated());
        assertFalse(search.nearestTo(trace.positionAt(20)).extrapolated());
        assertTrue(search.between(0, 50).atVerticalDepth(50.5).isEmpty());
    }

    @Test
    void thePlaceNearestToACircleIsOnItsRadius() {
        // a quarter of a circle of 100 m radius: from north and level to straight down, about a centre 100 m below
        double radius = 100;
        HoleTrace trace = Traces.of("0 90 0; " + radius * Math.PI / 2 + " 0 0");
        TraceSearch search = TraceSearch.of(trace).between(0, radius * Math.PI / 2);
        double out = 30 * Math.sqrt(0.5);
        Position beyond = Position.ofEastingNorthingElevation(
                Traces.COLLAR.easting() + 7,
                Traces.COLLAR.northing() + radius * Math.sqrt(0.5) + out,
                Traces.COLLAR.elevation() - radius + radius * Math.sqrt(0.5) + out);

        NearestPoint found = search.nearestTo(beyond);

        assertEquals(radius * Math.PI / 4, found.depth(), 1e-9);
        assertEquals(Math.hypot(30, 7), found.distance(), 1e-9);
        assertEquals(7, found.way().east(), 1e-9);
    }

    @Test
    void ofTiesTheLeastDepthIsNearest() {
        HoleTrace trace = Traces.of("0 90 0; 157.07963267948966 0 0");
        Position centre = Traces.COLLAR.plus(new Displacement(0, 0, 100));

        NearestPoint found =
                TraceSearch.of(trace).between(0, 157.07963267948966).nearestTo(centre);

        assertEquals(100, found.distance(), 1e-9);
        assertEquals(0, found.depth(), 1e-3);
    }

    @Test
    void badNumbersAreRefused() {
        TraceSearch search = TraceSearch.of(Traces.of("0 30 90"));

        assertThrows(IllegalArgumentException.class, () -> search.atElevation(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> search.atVerticalDepth(Double.POSITIVE_INFINITY));
        assertThrows(IllegalArgumentException.class, () -> search.between(-1, 5));
        assertThrows(IllegalArgumentException.class, () -> search.between(5, 4));
        assertThrows(IllegalArgumentException.class, () -> search.between(0, Double.NaN));
    }

    @Test
    void answersSpeakAsTheTradeDoes() {
        Crossing found = TraceSearch.of(Traces.of("0 30 90; 100 30 90"))
                .atVerticalDepth(50 * Math.sqrt(0.75))
                .get(0);

        assertEquals(
                "crosses at 50.00 m: easting 5025.00, northing 7000.00, elevation 256.70 m, -60.0/090.0 (dip/azimuth),"
                        + " alpha 60.0",
                found.toString());
    }
}
