package io.github.kernlot.orientation.line;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class MarkNoiseTest {

    private static final MarkNoise SENSOR_ALONE = new MarkNoise(1, 0, 0, 0, 0);

    @ParameterizedTest
    @CsvFileSource(resources = "mark-sigmas.csv", useHeadersInDisplayName = true)
    void theCausesOfAMarkMeetTheirCheckValues(
            double sensor,
            double level,
            double pencil,
            double transfer,
            double plunge,
            double diameter,
            double sigma,
            double tolerance,
            String source) {
        MarkNoise noise = new MarkNoise(sensor, level, pencil, transfer, 7);

        double found = noise.sigma(
                HoleDirection.ofPlunge(plunge, 90), WallReference.lowSide(), CoreDiameter.ofMillimetres(diameter));

        assertEquals(sigma, found, tolerance, source);
    }

    @Test
    void nearVerticalTheSensorTurnsTheMarkByItsErrorOverTheSineOfTheInclination() {
        for (double inclination : new double[] {1e-9, 1e-6, 1e-3, 0.1, 1, 179, 179.999}) {
            double sigma = SENSOR_ALONE.sigma(
                    HoleDirection.ofInclination(inclination, 20), WallReference.lowSide(), Marks.DIAMETER);

            assertEquals(1, sigma * Math.sin(Math.toRadians(inclination)), 1e-9);
        }
    }

    @Test
    void aMarkOfNorthIsAsSharpAsNorthStandsAcrossTheHole() {
        // a hole to the north at 30 degrees below the horizontal sees north at 30 degrees: sine 1/2
        assertEquals(2, SENSOR_ALONE.sigma(HoleDirection.ofDip(-30, 0), WallReference.north(), Marks.DIAMETER), 1e-12);
        assertEquals(1, SENSOR_ALONE.sigma(HoleDirection.ofDip(-90, 0), WallReference.north(), Marks.DIAMETER), 1e-12);
        assertEquals(1, SENSOR_ALONE.sigma(HoleDirection.ofDip(-30, 90), WallReference.north(), Marks.DIAMETER), 1e-12);
    }

    @Test
    void aSideThatDoesNotExistIsRefused() {
        HoleDirection vertical = HoleDirection.ofDip(-90, 0);

        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class,
                () -> MarkNoise.assumed().sigma(vertical, WallReference.lowSide(), Marks.DIAMETER));

        assertTrue(refused.getMessage().contains("low side"), refused.getMessage());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.1, Double.NaN, Double.POSITIVE_INFINITY})
    void aCauseThatIsNoNumberFromZeroUpIsRefusedByName(double bad) {
        assertRefused("sensor sigma", () -> new MarkNoise(bad, 1, 1, 1, 1));
        assertRefused("level sigma", () -> new MarkNoise(1, bad, 1, 1, 1));
        assertRefused("pencil sigma", () -> new MarkNoise(1, 1, bad, 1, 1));
        assertRefused("transfer sigma", () -> new MarkNoise(1, 1, 1, bad, 1));
        assertRefused("bias sigma", () -> new MarkNoise(1, 1, 1, 1, bad));
    }

    @Test
    void marksWithoutAnyErrorAreRefused() {
        assertRefused("sum of the mark's sigmas", () -> new MarkNoise(0, 0, 0, 0, 1));
    }

    private static void assertRefused(String name, Runnable call) {
        IllegalArgumentException refused = assertThrows(IllegalArgumentException.class, call::run);
        assertTrue(refused.getMessage().startsWith(name + " is "), refused.getMessage());
    }
}
