package io.github.kernlot.survey.uncertainty;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.Traces;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** The errors of a survey by its sigmas, by hand in a straight hole. */
class SurveySigmasTest {

    private static final double DEGREE = Math.PI / 180;
    private static final double SIN_60 = Math.sqrt(0.75);
    private static final HoleTrace HOLE = Models.straight(2, 100, 60, 90);

    private static PointUncertainty at(double depth, SurveySigmas sigmas) {
        return Models.of(HOLE, sigmas.model()).at(depth);
    }

    @Test
    void theDipActsAlongAndTheAzimuthSideways() {
        Covariance end = at(200, SurveySigmas.of(1, 0, 0, 0)).place();
        // stations act over 50, 100 and 50 m
        assertEquals(15000 * DEGREE * DEGREE * 0.75, end.northNorth(), 1e-9);
        assertEquals(0, end.downDown(), 1e-20);
        Covariance dips = at(200, SurveySigmas.of(0, 0.3, 0, 0)).place();
        double unit = 0.3 * DEGREE;
        assertEquals(15000 * unit * unit * 0.75, dips.downDown(), 1e-9);
        assertEquals(15000 * unit * unit, dips.northNorth(), 1e-9);
    }

    @Test
    void biasesAreSharedByTheHole() {
        Covariance end = at(200, SurveySigmas.of(0, 0, 0.5, 0.1)).place();
        double sideways = Math.hypot(0.5 * SIN_60, 0.1) * DEGREE;
        assertEquals(200 * sideways, Math.sqrt(end.northNorth()), 1e-9);
        assertEquals(200 * 0.1 * DEGREE * SIN_60, Math.sqrt(end.downDown()), 1e-9);
    }

    @Test
    void theAzimuthOfOneStationIsJoinedByTheDipOverTheSine() {
        PointUncertainty point = at(100, SurveySigmas.of(1, 0.3, 0, 0));
        assertEquals(Math.hypot(1, 0.3 / SIN_60), point.azimuthSigma().orElseThrow(), 1e-9);
        assertEquals(0.3, point.inclinationSigma(), 1e-12);
    }

    @Test
    void aStationHasSigmasOfItsOwn() {
        SurveySigmas sigmas = SurveySigmas.of(1, 0.3, 0, 0)
                .withStations(List.of(
                        new StationSigma(100, OptionalDouble.of(2), OptionalDouble.empty()),
                        new StationSigma(200, OptionalDouble.empty(), OptionalDouble.of(0.7))));
        assertEquals(2, at(100, sigmas).azimuthSigma().orElseThrow(), 1e-9);
        assertEquals(0.3, at(100, sigmas).inclinationSigma(), 1e-12);
        assertEquals(Math.hypot(1, 0.7 / SIN_60), at(200, sigmas).azimuthSigma().orElseThrow(), 1e-9);
        assertEquals(0.7, at(200, sigmas).inclinationSigma(), 1e-12);
        assertEquals(Math.hypot(1, 0.3 / SIN_60), at(0, sigmas).azimuthSigma().orElseThrow(), 1e-9);
    }

    @Test
    void aVerticalHoleHasADirectionAndNoAzimuth() {
        PointUncertainty point = Models.of(
                        Traces.of("0 0 0; 100 0 120"),
                        SurveySigmas.of(1, 0.3, 0, 0).model())
                .at(100);
        assertTrue(point.azimuthSigma().isEmpty());
        assertEquals(0.3, point.lateralSigma(), 1e-12);
        assertEquals(0.3, point.inclinationSigma(), 1e-12);
        assertEquals(0, point.tangent().downDown(), 1e-30);
        assertTrue(point.toString().contains("azimuth undefined"), point::toString);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void whatIsNoSigmaIsRefused(double sigma) {
        assertThrows(IllegalArgumentException.class, () -> SurveySigmas.of(sigma, 0, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> SurveySigmas.of(0, sigma, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> SurveySigmas.of(0, 0, sigma, 0));
        assertThrows(IllegalArgumentException.class, () -> SurveySigmas.of(0, 0, 0, sigma));
        assertThrows(
                IllegalArgumentException.class,
                () -> new StationSigma(0, OptionalDouble.of(sigma), OptionalDouble.empty()));
        assertThrows(
                IllegalArgumentException.class,
                () -> new StationSigma(0, OptionalDouble.empty(), OptionalDouble.of(sigma)));
    }

    @Test
    void oneStationCannotHaveTwo() {
        StationSigma own = new StationSigma(100, OptionalDouble.of(2), OptionalDouble.empty());
        assertThrows(
                IllegalArgumentException.class, () -> SurveySigmas.assumed().withStations(List.of(own, own)));
    }

    @Test
    void theTablesAskTwoNumbers() {
        PointUncertainty point = at(150, SurveySigmas.assumed());
        assertEquals(point.place().horizontalSigma(), point.horizontalSigma());
        assertEquals(Math.sqrt(point.place().northNorth() + point.place().eastEast()), point.horizontalSigma(), 1e-15);
        assertEquals(Math.sqrt(point.place().downDown()), point.verticalSigma(), 1e-15);
        assertEquals(
                "azimuth 1.0, dip 0.3, biases 0.5 and 0.1 degrees",
                SurveySigmas.assumed().toString());
    }
}
