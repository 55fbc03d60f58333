package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** What is refused, what is lacking, and how things say themselves. */
class SetupTest {

    private static final HoleTrace HOLE = TestWells.magnetic("0 20 40; 40 24 50; 70 35 70");
    private static final SurveyErrorModel NONE = Models.of();

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    private static void assertTold(String part, Runnable call) {
        String told = refusal(call);
        assertTrue(told.contains(part), told);
    }

    @Test
    void whatAnErrorDependsOnIsNeverGuessed() {
        SurveyErrorSetup bare = SurveyErrorSetup.of(SurveyErrorModel.basicMagneticTool(), TieIn.MEASURED);
        assertTold("expected toolfaces", () -> TraceUncertainty.of(HOLE, bare));
        SurveyErrorSetup turned = bare.withToolface(10);
        assertTold("expected an EarthReference", () -> TraceUncertainty.of(HOLE, turned));
        HoleTrace gridOnly = Traces.of("0 20 40; 40 24 50");
        assertTold(
                "depends on its azimuth from magnetic north",
                () -> TraceUncertainty.of(gridOnly, turned.with(Models.EARTH)));
        assertEquals(
                0, TraceUncertainty.of(HOLE, turned.with(Models.EARTH)).at(0).horizontalSigma());
    }

    @Test
    void aToolfaceIsWantedForEveryStation() {
        SurveyErrorSetup setup =
                SurveyErrorSetup.of(Models.of(SurveyErrorTerms.misalignment(ToolAxis.X, 1)), TieIn.MEASURED);
        assertTold(
                "an error at 70.00 m depends on its toolface",
                () -> TraceUncertainty.of(HOLE, setup.withToolfaces(Map.of(0.0, 3.0, 40.0, 5.0))));
        Map<Double, Double> all = Map.of(0.0, 0.0, 40.0, 90.0, 70.0, 90.0);
        PointUncertainty found =
                TraceUncertainty.of(HOLE, setup.withToolfaces(all)).at(70);
        assertEquals(1, found.inclinationSigma(), 1e-12);
        assertEquals(
                1, TraceUncertainty.of(HOLE, setup.withToolfaces(all)).at(0).lateralSigma(), 1e-12);
    }

    @Test
    void aPointKnowsItsNorths() {
        SurveyErrorSource source = Models.source(PropagationMode.RANDOM, 1, point -> {
            assertEquals(point.direction().azimuth() - 2, point.neededTrueAzimuth(), 1e-9);
            assertEquals(point.direction().azimuth() - 9, point.neededMagneticAzimuth(), 1e-9);
            return UnitShift.NONE;
        });
        assertEquals(0, Models.of(HOLE, Models.of(source)).at(70).horizontalSigma());
        HoleTrace unknown = Traces.of("0 20 40");
        SurveyErrorSource needing = Models.source(PropagationMode.RANDOM, 1, point -> {
            point.neededTrueAzimuth();
            return UnitShift.NONE;
        });
        assertTold("its azimuth from true north", () -> Models.of(unknown, Models.of(needing)));
    }

    @Test
    void aHoleMeasuredFromMagneticNorthKeepsItsNorth() {
        Survey survey = Survey.of(
                        List.of(SurveyStation.ofInclination(0, 90, 0), SurveyStation.ofInclination(30, 90, 0)),
                        NorthReference.magnetic(7, -2))
                .toGrid();
        HoleTrace north = HoleTrace.minimumCurvature(Traces.COLLAR, survey);
        // a horizontal hole to magnetic north has no variable axial interference
        assertEquals(
                0,
                Models.of(north, Models.of(SurveyErrorTerms.axialInterferenceVariable(1)))
                        .at(30)
                        .horizontalSigma(),
                1e-15);
    }

    @Test
    void depthsThatTheTraceDoesNotReachAreRefused() {
        TraceUncertainty found = Models.of(Traces.of("0 20 40; 40 24 50"), NONE);
        for (double depth : new double[] {-1, 1e7, Double.NaN}) {
            refusal(() -> found.at(depth));
            refusal(() -> found.bySource(depth));
            refusal(() -> found.between(0, depth));
            refusal(() -> found.between(depth, found, 0));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY, -1})
    void sigmasThatAreNoneAreRefused(double sigma) {
        refusal(() -> SurveyErrorTerms.sag(sigma));
        refusal(() -> SurveyErrorTerms.sag(1).withSigma(sigma));
        refusal(() -> new SurveyLeg(sigma, NONE));
        refusal(() -> new EarthReference(sigma, 50000, 60));
        refusal(() -> new EarthReference(9.8, sigma, 60));
    }

