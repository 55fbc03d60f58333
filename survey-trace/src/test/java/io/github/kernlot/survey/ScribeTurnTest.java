package io.github.kernlot.survey;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.CorePlane;
import io.github.kernlot.orientation.PlaneOrientation;
import java.util.ArrayList;
import java.util.List;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.CsvSource;

/** How far a straight scribe turns from the low side: check values derived without the library. */
class ScribeTurnTest {

    /** A hole whose plunge grows by 3 degrees while its azimuth turns by 13. */
    private static final HoleTrace STEEPENING = Traces.of("0 30 90; 30 29.8 90.6; 60 29.5 91.4; 90 29.6 92.5;"
            + "120 29.1 93.9; 150 28.7 95.2; 180 28.4 96.8; 210 28 98.1; 240 27.8 99.7; 270 27.3 101.4; 300 27 103");

    @ParameterizedTest
    @CsvFileSource(resources = "scribe-turns.csv", useHeadersInDisplayName = true)
    void theTurnOfASmoothPathIsMinusTheIntegralOfTheCosine(
            String path,
            double inclinationFrom,
            double inclinationTo,
            double azimuthFrom,
            double azimuthTo,
            double smooth,
            double singleArc,
            String source) {
        HoleTrace dense = dense(inclinationFrom, inclinationTo, azimuthFrom, azimuthTo, 20_000);
        assertEquals(smooth, dense.scribeTurn(0, 100), 6e-7, path + ", " + source);
        assertEquals(-smooth, dense.scribeTurn(100, 0), 6e-7, path + ", " + source);
        HoleTrace ends = dense(inclinationFrom, inclinationTo, azimuthFrom, azimuthTo, 1);
        assertEquals(singleArc, ends.scribeTurn(0, 100), 5e-5, path + ", " + source);
    }

    /** Stations along a path whose inclination and azimuth grow evenly together. */
    private static HoleTrace dense(
            double inclinationFrom, double inclinationTo, double azimuthFrom, double azimuthTo, int arcs) {
        List<SurveyStation> stations = new ArrayList<>();
        for (int i = 0; i <= arcs; i++) {
            double fraction = (double) i / arcs;
            stations.add(SurveyStation.ofInclination(
                    100 * fraction,
                    inclinationFrom + fraction * (inclinationTo - inclinationFrom),
                    (azimuthFrom + fraction * (azimuthTo - azimuthFrom)) % 360));
        }
        return Traces.of(stations);
    }

    @ParameterizedTest
    @CsvFileSource(resources = "scribe-turn-intervals.csv", useHeadersInDisplayName = true)
    void theTurnsOfTheIntervalsOfASurveyMeetTheirCheckValues(double from, double to, double turn, String source) {
        assertEquals(turn, STEEPENING.scribeTurn(from, to), 5.1e-5, source);
    }

    @Test
    void aPlaneReadFromALineCarriedOver300MetresIsPutRightByTheTurn() {
        CorePlane read = CorePlane.of(35, 120);
        CoreFrame straight = CoreFrame.at(STEEPENING.directionAt(300), 0);
        CoreFrame turned = CoreFrame.at(STEEPENING.directionAt(300), STEEPENING.scribeTurn(0, 300));

        // derived and checked numerically: 021.38/45.81 without the turn, 010.94/50.99 with it, poles 9.36 degrees
        // apart
        PlaneOrientation uncorrected = straight.toGeographic(read);
        PlaneOrientation corrected = turned.toGeographic(read);
        assertEquals(21.38, uncorrected.dipDirection(), 0.005);
        assertEquals(45.81, uncorrected.dip(), 0.005);
        assertEquals(10.94, corrected.dipDirection(), 0.005);
        assertEquals(50.99, corrected.dip(), 0.005);
        assertEquals(9.36, uncorrected.angleTo(corrected), 0.005);
    }

    @Test
    void aStraightHoleDoesNotTurnTheScribe() {
        assertEquals(0, Traces.of("0 30 77; 100 30 77").scribeTurn(3, 98), 1e-12);
        assertEquals(0, Traces.of("0 30 77").scribeTurn(3, 98), 1e-12);
    }

    @Test
    void aFullTurnOfTheAzimuthIsNotWrapped() {
        HoleTrace twice = dense(5, 5, 0, 720, 720);

        // two rounds at inclination 5 along great circles of one degree of azimuth, each turned by Napier's analogy
        double arc = -2 * Math.toDegrees(Math.atan(Math.tan(Math.toRadians(0.5)) * Math.cos(Math.toRadians(5))));
        assertEquals(720 * arc, twice.scribeTurn(0, 100), 1e-9);
        assertTrue(twice.scribeTurn(0, 100) < -700);
    }

    @ParameterizedTest
    @CsvSource({"0", "37", "123.4", "260", "359"})
    void throughVerticalTheScribeTurnsByHalfOnceAndNotBeyond(double azimuth) {
        HoleTrace trace =
                Traces.of("0 7 " + azimuth + "; 100 12 " + (azimuth + 180) % 360 + "; 200 30 " + (azimuth + 180) % 360);

        double half = trace.scribeTurn(0, 100);
        assertEquals(180, Math.abs(half), 1e-9);
        for (double depth = 38; depth < 200; depth += 0.7) {
            assertEquals(half, trace.scribeTurn(0, depth), 1e-9);
            assertEquals(0, trace.scribeTurn(depth, 170), 1e-9);
        }
        for (double depth = 0; depth < 36; depth += 0.7) {
            assertEquals(0, trace.scribeTurn(0, depth), 1e-9);
        }
    }

    @Test
    void whereTheHoleIsVerticalThereIsNoTurnToTell() {
        HoleTrace trace = Traces.of("0 10 90; 30 0 0; 60 0 0; 90 10 90");

        for (double depth : new double[] {30, 45, 60}) {
            IllegalArgumentException refused =
                    assertThrows(IllegalArgumentException.class, () -> trace.scribeTurn(10, depth));
            assertTrue(refused.getMessage().contains(depth + "0 m"), refused.getMessage());
            assertTrue(refused.getMessage().contains("vertical"), refused.getMessage());
        }
        assertEquals(0, trace.scribeTurn(10, 80), 1e-9);
    }
}
