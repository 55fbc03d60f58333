package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.orientation.HoleDirection;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

/** Minimum curvature against worked examples and closed forms; lengths in the unit of the source, which does not matter here. */
class MinimumCurvatureTest {

    @ParameterizedTest
    @CsvFileSource(resources = "minimum-curvature-positions.csv", useHeadersInDisplayName = true)
    void positionsFromTheFirstStationMeetTheirCheckValues(
            String hole,
            String stations,
            double depth,
            Double north,
            Double east,
            Double down,
            double tolerance,
            String source) {
        HoleTrace trace = Traces.of(stations);
        double first = trace.survey().stations().get(0).depth();

        Displacement way = Traces.way(trace, first, depth);

        assertMeets(north, way.north(), tolerance, hole + ", north, " + source);
        assertMeets(east, way.east(), tolerance, hole + ", east, " + source);
        assertMeets(down, way.down(), tolerance, hole + ", down, " + source);
    }

    /** A blank cell checks nothing. */
    private static void assertMeets(Double expected, double found, double tolerance, String what) {
        if (expected != null) {
            assertEquals(expected, found, tolerance, what);
        }
    }

    @ParameterizedTest
    @CsvFileSource(resources = "minimum-curvature-directions.csv", useHeadersInDisplayName = true)
    void directionsMeetTheirCheckValues(
            String hole,
            String stations,
            double depth,
            double inclination,
            double azimuth,
            double tolerance,
            String source) {
        HoleDirection direction = Traces.of(stations).directionAt(depth);

        assertEquals(inclination, direction.inclination(), tolerance, hole + ", inclination, " + source);
        assertEquals(0, Traces.apart(azimuth, direction.azimuth()), tolerance, hole + ", azimuth, " + source);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "doglegs.csv", useHeadersInDisplayName = true)
    void doglegsMeetTheirCheckValues(
            double inclination1,
            double azimuth1,
            double inclination2,
            double azimuth2,
            double dogleg,
            double tolerance,
            String source) {
        HoleDirection from = HoleDirection.ofInclination(inclination1, azimuth1);
        HoleDirection to = HoleDirection.ofInclination(inclination2, azimuth2);

        assertEquals(dogleg, from.angleTo(to), tolerance, source);
        assertEquals(dogleg, to.angleTo(from), tolerance, source);
    }

    /** The gravity that a sensor reads along and across the hole is a vector whose angle to the axis is the inclination. */
    @ParameterizedTest
    @CsvFileSource(resources = "gravity-inclinations.csv", useHeadersInDisplayName = true)
    void inclinationsFromGravityMeetTheirCheckValues(
            double across1, double across2, double along, double inclination, double tolerance, String source) {
        HoleDirection direction = HoleDirection.ofVector(across1, across2, along);

        assertEquals(inclination, direction.inclination(), tolerance, source);
    }
}
