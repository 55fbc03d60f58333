package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.check.Finding.Level;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class FindingTest {

    @Test
    void aFindingPrintsItsLevelItsDepthAndWhatItIs() {
        assertEquals(
                "warning at 12.00 m: the mark disagrees",
                Finding.at(12, Level.WARNING, "the mark disagrees").toString());
        assertEquals("info: no joins", Finding.ofHole(Level.INFO, "no joins").toString());
    }

    @Test
    void aFindingOfTheHoleHasNoDepth() {
        assertEquals(OptionalDouble.empty(), Finding.ofHole(Level.ERROR, "").depth());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aDepthAboveTheCollarIsRefused(double depth) {
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> Finding.at(depth, Level.INFO, ""));

        assertTrue(refused.getMessage().startsWith("depth is "), refused.getMessage());
    }
}
