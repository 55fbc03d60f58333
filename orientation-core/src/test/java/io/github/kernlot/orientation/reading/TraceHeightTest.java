package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.DoubleRange;
import net.jqwik.api.constraints.Scale;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TraceHeightTest {

    /** Heights from cotangents of a table of the trigonometric functions (cot 30 is the root of 3; from memory). */
    @ParameterizedTest
    @CsvSource({"0, 90", "47.6, 45", "82.445618, 30", "27.481873, 60"})
    void theHeightGivesAlpha(double millimetres, double alpha) {
        TraceHeight height = TraceHeight.ofMillimetres(millimetres, CoreDiameter.N);
        assertEquals(alpha, height.alpha(), 1e-6);
        assertEquals(millimetres, TraceHeight.ofAlpha(alpha, CoreDiameter.N).millimetres(), 1e-6);
    }

    /** Degrees for a millimetre on N core, sin^2(alpha) / D, worked by hand to the digits given. */
    @ParameterizedTest
    @CsvSource({"10, 0.04", "20, 0.14", "45, 0.60", "75, 1.12"})
    void aMillimetreIsWorthMoreAtHighAlpha(double alpha, double degrees) {
        assertEquals(degrees, TraceHeight.ofAlpha(alpha, CoreDiameter.N).alphaSigma(1, 0), 0.005);
    }

    @ParameterizedTest
    @ValueSource(doubles = {2, 20, 45, 70, 89})
    void theSigmaIsTheSlope(double alpha) {
        double height = TraceHeight.ofAlpha(alpha, CoreDiameter.H).millimetres();
        double step = 1e-4;
        double byHeight = Math.abs(
                        TraceHeight.ofMillimetres(height + step, CoreDiameter.H).alpha()
                                - TraceHeight.ofMillimetres(height - step, CoreDiameter.H)
                                        .alpha())
                / (2 * step);
        double byDiameter = Math.abs(new TraceHeight(height, CoreDiameter.ofMillimetres(63.5 + step)).alpha()
                        - new TraceHeight(height, CoreDiameter.ofMillimetres(63.5 - step)).alpha())
                / (2 * step);
        TraceHeight measured = TraceHeight.ofMillimetres(height, CoreDiameter.H);
        assertEquals(byHeight, measured.alphaSigma(1, 0), 1e-6);
        assertEquals(byDiameter, measured.alphaSigma(0, 1), 1e-6);
        assertEquals(Math.hypot(2 * byHeight, 0.5 * byDiameter), measured.alphaSigma(2, 0.5), 1e-6);
    }

    @Property(tries = 200)
    void thereAndBack(@ForAll @DoubleRange(min = 1e-9, max = 90) @Scale(10) double alpha) {
        assertEquals(alpha, TraceHeight.ofAlpha(alpha, CoreDiameter.P).alpha(), 1e-12 * Math.max(1, alpha));
    }

    @Test
    void aPlaneAlongTheCoreHasNoHeight() {
        String message = assertThrows(IllegalArgumentException.class, () -> TraceHeight.ofAlpha(0, CoreDiameter.N))
                .getMessage();
        assertTrue(message.contains("no finite height"), message);
        for (double alpha : new double[] {-1, 90.1, Double.NaN}) {
            assertThrows(IllegalArgumentException.class, () -> TraceHeight.ofAlpha(alpha, CoreDiameter.N));
        }
        for (double height : new double[] {-0.1, Double.NaN, Double.POSITIVE_INFINITY}) {
            assertThrows(IllegalArgumentException.class, () -> TraceHeight.ofMillimetres(height, CoreDiameter.N));
        }
        TraceHeight height = TraceHeight.ofMillimetres(10, CoreDiameter.N);
        assertThrows(IllegalArgumentException.class, () -> height.alphaSigma(-1, 0));
        assertThrows(IllegalArgumentException.class, () -> height.alphaSigma(0, Double.NaN));
    }

    @Test
    void itSaysWhatItMeans() {
        assertEquals(
                "47.6 mm on 47.6 mm core, alpha 45.0",
                TraceHeight.ofMillimetres(47.6, CoreDiameter.N).toString());
    }
}
