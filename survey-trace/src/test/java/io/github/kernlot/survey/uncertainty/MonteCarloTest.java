package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;
import org.junit.jupiter.params.provider.MethodSource;
import org.junit.jupiter.params.provider.ValueSource;

/** The first order against drawn holes that are traced anew, within what so many draws can tell. */
class MonteCarloTest {

    private static final HoleTrace BENT =
            TestWells.magnetic("0 20 40; 40 24 50; 70 35 70; 120 50 75; 150 62 110; 200 80 120");
    private static final int DRAWS = 4000;

    private static MonteCarloReport drawn(SurveyErrorModel model, double depth) {
        return TraceMonteCarlo.of(Models.of(BENT, model))
                .withDraws(DRAWS)
                .withSeed(5)
                .at(depth);
    }

    private static void assertAgrees(MonteCarloReport report) {
        assertTrue(report.placeDiscrepancy() < 3, report::toString);
        assertTrue(report.directionDiscrepancy() < 3, report::toString);
        assertEquals(0, report.discarded());
    }

    static Stream<SurveyErrorSource> standardTerms() {
        return Stream.concat(
                SurveyErrorModel.basicMagneticTool().sources().stream(),
                SurveyErrorModel.basicMagneticToolAtAnyToolface().sources().stream()
                        .filter(source -> source.name().contains(",")));
    }

    @ParameterizedTest
    @MethodSource("standardTerms")
    void eachTermAgrees(SurveyErrorSource source) {
        assertAgrees(drawn(Models.of(source), 185));
    }

    @ParameterizedTest
    @EnumSource(PropagationMode.class)
    void eachModeAgrees(PropagationMode mode) {
        SurveyErrorSource tilt =
                Models.source(mode, 0.3, point -> point.inclined(1).plus(point.swung(2)));
        SurveyErrorModel model = Models.of(tilt);
        List<SurveyLeg> legs = List.of(new SurveyLeg(0, model), new SurveyLeg(70, model));
        TraceUncertainty found = TraceUncertainty.of(BENT, SurveyErrorSetup.ofLegs(legs, TieIn.MEASURED));
        for (double depth : new double[] {55, 120, 185, 230}) {
            assertAgrees(TraceMonteCarlo.of(found).withDraws(DRAWS).at(depth));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {40, 95, 200, 260})
    void theWholeModelAgrees(double depth) {
        MonteCarloReport report = drawn(SurveyErrorModel.basicMagneticTool(), depth);
        assertAgrees(report);
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                double apart =
                        report.drawn().joint()[i][j] - report.firstOrder().joint()[i][j];
                assertEquals(0, apart, 4 * report.standardError(i, j));
            }
        }
    }

    @ParameterizedTest
    @ValueSource(strings = {"0 0 0; 50 0 0; 90 0 0", "0 180 0; 50 180 0; 90 180 0", "0 90 10; 50 90 30; 90 90 40"})
    void verticalUpwardAndHorizontalHolesAgree(String stations) {
        TraceUncertainty found = Models.of(TestWells.magnetic(stations), SurveyErrorModel.basicMagneticTool());
        assertAgrees(TraceMonteCarlo.of(found).withDraws(DRAWS).at(75));
    }

    @ParameterizedTest
    @EnumSource(TieIn.class)
    void theStretchAboveTheFirstStationAgrees(TieIn tieIn) {
        TraceUncertainty found = Models.of(
                TestWells.magnetic("25 30 40; 60 35 45; 90 36 60"), SurveyErrorModel.basicMagneticTool(), tieIn);
        for (double depth : new double[] {10, 25, 80}) {
            assertAgrees(TraceMonteCarlo.of(found).withDraws(DRAWS).at(depth));
        }
    }

    @Test
    void theSigmasOfASurveyAgree() {
        TraceUncertainty found = Models.of(BENT, SurveySigmas.assumed().model());
        assertAgrees(TraceMonteCarlo.of(found).withDraws(DRAWS).withSeed(3).at(190));
    }

    @Test
    void errorsTooLargeForTheFirstOrderAreSeen() {
        SurveyErrorSource wild = Models.source(PropagationMode.GLOBAL, 40, point -> point.inclined(1));
        assertTrue(drawn(Models.of(wild), 200).placeDiscrepancy() > 3);
    }

    @Test
    void theBitsDoNotDependOnTheThreads() {
        TraceMonteCarlo one = TraceMonteCarlo.of(Models.of(BENT, SurveyErrorModel.basicMagneticTool()))
                .withDraws(1100);
        double[][] alone = one.at(150).drawn().joint();
        double[][] together = one.withThreads(3).at(150).drawn().joint();
        for (int i = 0; i < alone.length; i++) {
            assertArrayEquals(alone[i], together[i], 0);
        }
        assertTrue(one.withSeed(2).at(150).drawn().joint()[0][0] != alone[0][0]);
    }

    @Test
    void drawsWithoutAHoleAreToldAndTooFewAreRefused() {
        HoleTrace dense = Traces.of("0 30 90; 1 30 90; 2 30 90");
        TraceMonteCarlo some = TraceMonteCarlo.of(Models.of(dense, Models.of(SurveyErrorTerms.depthRandom(0.5))))
                .withDraws(1000);
        assertTrue(some.at(2).discarded() > 0);
        assertEquals(1000, some.at(2).discarded() + some.at(2).draws());
        TraceMonteCarlo none = TraceMonteCarlo.of(Models.of(dense, Models.of(SurveyErrorTerms.depthScale(-0.0))));
        assertThrows(IllegalArgumentException.class, () -> none.withDraws(99));
        assertThrows(IllegalArgumentException.class, () -> none.withThreads(0));
        TraceMonteCarlo few = TraceMonteCarlo.of(Models.of(dense, Models.of(SurveyErrorTerms.depthRandom(500))))
                .withDraws(100);
        String told = assertThrows(IllegalStateException.class, () -> few.at(2)).getMessage();
        assertTrue(told.contains("of 100 draws keep the depths of their stations in order"), told);
    }
}
