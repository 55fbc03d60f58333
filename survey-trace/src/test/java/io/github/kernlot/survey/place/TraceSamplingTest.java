package io.github.kernlot.survey.place;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.Random;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import org.junit.jupiter.api.Test;

class TraceSamplingTest {

    private static double[] depths(List<TracePoint> points) {
        return points.stream().mapToDouble(TracePoint::depth).toArray();
    }

    @Test
    void noStationIsLostBetweenSteps() {
        HoleTrace trace = Traces.of("5 30 90; 20 31 90; 33.3 32 90");

        List<TracePoint> points = TraceSampling.byDepth(trace, 10, 45);

        assertArrayEquals(new double[] {0, 5, 10, 20, 30, 33.3, 40, 45}, depths(points));
        assertTrue(points.get(0).extrapolated() && points.get(7).extrapolated());
        assertEquals(trace.positionAt(33.3), points.get(5).position());
    }

    @Test
    void aMultipleThatFallsOnAStationWithinRoundingIsTheStation() {
        // 3 * 0.1 is not 0.3
        HoleTrace trace = Traces.of("0 30 90; 0.3 30 90");

        assertArrayEquals(new double[] {0, 0.1, 0.2, 0.3}, depths(TraceSampling.byDepth(trace, 0.1, 0.3)));
    }

    @Test
    void roundElevationsAreMetAsOftenAsTheHoleComesThere() {
        // the collar is at 300; the deepest place 4.35 below
        List<TracePoint> points = TraceSampling.byElevation(Traces.of("0 80 0; 100 100 0"), 2, 100);

        double[] elevations = points.stream()
                .mapToDouble(point -> point.position().elevation())
                .toArray();
        assertArrayEquals(new double[] {300, 298, 296, 296, 298, 300}, elevations, 1e-9);
    }

    @Test
    void aHoleThatRisesAndOneThatIsLevelAreSampledToo() {
        // from 300 up: 301 and 308 and 315 are multiples of 7
        assertArrayEquals(
                new double[] {0, 1, 8, 15, 20}, depths(TraceSampling.byElevation(Traces.of("0 180 0"), 7, 20)), 1e-12);
        assertArrayEquals(
                new double[] {0, 10, 50}, depths(TraceSampling.byElevation(Traces.of("0 90 0; 10 90 5"), 7, 50)));
    }

    @Test
    void badNumbersAreRefused() {
        HoleTrace trace = Traces.of("0 30 90");

        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byDepth(trace, 0, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byDepth(trace, Double.NaN, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byDepth(trace, 1, 1e7));
        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byDepth(trace, 1e-7, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byElevation(trace, -1, 10));
        assertThrows(IllegalArgumentException.class, () -> TraceSampling.byElevation(trace, 1, Double.NaN));
    }

    @Property(tries = 100)
    void betweenNeighboursTheHoleMovesByOneStepOfElevationAtMost(@ForAll long seed) {
        Random random = new Random(seed);
        List<SurveyStation> stations = Traces.wandering(random, 10);
        HoleTrace trace = Traces.of(stations);
        double step = 1 + 9 * random.nextDouble();

        List<TracePoint> points = TraceSampling.byElevation(trace, step, Traces.lastDepth(stations));

        List<Double> depths = points.stream().map(TracePoint::depth).toList();
        assertTrue(
                depths.containsAll(stations.stream().map(SurveyStation::depth).toList()));
        for (int i = 1; i < points.size(); i++) {
            assertTrue(depths.get(i) > depths.get(i - 1));
            double one = points.get(i - 1).position().elevation();
            double other = points.get(i).position().elevation();
            assertTrue(Math.abs(other - one) <= step + 1e-9);
            // no round elevation strictly between
            assertTrue(Math.floor((Math.max(one, other) - 1e-6) / step)
                    <= Math.floor((Math.min(one, other) + 1e-6) / step));
        }
    }
}
