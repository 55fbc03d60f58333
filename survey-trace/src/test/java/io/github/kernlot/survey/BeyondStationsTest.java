package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.EnumSource;

/** A trace above its first station and below its last one. */
class BeyondStationsTest {

    private static final TraceSettings ON =
            TraceSettings.assumed().withExtrapolationLimit(5000).withBeyondLast(BeyondLast.CONSTANT_CURVATURE);

    private static HoleTrace trace(String stations, TraceSettings settings) {
        return HoleTrace.of(Traces.COLLAR, Survey.of(Traces.stations(stations), NorthReference.grid()), settings);
    }

    /**
     * Computed by the closed form of minimum curvature and verified by numerical integration of the great-circle tangent to 1e-9;
     * inputs seen in drillingformulas.com, Minimum Curvature Method.
     */
    @Test
    void anArcGoesOnWithItsCurvature() {
        HoleTrace trace = trace("3500 15 20; 3600 25 45", ON);

        Displacement way = Traces.way(trace, 3500, 3650);

        assertEquals(42.733139, way.north(), 1e-6);
        assertEquals(36.913688, way.east(), 1e-6);
        assertEquals(138.190132, way.down(), 1e-6);
        assertEquals(30.804216, trace.directionAt(3650).inclination(), 1e-6);
        assertEquals(51.170166, trace.directionAt(3650).azimuth(), 1e-6);
        assertTrue(trace.isExtrapolated(3650));
        assertFalse(trace.isExtrapolated(3600));
    }

    @Property
    void theArcBeyondIsTheOneBefore(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.drifting(random, 3, 5);
        SurveyStation end = stations.get(2);
        HoleTrace whole = Traces.of(stations.subList(1, 3));
        // cut where the arc still has a part to go, and let the rest be extrapolated
        double cut = 30 + 30 * (0.2 + 0.7 * random.nextDouble());
        List<SurveyStation> shorter = List.of(stations.get(1), new SurveyStation(cut, whole.directionAt(cut)));
        HoleTrace beyond = HoleTrace.of(Traces.COLLAR, Survey.of(shorter, NorthReference.grid()), ON);

        Vector3D expected = Traces.vector(whole.displacementAt(60));
        assertEquals(0, expected.distance(Traces.vector(beyond.displacementAt(60))), 1e-9);
        assertEquals(0, end.direction().angleTo(beyond.directionAt(60)), 1e-9);
        assertEquals(whole.scribeTurn(30, 60), beyond.scribeTurn(30, 60), 1e-9);
        assertEquals(
                whole.curvatureAt(60).doglegSeverity(), beyond.curvatureAt(60).doglegSeverity(), 1e-9);
    }

    @ParameterizedTest
    @EnumSource(DesurveyMethod.class)
    void placeDirectionAndScribeAreContinuousAtTheLastStation(DesurveyMethod method) {
        for (BeyondLast beyond : BeyondLast.values()) {
            HoleTrace trace = trace("10 30 40; 40 34 48", ON.withMethod(method).withBeyondLast(beyond));
            double below = Math.nextUp(40.0);

            assertEquals(0, Traces.way(trace, 40, below).length(), 1e-12);
            assertEquals(0, trace.directionAt(40).angleTo(trace.directionAt(below)), 1e-9);
            assertEquals(0, trace.scribeTurn(40, below), 1e-9);
            assertEquals(0, Traces.apart(0, trace.carriedFrameAt(below).turnFrom(trace.carriedFrameAt(40))), 1e-9);
            assertEquals(0, trace.directionAt(0).angleTo(trace.directionAt(10)), 0);
            assertEquals(10, trace.displacementAt(10).length(), 1e-12, "straight from the collar to the first station");
        }
    }

    @Test
    void anArcIsFollowedUntilItHasTurnedByARightAngle() {
        HoleTrace trace = trace("0 10 90; 30 20 90", ON);

        assertEquals(30 + 270, trace.reach(), 1e-9);
        assertEquals(110, trace.directionAt(trace.reach()).inclination(), 1e-9);
        assertThrows(IllegalArgumentException.class, () -> trace.directionAt(trace.reach() + 0.01));
    }

    @Test
    void aHoleThatKeptItsDirectionGoesOnStraight() {
        HoleTrace trace = trace("0 10 90; 30 10 90", ON);

        assertEquals(5030, trace.reach());
        assertEquals(0, trace.curvatureAt(1000).doglegSeverity());
        assertEquals(1000, Traces.way(trace, 30, 1030).length(), 1e-9);
    }

    @Test
    void oneStationHasNoCurvatureToGoOnWith() {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, () -> trace("0 10 90", ON));

        assertTrue(refused.getMessage().contains("one station"), refused.getMessage());
    }

    @Test
    void throughVerticalAnArcGoesUpTheOtherSide() {
        HoleTrace trace = trace("0 12 30; 30 6 30", ON);

        assertEquals(6, trace.directionAt(90).inclination(), 1e-12);
        assertEquals(210, trace.directionAt(90).azimuth(), 1e-9);
        assertEquals(180, Math.abs(trace.scribeTurn(0, 90)), 1e-9);
        assertEquals(trace.scribeTurn(0, 90), trace.scribeTurn(0, 100), 1e-9);
    }

    @Test
    void settingsAreCheckedAndChangedOneByOne() {
        TraceSettings settings = TraceSettings.assumed()
                .withMethod(DesurveyMethod.TANGENTIAL)
                .withExtrapolationLimit(12)
                .withBeyondLast(BeyondLast.CONSTANT_CURVATURE);

        assertEquals(new TraceSettings(DesurveyMethod.TANGENTIAL, 12, BeyondLast.CONSTANT_CURVATURE), settings);
        assertThrows(IllegalArgumentException.class, () -> settings.withExtrapolationLimit(-1));
        assertEquals(settings, trace("0 10 90; 30 10 90", settings).settings());
    }
}
