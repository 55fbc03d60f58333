package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Position;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** What two places share cancels between them. */
class SeparationTest {

    private static final double TOLERANCE = 1e-12;

    private static HoleTrace shifted(double north) {
        List<SurveyStation> stations = Models.straight(10, 30, 60, 90).survey().stations();
        return HoleTrace.minimumCurvature(
                Position.ofEastingNorthingElevation(5000, 7000 + north, 300),
                Survey.of(stations, NorthReference.grid()));
    }

    private static TraceUncertainty of(HoleTrace trace, PropagationMode mode) {
        return Models.of(trace, Models.of(Models.azimuth(mode)));
    }

    @Test
    void aGlobalErrorCancelsBetweenParallelHoles() {
        Separation found =
                of(shifted(0), PropagationMode.GLOBAL).between(300, of(shifted(40), PropagationMode.GLOBAL), 300);
        assertEquals(40, found.distance(), 1e-9);
        assertEquals(0, found.covariance().northNorth());
        assertEquals(0, found.distanceSigma().orElseThrow());
    }

    @ParameterizedTest
    @EnumSource(
            value = PropagationMode.class,
            names = {"RANDOM", "SYSTEMATIC", "PER_WELL"})
    void otherErrorsAddUpBetweenHoles(PropagationMode mode) {
        TraceUncertainty one = of(shifted(0), mode);
        Separation found = one.between(300, of(shifted(40), mode), 300);
        double alone = one.at(300).place().northNorth();
        assertEquals(2 * alone, found.covariance().northNorth(), TOLERANCE);
        assertEquals(Math.sqrt(2 * alone), found.distanceSigma().orElseThrow(), TOLERANCE);
        assertEquals(40, found.way().north(), 1e-9);
    }

    @Test
    void aGlobalErrorThatTheOtherHoleLacksDoesNotCancel() {
        TraceUncertainty one = of(shifted(0), PropagationMode.GLOBAL);
        TraceUncertainty other = Models.of(shifted(40), Models.of());
        double alone = one.at(300).place().northNorth();
        assertEquals(alone, one.between(300, other, 300).covariance().northNorth(), TOLERANCE);
        assertEquals(alone, other.between(300, one, 300).covariance().northNorth(), TOLERANCE);
    }

    @Test
    void oneNameForAGlobalAndALocalErrorIsRefused() {
        TraceUncertainty one = of(shifted(0), PropagationMode.GLOBAL);
        TraceUncertainty other = of(shifted(40), PropagationMode.PER_WELL);
        String told = assertThrows(IllegalArgumentException.class, () -> one.between(300, other, 300))
                .getMessage();
        assertTrue(told.contains("it is GLOBAL in one hole and PER_WELL in the other"), told);
    }

    @Property
    void aPlaceIsExactlyItself(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, 8, 0);
        TraceUncertainty found = Models.of(TestWells.magnetic(stations), SurveyErrorModel.basicMagneticTool());
        double depth = 240 * random.nextDouble();
        Separation separation = found.between(depth, depth);
        assertEquals(Covariance.ZERO, separation.covariance());
        assertEquals(0, separation.distance());
        assertTrue(separation.distanceSigma().isEmpty());
    }

    @Property
    void fromTheCollarTheSeparationIsThePlace(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, 8, 0);
        TraceUncertainty found = Models.of(TestWells.magnetic(stations), SurveyErrorModel.basicMagneticTool());
        double depth = 240 * random.nextDouble();
        assertSame(found.at(depth).place(), found.between(0, depth).covariance());
        assertSame(found.at(depth).place(), found.between(depth, 0).covariance());
    }

    /** The way between two depths is made of the interval alone, when nothing but the stations there err. */
    @Test
    void withinAHoleWhatLiesAboveCancels() {
        TraceUncertainty found = of(shifted(0), PropagationMode.RANDOM);
        Covariance whole = found.between(150, 300).covariance();
        // stations at 150 and 300 act over 15 m, four between over 30 m
        double unit = Math.sin(Math.PI / 3) * Math.toRadians(1);
        assertEquals(unit * unit * (2 * 225 + 4 * 900), whole.northNorth(), 1e-9);
        TraceUncertainty shared = of(shifted(0), PropagationMode.GLOBAL);
        assertEquals(
                unit * unit * 150 * 150, shared.between(150, 300).covariance().northNorth(), 1e-9);
    }

    private static void assertSame(Covariance one, Covariance other) {
        double[][] a = one.toArray();
        double[][] b = other.toArray();
        for (int i = 0; i < 3; i++) {
            for (int j = 0; j < 3; j++) {
                assertEquals(a[i][j], b[i][j], 1e-10);
            }
        }
    }

    @Test
    void theSeparationSaysItself() {
        Separation found =
                of(shifted(0), PropagationMode.PER_WELL).between(300, of(shifted(40), PropagationMode.PER_WELL), 300);
        assertEquals("40.00 m apart, sigma 6.41 m", found.toString());
    }
}
