package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertSame;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Surveys and stations: order, norths, and what is refused. */
class SurveyTest {

    private static final SurveyStation TOP = SurveyStation.ofDip(0, -60, 90);
    private static final SurveyStation MIDDLE = SurveyStation.ofDip(30, -61, 91);
    private static final SurveyStation END = SurveyStation.ofDip(60, -62, 359.5);

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    private static Survey survey(SurveyStation... stations) {
        return Survey.of(List.of(stations), NorthReference.grid());
    }

    @Test
    void stationsAreSortedByDepth() {
        assertEquals(List.of(TOP, MIDDLE, END), survey(END, TOP, MIDDLE).stations());
    }

    @Test
    void aSurveyWithoutStationsIsRefused() {
        assertTrue(refusal(SurveyTest::survey).contains("at least one station"));
    }

    @Test
    void twoStationsAtOneDepthAreRefusedAndBothNamed() {
        String message = refusal(() -> survey(TOP, MIDDLE, SurveyStation.ofDip(30, -50, 12)));

        assertTrue(message.contains("30.00 m -61.0/091.0"), message);
        assertTrue(message.contains("30.00 m -50.0/012.0"), message);
    }

    @Test
    void aDoglegAbove179Point9DegreesIsRefusedAndItsStationsNamed() {
        String message = refusal(() -> survey(TOP, SurveyStation.ofDip(30, 60, 270)));

        assertTrue(message.contains("dogleg"), message);
        assertTrue(message.contains("0.00 m -60.0/090.0"), message);
        assertTrue(message.contains("30.00 m 60.0/270.0"), message);
        assertTrue(message.contains("179.9"), message);
        assertEquals(
                2, survey(TOP, SurveyStation.ofDip(30, 60.2, 270)).stations().size());
    }

    @Test
    void onTheGridASurveyIsItself() {
        Survey survey = survey(TOP);

        assertSame(survey, survey.toGrid());
        assertEquals(North.GRID, survey.measuredFrom());
    }

    @Test
    void aConstantIsAddedToEveryAzimuthAndNothingElseChanges() {
        Survey magnetic = Survey.of(List.of(TOP, MIDDLE, END), NorthReference.magnetic(3.5, 1));

        Survey grid = magnetic.toGrid();

        assertEquals(
                List.of(
                        SurveyStation.ofDip(0, -60, 92.5),
                        SurveyStation.ofDip(30, -61, 93.5),
                        SurveyStation.ofDip(60, -62, 2)),
                grid.stations());
        assertEquals(NorthReference.magnetic(3.5, 1).with(North.GRID), grid.north());
        assertEquals(North.MAGNETIC, grid.measuredFrom());
        assertEquals(North.MAGNETIC, grid.to(North.TRUE).measuredFrom());
    }

    @Test
    void aConversionThatNeedsWhatWasNotGivenIsRefused() {
        Survey grid = survey(TOP);

        assertTrue(refusal(() -> grid.to(North.TRUE)).contains("no grid convergence was given"));
    }

    @Test
    void aSurveyPrintsItsStationsItsEndAndItsNorth() {
        assertEquals(
                "2 stations to 30.00 m, azimuths from grid north",
                survey(TOP, MIDDLE).toString());
        assertEquals(
                "1 station to 0.00 m, azimuths from grid north", survey(TOP).toString());
    }

    @Test
    void aStationPrintsItsDepthAndDirection() {
        assertEquals("30.00 m -61.0/091.0 (dip/azimuth)", MIDDLE.toString());
        assertEquals(MIDDLE, SurveyStation.ofInclination(30, 29, 91));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, Double.NaN, Double.POSITIVE_INFINITY})
    void aStationAboveTheCollarIsRefused(double depth) {
        String message = refusal(() -> SurveyStation.ofDip(depth, -60, 90));

        assertTrue(message.startsWith("depth is "), message);
        assertTrue(message.contains("0 or above"), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-90.01, 90.01, Double.NaN})
    void aDipOffTheVerticalCircleIsRefused(double dip) {
        String message = refusal(() -> SurveyStation.ofDip(0, dip, 90));

        assertTrue(message.startsWith("dip is "), message);
        assertTrue(message.contains("[-90, 90]"), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 360.01, Double.NaN})
    void anAzimuthBeyondACircleIsRefused(double azimuth) {
        String message = refusal(() -> SurveyStation.ofInclination(0, 30, azimuth));

        assertTrue(message.startsWith("azimuth is "), message);
        assertTrue(message.contains("[0, 360]"), message);
    }
}
