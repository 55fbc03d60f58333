package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Traces;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/**
 * A straight hole of inclination 60 due east, ten intervals of 30 m. The figures were computed apart from this library and checked
 * by drawing 4,000 holes; the rules behind them are written beside.
 */
class StraightHoleTest {

    private static final HoleTrace HOLE = Models.straight(10, 30, 60, 90);
    private static final double RELATIVE = 1e-3;

    private static Covariance end(SurveyErrorSource source, TieIn tieIn) {
        return Models.of(HOLE, Models.of(source), tieIn).at(300).place();
    }

    private static void assertSigma(double expected, double variance) {
        assertEquals(expected, Math.sqrt(variance), RELATIVE * expected);
    }

    @ParameterizedTest
    @EnumSource(
            value = PropagationMode.class,
            names = {"SYSTEMATIC", "PER_WELL", "GLOBAL"})
    void aSharedAzimuthErrorGrowsWithTheHorizontalLength(PropagationMode mode) {
        assertSigma(4.534498, end(Models.azimuth(mode), TieIn.MEASURED).northNorth());
        assertSigma(4.307773, end(Models.azimuth(mode), TieIn.ERROR_FREE).northNorth());
    }

    @Test
    void aRandomAzimuthErrorGrowsWithTheRootOfTheStations() {
        // h sin I s sqrt(n - 1 + 1/4)
        assertSigma(
                1.379114,
                end(Models.azimuth(PropagationMode.RANDOM), TieIn.ERROR_FREE).northNorth());
        // and the half interval of the first station
        double first = 30 * Math.sin(Math.PI / 3) * Math.toRadians(1) * Math.sqrt(9.5);
        assertSigma(
                first,
                end(Models.azimuth(PropagationMode.RANDOM), TieIn.MEASURED).northNorth());
    }

    @Test
    void aSharedInclinationErrorTiltsTheHole() {
        Covariance end = end(Models.inclination(PropagationMode.SYSTEMATIC), TieIn.ERROR_FREE);
        assertSigma(2.487094, end.eastEast());
        assertSigma(4.307773, end.downDown());
        assertEquals(0, end.northNorth(), 1e-20);
    }

    @Test
    void aRandomInclinationErrorTiltsTheHoleStationByStation() {
        Covariance end = end(Models.inclination(PropagationMode.RANDOM), TieIn.ERROR_FREE);
        assertSigma(0.796232, end.eastEast());
        assertSigma(1.379114, end.downDown());
    }

    @Test
    void aRandomDepthErrorIsThatOfTheStationAlone() {
        Covariance end = end(SurveyErrorTerms.depthRandom(0.35), TieIn.ERROR_FREE);
        assertSigma(0.303109, end.eastEast());
        assertSigma(0.175, end.downDown());
    }

    @Test
    void aDepthScaleStretchesTheHole() {
        Covariance end = end(SurveyErrorTerms.depthScale(0.001), TieIn.MEASURED);
        assertSigma(0.3 * Math.sqrt(0.75), end.eastEast());
        assertSigma(0.15, end.downDown());
    }

    @Test
    void aDepthStretchGrowsWithDepthAndVerticalDepth() {
        Covariance end = end(SurveyErrorTerms.depthStretch(1e-5), TieIn.MEASURED);
        assertSigma(1e-5 * 300 * 150 / 2, end.downDown());
    }

    @Test
    void eachLegDrawsItsOwnSystematicError() {
        SurveyErrorModel model = Models.of(Models.azimuth(PropagationMode.SYSTEMATIC));
        SurveyErrorSetup two =
                SurveyErrorSetup.ofLegs(List.of(new SurveyLeg(0, model), new SurveyLeg(150, model)), TieIn.MEASURED);
        double found = TraceUncertainty.of(HOLE, two).at(300).place().northNorth();
        // stations to 150 m act over 165 m, those below over 135 m
        double unit = Math.sin(Math.PI / 3) * Math.toRadians(1);
        assertSigma(unit * Math.hypot(165, 135), found);
    }

    @Test
    void aLegPerStationIsRandom() {
        SurveyErrorModel model = Models.of(Models.azimuth(PropagationMode.SYSTEMATIC));
        List<SurveyLeg> legs = java.util.stream.IntStream.range(0, 11)
                .mapToObj(i -> new SurveyLeg(i == 0 ? 0 : 30 * i - 15, model))
                .toList();
        TraceUncertainty legwise = TraceUncertainty.of(HOLE, SurveyErrorSetup.ofLegs(legs, TieIn.MEASURED));
        TraceUncertainty random = Models.of(HOLE, Models.of(Models.azimuth(PropagationMode.RANDOM)));
        for (double depth = 0; depth < 320; depth += 7) {
            Covariance one = legwise.at(depth).place();
            Covariance other = random.at(depth).place();
            assertEquals(other.northNorth(), one.northNorth(), 1e-12 * (1 + other.northNorth()));
        }
    }