    @Test
    void shiftsThatAreNoNumbersAreRefused() {
        SurveyErrorModel model =
                Models.of(Models.source(PropagationMode.RANDOM, 1, point -> point.inclined(Double.NaN)));
        refusal(() -> Models.of(HOLE, model));
        refusal(() -> UnitShift.ofDepth(Double.NaN));
        refusal(() -> new UnitShift(0, Double.NaN, 0, 0));
        refusal(() -> SurveyErrorSetup.of(NONE, TieIn.MEASURED).withToolface(Double.NaN));
        refusal(() -> SurveyErrorSetup.of(NONE, TieIn.MEASURED).withToolfaces(Map.of(0.0, Double.NaN)));
        refusal(() -> new EarthReference(9.8, 50000, 90));
        refusal(() -> point(OptionalDouble.of(Double.NaN)));
    }

    private static SurveyedPoint point(OptionalDouble toolface) {
        return new SurveyedPoint(
                0,
                HoleDirection.ofInclination(10, 20),
                0,
                OptionalDouble.empty(),
                OptionalDouble.empty(),
                toolface,
                Optional.empty());
    }

    @Test
    void legsAreChecked() {
        SurveyLeg first = new SurveyLeg(0, NONE);
        assertTold("no leg", () -> SurveyErrorSetup.ofLegs(List.of(), TieIn.MEASURED));
        assertTold("expected 0", () -> SurveyErrorSetup.ofLegs(List.of(new SurveyLeg(10, NONE)), TieIn.MEASURED));
        assertTold("expected deeper than 0.0 m", () -> SurveyErrorSetup.ofLegs(List.of(first, first), TieIn.MEASURED));
        SurveyLeg random = new SurveyLeg(0, Models.of(Models.azimuth(PropagationMode.RANDOM)));
        SurveyLeg global = new SurveyLeg(50, Models.of(Models.azimuth(PropagationMode.GLOBAL)));
        assertTold(
                "it is RANDOM in one leg and GLOBAL in another",
                () -> SurveyErrorSetup.ofLegs(List.of(random, global), TieIn.MEASURED));
    }

    @Test
    void namesAreChecked() {
        SurveyErrorSource sag = SurveyErrorTerms.sag(0.2);
        assertTold("are called sag", () -> Models.of(sag, sag));
        assertTold("blank", () -> new SurveyErrorSource(" ", 1, "", PropagationMode.RANDOM, point -> UnitShift.NONE));
        assertTold("expected X or Y", () -> SurveyErrorTerms.misalignment(ToolAxis.Z, 0.1));
        SurveyErrorModel model = Models.of(sag).with(sag.withSigma(0.5));
        assertEquals(1, model.sources().size());
        assertEquals(0.5, model.sources().get(0).sigma());
        assertEquals(
                PropagationMode.PER_WELL, sag.withMode(PropagationMode.PER_WELL).mode());
    }

    @Test
    void whatIsAssumedIsPrinted() {
        assertEquals(
                "test\n  sag 0.2 deg, systematic",
                Models.of(SurveyErrorTerms.sag(0.2)).toString());
        assertEquals(
                "depth scale 2.4E-4, systematic",
                SurveyErrorTerms.depthScale(2.4e-4).toString());
        assertEquals("9.8000 m/s2, 50000 nT dipping 65.0", Models.EARTH.toString());
        SurveyErrorSetup setup = SurveyErrorSetup.of(Models.of(SurveyErrorTerms.sag(0.2)), TieIn.MEASURED);
        assertEquals("from 0.0 m: test; tie-in MEASURED, derivatives ARCS", setup.toString());
        TraceUncertainty found = TraceUncertainty.of(HOLE, setup);
        assertTrue(found.toString().contains(setup.toString()), found::toString);
        assertEquals(
                "at 70.00 m: horizontal 0.09 m, vertical 0.04 m, inclination 0.11, azimuth 0.00 degrees (sigma)",
                found.at(70).toString());
        assertEquals(setup.legs(), found.setup().legs());
        assertEquals(Optional.empty(), setup.earth());
        assertEquals(HOLE, found.trace());
        String told = TraceMonteCarlo.of(found).withDraws(200).at(70).toString();
        assertTrue(told.contains("200 drawn holes at 70.00 m"), told);
    }
}
