package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import java.util.List;
import java.util.function.DoubleConsumer;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** A trace at and beyond its stations, and what it refuses. */
class HoleTraceTest {

    private static final Survey SURVEY = Survey.of(
            List.of(SurveyStation.ofDip(10, -60, 90), SurveyStation.ofDip(40, -58, 92)), NorthReference.grid());
    private static final HoleTrace TRACE = HoleTrace.minimumCurvature(Traces.COLLAR, SURVEY);

    private static TraceSettings reaching(double limit) {
        return TraceSettings.assumed().withExtrapolationLimit(limit);
    }

    @Test
    void betweenTheCollarAndTheFirstStationTheFirstDirectionHolds() {
        assertEquals(HoleDirection.ofDip(-60, 90), TRACE.directionAt(0));
        assertEquals(HoleDirection.ofDip(-60, 90), TRACE.directionAt(7));
        assertEquals(new Displacement(0, 5, 10 * Math.sqrt(0.75)), TRACE.displacementAt(10));
        assertEquals(3.5, TRACE.displacementAt(7).east(), 1e-12);
        assertEquals(0, TRACE.scribeTurn(0, 10), 1e-12);
    }

    @Test
    void beyondTheLastStationTheLastDirectionHolds() {
        Displacement beyond = Traces.way(TRACE, 40, 60);

        assertEquals(HoleDirection.ofDip(-58, 92), TRACE.directionAt(60));
        assertEquals(20 * HoleDirection.ofDip(-58, 92).down(), beyond.down(), 1e-12);
        assertEquals(0, TRACE.scribeTurn(40, 60), 1e-12);
    }

    @Test
    void beyondItsStationsTheTraceIsExtrapolated() {
        assertTrue(TRACE.isExtrapolated(0));
        assertTrue(TRACE.isExtrapolated(9.99));
        assertFalse(TRACE.isExtrapolated(10));
        assertFalse(TRACE.isExtrapolated(40));
        assertTrue(TRACE.isExtrapolated(40.01));
        assertTrue(TRACE.isExtrapolated(70));
        assertEquals(70, TRACE.reach());
    }

    @Test
    void atTheCollarTheTraceIsAtTheCollar() {
        assertEquals(Traces.COLLAR, TRACE.positionAt(0));
        assertEquals(Traces.COLLAR, TRACE.collar());
        assertEquals(SURVEY, TRACE.survey());
    }

    @Test
    void eastIsEastingNorthIsNorthingAndDownIsLessElevation() {
        HoleTrace trace = Traces.of("0 60 30");

        assertEquals(5000 + 100 * Math.sqrt(0.75) * 0.5, trace.positionAt(100).easting(), 1e-9);
        assertEquals(7000 + 75, trace.positionAt(100).northing(), 1e-9);
        assertEquals(300 - 50, trace.positionAt(100).elevation(), 1e-9);
    }

    @Test
    void atAStationTheDirectionIsTheStationsOwn() {
        HoleTrace trace = Traces.of("0 30.1 77.7; 30 31.3 78.8; 60 0 123");

        trace.survey()
                .stations()
                .forEach(station -> assertEquals(station.direction(), trace.directionAt(station.depth())));
    }

    @Test
    void betweenStationsOfOneDirectionTheHoleKeepsItToTheLastBit() {
        assertEquals(
                HoleDirection.ofInclination(31.7, 77.7),
                Traces.of("0 31.7 77.7; 30 31.7 77.7").directionAt(11));
    }

    @Test
    void aVerticalStretchKeepsTheAzimuthOfItsUpperStation() {
        assertEquals(
                HoleDirection.ofDip(-90, 203), Traces.of("0 0 203; 30 0 77").directionAt(11));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.001, 70.001, Double.NaN, Double.POSITIVE_INFINITY, Double.NEGATIVE_INFINITY})
    void aDepthThatTheTraceDoesNotReachIsRefusedByEveryQuestion(double depth) {
        List<DoubleConsumer> questions = List.of(
                TRACE::directionAt,
                TRACE::carriedFrameAt,
                TRACE::displacementAt,
                TRACE::positionAt,
                TRACE::isExtrapolated,
                from -> TRACE.scribeTurn(from, 20),
                to -> TRACE.scribeTurn(20, to));
        for (DoubleConsumer question : questions) {
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> question.accept(depth));
            assertTrue(refused.getMessage().startsWith("depth is " + depth), refused.getMessage());
            assertTrue(refused.getMessage().contains("[0, 70]"), refused.getMessage());
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"TRUE", "MAGNETIC"})
    void aSurveyThatIsNotOnTheGridIsRefusedWithTheWayOut(North north) {
        Survey survey =
                Survey.of(SURVEY.stations(), NorthReference.magnetic(3, 1).with(north));

        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> HoleTrace.minimumCurvature(Traces.COLLAR, survey));

        assertTrue(
                refused.getMessage().contains(north.name().toLowerCase(java.util.Locale.ROOT)), refused.getMessage());
        assertTrue(refused.getMessage().contains("Survey.toGrid()"), refused.getMessage());
    }

    @Test
    void aFirstStationDeeperThanTheLimitIsRefused() {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> HoleTrace.of(Traces.COLLAR, SURVEY, reaching(9.5)));

        assertTrue(refused.getMessage().contains("10.00 m"), refused.getMessage());
        assertTrue(refused.getMessage().contains("9.50 m"), refused.getMessage());
        assertEquals(50, HoleTrace.of(Traces.COLLAR, SURVEY, reaching(10)).reach());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLimitThatIsNoLengthIsRefused(double limit) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> HoleTrace.of(Traces.COLLAR, SURVEY, reaching(limit)));

        assertTrue(refused.getMessage().startsWith("extrapolation limit is "), refused.getMessage());
    }

    @Test
    void theCarriedFrameIsDefinedWhereTheHoleIsVertical() {
        HoleTrace trace = Traces.of("0 10 90; 30 0 0; 60 0 0; 90 10 90");

        CoreFrame frame = trace.carriedFrameAt(45);

        assertTrue(frame.direction().isVertical());
        assertEquals(0, Traces.apart(0, trace.carriedFrameAt(60).turnFrom(frame)), 1e-12);
    }

    @Test
    void aTracePrintsItsCollarItsSurveyAndItsReach() {
        assertEquals(
                "trace from easting 5000.00, northing 7000.00, elevation 300.00 m, 2 stations to 40.00 m,"
                        + " azimuths from grid north, reaching 70.00 m",
                TRACE.toString());
    }
}