    @Test
    void aSourceByWellIsSharedByLegsWithSigmasOfTheirOwn() {
        SurveyErrorSource source = Models.azimuth(PropagationMode.PER_WELL);
        SurveyErrorSetup two = SurveyErrorSetup.ofLegs(
                List.of(new SurveyLeg(0, Models.of(source)), new SurveyLeg(150, Models.of(source.withSigma(2)))),
                TieIn.MEASURED);
        double unit = Math.sin(Math.PI / 3) * Math.toRadians(1);
        assertSigma(
                unit * (165 + 2 * 135),
                TraceUncertainty.of(HOLE, two).at(300).place().northNorth());
    }

    @Test
    void aSourceThatOneLegLacksIsNotInItsStations() {
        SurveyErrorSetup two = SurveyErrorSetup.ofLegs(
                List.of(
                        new SurveyLeg(0, Models.of()),
                        new SurveyLeg(150, Models.of(Models.azimuth(PropagationMode.GLOBAL)))),
                TieIn.MEASURED);
        double unit = Math.sin(Math.PI / 3) * Math.toRadians(1);
        assertSigma(unit * 135, TraceUncertainty.of(HOLE, two).at(300).place().northNorth());
    }

    @Test
    void theTieInIsExactWhereItIsSaidToBe() {
        SurveyErrorModel model = SurveyErrorModel.basicMagneticToolAtAnyToolface();
        HoleTrace hole = TestWells.magnetic("0 30 10; 50 31 12; 90 33 11");
        PointUncertainty tie = Models.of(hole, model, TieIn.ERROR_FREE).at(0);
        for (double[] row : tie.joint()) {
            for (double value : row) {
                assertEquals(0, value);
            }
        }
        PointUncertainty measured = Models.of(hole, model, TieIn.MEASURED).at(0);
        assertEquals(0, measured.horizontalSigma());
        assertTrue(measured.inclinationSigma() > 0.01);
    }

    @Test
    void aboveTheFirstStationTheHoleIsStraightFromTheCollar() {
        HoleTrace hole = Traces.of("20 60 90; 50 60 90");
        TraceUncertainty found = Models.of(hole, Models.of(Models.azimuth(PropagationMode.RANDOM)));
        double unit = Math.sin(Math.PI / 3) * Math.toRadians(1);
        assertSigma(10 * unit, found.at(10).place().northNorth());
        assertEquals(1, found.at(10).azimuthSigma().orElseThrow(), 1e-12);
        TraceUncertainty depths = Models.of(hole, Models.of(SurveyErrorTerms.depthRandom(0.4)));
        // half of the way, half of the station's depth error
        assertSigma(0.1, depths.at(10).place().downDown());
        assertSigma(0.2, depths.at(20).place().downDown());
    }

    @Test
    void betweenStationsDepthErrorsAreSharedInProportion() {
        TraceUncertainty depths = Models.of(HOLE, Models.of(SurveyErrorTerms.depthRandom(0.35)));
        assertSigma(0.175 * Math.hypot(0.75, 0.25), depths.at(97.5).place().downDown());
    }

    @Test
    void belowTheLastStationSharedDepthErrorsGoOn() {
        TraceUncertainty scale = Models.of(HOLE, Models.of(SurveyErrorTerms.depthScale(0.001)));
        assertSigma(0.001 * 330 / 2, scale.at(330).place().downDown());
        TraceUncertainty random = Models.of(HOLE, Models.of(SurveyErrorTerms.depthRandom(0.35)));
        assertSigma(0.175, random.at(330).place().downDown());
        TraceUncertainty azimuth = Models.of(HOLE, Models.of(Models.azimuth(PropagationMode.GLOBAL)));
        assertSigma(4.534498 * 1.1, azimuth.at(330).place().northNorth());
    }

    @Test
    void oneStationIsEnough() {
        HoleTrace hole = Traces.of("0 60 90");
        TraceUncertainty found = Models.of(hole, Models.of(Models.azimuth(PropagationMode.RANDOM)));
        assertSigma(
                Math.sin(Math.PI / 3) * Math.toRadians(1) * 30,
                found.at(30).place().northNorth());
        assertEquals(1, found.at(30).azimuthSigma().orElseThrow(), 1e-12);
    }
}
