package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class WallPointTest {

    @Test
    void aPointOutsideItsRangeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(360.1, 0));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(0, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(0, 100_001));
        assertThrows(IllegalArgumentException.class, () -> WallSigmas.of(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> WallSigmas.of(1, -1));
    }

    @Test
    void millimetresAreCountedFromTheRuler() {
        assertEquals(WallPoint.of(0, 0.0123), WallPoint.ofMillimetres(360, 12.3));
        assertEquals("213.0 at 12.4035 m", WallPoint.of(213, 12.4035).toString());
    }
}
