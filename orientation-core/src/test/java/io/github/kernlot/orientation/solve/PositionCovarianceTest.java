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

    /**
     * Sigmas 2, 3 and 5 with correlations 0.6 and 0.3: by hand the third lies between 0.18 - 0.7632 and 0.18 + 0.7632, the roots of the
     * determinant, and the covariance between -8.747 and 14.147.
     */
    @Test
    void theThirdCorrelationIsBoundByTheOtherTwo() {
        for (double bound : new double[] {-8.74, 14.14}) {
            assertEquals(bound, new PositionCovariance(4, 9, 25, 3.6, 3, bound).northUp());
            assertEquals(bound, new PositionCovariance(9, 25, 4, bound, 3.6, 3).eastNorth());
            assertEquals(bound, new PositionCovariance(25, 4, 9, 3, bound, 3.6).eastUp());
        }
        for (double beyond : new double[] {-8.76, 14.16}) {
            assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(4, 9, 25, 3.6, 3, beyond));
            assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(9, 25, 4, beyond, 3.6, 3));
            assertThrows(IllegalArgumentException.class, () -> new PositionCovariance(25, 4, 9, 3, beyond, 3.6));
        }
        // wholly correlated: an error along one line
        assertEquals(15, new PositionCovariance(4, 9, 25, 6, 10, 15).northUp());
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
