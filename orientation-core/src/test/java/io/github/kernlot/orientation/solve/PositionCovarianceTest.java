package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.kernlot.orientation.internal.Vector;
import org.junit.jupiter.api.Test;

class PositionCovarianceTest {

    @Test
    void downIsTheOtherWayThanUp() {
        PositionCovariance covariance = new PositionCovariance(4, 9, 1, 1, 0.5, -0.25);
        assertEquals(9, covariance.along(new Vector(1, 0, 0)), 1e-12);
        assertEquals(4, covariance.along(new Vector(0, 1, 0)), 1e-12);
        // east and down: (4 + 1 - 2 * 0.5) / 2
        double half = Math.sqrt(0.5);
        assertEquals(2, covariance.along(new Vector(0, half, half)), 1e-12);
        assertEquals((9 + 1 + 0.5) / 2, covariance.along(new Vector(half, 0, half)), 1e-12);
    }

    @Test
    void whatIsNoCovarianceIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> PositionCovariance.ofSigma(-1));
        assertThrows(IllegalArgumentException.class, () -> PositionCovariance.ofSigmas(1, Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(1, 1, 1, 1.5, 0, 0));
        assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(1, 1, 1, 0.9, 0.9, -0.9));
        assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(-1, 1, 1, 0, 0, 0));
    }
}
