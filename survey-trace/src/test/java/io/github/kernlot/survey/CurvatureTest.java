package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Curvature where parts of it do not exist, and at stations. Plane geometry, derived by hand. */
class CurvatureTest {

    @Test
    void aStraightHoleHasNoToolface() {
        Curvature curvature = Traces.of("0 30 77; 30 30 77").curvatureAt(10);

        assertEquals(0, curvature.doglegSeverity());
        assertEquals(0, curvature.build());
        assertEquals(OptionalDouble.of(0), curvature.turn());
        assertEquals(OptionalDouble.empty(), curvature.toolface());
        assertEquals(OptionalDouble.empty(), curvature.toolfaceFromNorth());
        assertEquals("dogleg 0.0, build 0.0, turn 0.0 degrees per 30 m", curvature.toString());
    }

    @ParameterizedTest
    @CsvSource({"0, 4", "180, 176"})
    void aVerticalHoleHasNoTurnAndItsToolfaceIsFromNorth(double vertical, double inclined) {
        Curvature curvature =
                Traces.of("0 " + vertical + " 11; 60 " + inclined + " 120").curvatureAt(0);

        assertEquals(2, curvature.doglegSeverity(), 1e-12);
        assertEquals(vertical == 0 ? 2 : -2, curvature.build(), 1e-12);
        assertEquals(OptionalDouble.empty(), curvature.turn());
        assertEquals(OptionalDouble.empty(), curvature.toolface());
        // clockwise looking down-hole, which of a hole that goes up is clockwise looking up
        assertEquals(vertical == 0 ? 120 : 240, curvature.toolfaceFromNorth().orElseThrow(), 1e-9);
        assertTrue(curvature.toString().endsWith("from north"), curvature.toString());
    }

    @Test
    void aVerticalStretchHasNeither() {
        Curvature curvature = Traces.of("0 0 11; 60 0 120").curvatureAt(30);

        assertEquals(0, curvature.doglegSeverity());
        assertEquals(OptionalDouble.empty(), curvature.turn());
        assertEquals(OptionalDouble.empty(), curvature.toolfaceFromNorth());
    }

    @ParameterizedTest
    @CsvSource({"33, 40, 0", "27, 40, 180", "90, 43, 90", "90, 37, 270"})
    void theToolfaceIsFromTheHighSideClockwise(double inclination, double azimuth, double toolface) {
        double from = inclination == 90 ? 90 : 30;
        Curvature curvature = Traces.of("0 " + from + " 40; 30 " + inclination + " " + azimuth)
                .curvatureAt(15);

        assertEquals(3, curvature.doglegSeverity(), 1e-12);
        assertEquals(0, Traces.apart(toolface, curvature.toolface().orElseThrow()), 1e-9);
    }

    @Test
    void atAStationThePathAboveCountsAndAtTheFirstOneThePathBelow() {
        HoleTrace trace = Traces.of("5 30 40; 35 33 40; 65 39 40");

        assertEquals(3, trace.curvatureAt(5).doglegSeverity(), 1e-9);
        assertEquals(3, trace.curvatureAt(35).doglegSeverity(), 1e-9);
        assertEquals(6, trace.curvatureAt(36).doglegSeverity(), 1e-9);
        assertEquals(6, trace.curvatureAt(65).doglegSeverity(), 1e-9);
        assertEquals(0, trace.curvatureAt(66).doglegSeverity());
        assertEquals(0, trace.curvatureAt(2).doglegSeverity());
        assertThrows(IllegalArgumentException.class, () -> trace.curvatureAt(-1));
    }

    @Test
    void aStationWhereTheHoleHasBecomeVerticalHasAToolfaceFromNorth() {
        Curvature curvature = Traces.of("0 10 90; 30 0 0").curvatureAt(30);

        assertEquals(10, curvature.doglegSeverity(), 1e-9);
        assertEquals(270, curvature.toolfaceFromNorth().orElseThrow(), 1e-9);
    }

    @Test
    void onACylinderTurnOverTheHorizontalLengthIsConstant() {
        HoleTrace trace = Traces.of("0 20 40; 100 40 80", DesurveyMethod.RADIUS_OF_CURVATURE);

        for (double depth : new double[] {0, 10, 55, 100}) {
            Curvature curvature = trace.curvatureAt(depth);
            double sine = Math.sin(Math.toRadians(trace.directionAt(depth).inclination()));
            // 40 degrees over the horizontal length (cos 20 - cos 40) / (20 degrees in radians) of 100 m
            double horizontal =
                    100 * (Math.cos(Math.toRadians(20)) - Math.cos(Math.toRadians(40))) / Math.toRadians(20);
            assertEquals(6, curvature.build(), 1e-9);
            assertEquals(30 * 40 / horizontal, curvature.turn().orElseThrow() / sine, 1e-9);
            assertEquals(Math.hypot(6, sine * curvature.turn().orElseThrow()), curvature.doglegSeverity(), 1e-9);
        }
    }

    @Test
    void theMeanBetweenStationsIsTheDifferenceOfTheirAnglesOverTheLength() {
        Curvature mean =
                Curvature.between(SurveyStation.ofInclination(10, 30, 350), SurveyStation.ofInclination(70, 36, 10));

        assertEquals(3, mean.build(), 1e-12);
        assertEquals(10, mean.turn().orElseThrow(), 1e-12);
        Curvature fromVertical =
                Curvature.between(SurveyStation.ofInclination(10, 0, 350), SurveyStation.ofInclination(70, 6, 10));
        assertEquals(OptionalDouble.empty(), fromVertical.turn());
        assertEquals(10, fromVertical.toolfaceFromNorth().orElseThrow(), 1e-9);
        SurveyStation station = SurveyStation.ofInclination(10, 30, 350);
        assertThrows(IllegalArgumentException.class, () -> Curvature.between(station, station));
    }
}
