package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CorePlane;
import java.util.List;
import org.junit.jupiter.api.Test;

class HalfCoreTest {

    @Test
    void halfCoreKeepsHalfTheWall() {
        HalfCore half = HalfCore.clockwiseFrom(300);
        assertEquals(30, half.middle());
        assertEquals(half, HalfCore.about(30));
        for (double kept : new double[] {300, 359, 0, 30, 120}) {
            assertTrue(half.holds(kept));
        }
        for (double lost : new double[] {121, 210, 299}) {
            assertFalse(half.holds(lost));
        }
        assertEquals("wall from 300.0 to 120.0", half.toString());
    }

    @Test
    void itHoldsOneEndOfAnEllipse() {
        HalfCore half = HalfCore.about(30);
        assertTrue(half.holdsDownHoleEnd(CorePlane.of(40, 10)));
        assertFalse(half.holdsUpHoleEnd(CorePlane.of(40, 10)));
        assertTrue(half.holdsUpHoleEnd(CorePlane.of(40, 200)));
        assertFalse(half.holdsDownHoleEnd(CorePlane.of(40, 200)));
        for (CorePlane endless : List.of(CorePlane.of(0, 10), CorePlane.perpendicular())) {
            assertFalse(half.holdsDownHoleEnd(endless) || half.holdsUpHoleEnd(endless));
        }
    }

    @Test
    void anAngleOutsideItsRangeIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> HalfCore.clockwiseFrom(-1));
        assertThrows(IllegalArgumentException.class, () -> HalfCore.about(Double.NaN));
    }
}
