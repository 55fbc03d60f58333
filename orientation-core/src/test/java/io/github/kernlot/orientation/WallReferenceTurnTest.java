package io.github.kernlot.orientation;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

class WallReferenceTurnTest {

    @Test
    void aSideByItsAzimuthTurnsWithTheNorth() {
        assertEquals(WallReference.azimuth(3), WallReference.north().withAzimuthTurned(3));
        assertEquals(WallReference.azimuth(357), WallReference.north().withAzimuthTurned(-3));
        assertEquals(WallReference.north(), WallReference.azimuth(20).withAzimuthTurned(340));
    }

    @Test
    void theLowAndTheHighSideKnowNoNorth() {
        assertEquals(WallReference.lowSide(), WallReference.lowSide().withAzimuthTurned(3));
        assertEquals(WallReference.highSide(), WallReference.highSide().withAzimuthTurned(3));
    }

    @ParameterizedTest
    @ValueSource(doubles = {Double.NaN, Double.POSITIVE_INFINITY})
    void anAngleThatIsNotFiniteIsRefused(double angle) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> WallReference.lowSide().withAzimuthTurned(angle));

        assertTrue(refused.getMessage().startsWith("angle is "), refused.getMessage());
    }
}
