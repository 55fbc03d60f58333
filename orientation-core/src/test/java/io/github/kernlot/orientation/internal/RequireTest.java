package io.github.kernlot.orientation.internal;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import org.junit.jupiter.api.Test;

class RequireTest {

    @Test
    void aRefusalNamesTheValueItsUnitAndTheRange() {
        assertEquals(
                "alpha is 90.5 degrees; expected within [0, 90]",
                refusal(() -> Require.inRange("alpha", 90.5, 0, 90, "degrees")));
        assertEquals(
                "share is -0.1; expected within [0, 0.5]", refusal(() -> Require.inRange("share", -0.1, 0, 0.5, "")));
        assertEquals("strike is 361 degrees; expected within [0, 360]", refusal(() -> Require.azimuth("strike", 361)));
        assertEquals("depth is NaN m; expected a finite number", refusal(() -> Require.finite("depth", 0 / 0.0, "m")));
        assertEquals(
                "length is 0 m; expected a finite number above 0", refusal(() -> Require.positive("length", 0, "m")));
        assertEquals(
                "length is Infinity m; expected a finite number above 0",
                refusal(() -> Require.positive("length", 1 / 0.0, "m")));
        assertEquals(
                "depth is -1.0E-9 m; expected a finite number, 0 or above",
                refusal(() -> Require.notNegative("depth", -1e-9, "m")));
        for (double share : new double[] {0, 1, 95, -0.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> Require.share("probability", share));
        }
        assertEquals(
                "probability is 95; expected above 0 and below 1", refusal(() -> Require.share("probability", 95)));
        assertEquals(
                "depth is 1.0E20 m; expected within [0, 1.0E15]",
                refusal(() -> Require.inRange("depth", 1e20, 0, 1e15, "m")));
        assertEquals(
                "to is 31.2 m; expected 45.9 or above",
                refusal(() -> Require.inRange("to", 31.2, 45.9, Double.MAX_VALUE, "m")));
    }

    @Test
    void whatIsInRangeComesBackAndNegativeZeroAsZero() {
        assertEquals(90, Require.inRange("alpha", 90, 0, 90, "degrees"));
        assertEquals(0.0, Require.inRange("alpha", -0.0, 0, 90, "degrees"));
        assertEquals(0.0, Require.azimuth("beta", 360));
        assertEquals(Math.nextDown(360.0), Require.azimuth("beta", Math.nextDown(360.0)));
        assertEquals(0.0, Require.finite("depth", -0.0, "m"));
        assertEquals(-1e308, Require.finite("depth", -1e308, "m"));
        assertEquals(Double.MIN_VALUE, Require.positive("length", Double.MIN_VALUE, "m"));
        assertEquals(0.0, Require.notNegative("depth", -0.0, "m"));
        assertEquals(Double.MIN_VALUE, Require.share("probability", Double.MIN_VALUE));
        assertEquals(Math.nextDown(1.0), Require.share("probability", Math.nextDown(1.0)));
        assertEquals(Double.MAX_VALUE, Require.notNegative("depth", Double.MAX_VALUE, "m"));
    }

    private static String refusal(Runnable asked) {
        return String.valueOf(
                assertThrows(IllegalArgumentException.class, asked::run).getMessage());
    }
}
