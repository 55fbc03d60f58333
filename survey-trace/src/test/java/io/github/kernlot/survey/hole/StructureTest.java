package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.HoleSense;
import java.util.ArrayList;
import java.util.LinkedHashMap;
import java.util.List;
import java.util.Map;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.ValueSource;

/** Structures and settings as values. */
class StructureTest {

    private static String refusal(Runnable call) {
        return assertThrows(IllegalArgumentException.class, call::run).getMessage();
    }

    private static Structure withGamma(double alpha, double gamma) {
        return new Structure(3, "vein", alpha, OptionalDouble.of(10), OptionalDouble.of(gamma), Map.of());
    }

    @Test
    void anAngleOf360IsZero() {
        assertEquals(OptionalDouble.of(0), Structure.of(3, "vein", 40, 360).beta());
        assertEquals(OptionalDouble.of(0), withGamma(40, 360).gamma());
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 90.01, Double.NaN})
    void anAlphaOutsideItsRangeIsRefused(double alpha) {
        String message = refusal(() -> Structure.of(3, "vein", alpha, 10));

        assertTrue(message.startsWith("alpha is "), message);
        assertTrue(message.contains("[0, 90]"), message);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-0.01, 360.01, Double.NaN})
    void aBetaOrGammaOutsideACircleIsRefusedByName(double angle) {
        assertTrue(refusal(() -> Structure.of(3, "vein", 40, angle)).startsWith("beta is "));
        assertTrue(refusal(() -> withGamma(40, angle)).startsWith("gamma is "));
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aDepthAboveTheCollarIsRefused(double depth) {
        assertTrue(refusal(() -> Structure.of(depth, "vein", 40, 10)).startsWith("depth is "));
    }

    @Test
    void gammaAtAlpha90IsRefused() {
        assertTrue(refusal(() -> withGamma(90, 20)).contains("alpha 90"));
    }

    @Test
    void furtherColumnsKeepTheirOrderAndCannotBeChanged() {
        Map<String, String> extra = new LinkedHashMap<>();
        extra.put("zone", "upper");
        extra.put("infill", "calcite");
        Structure structure = new Structure(3, "vein", 40, OptionalDouble.empty(), OptionalDouble.empty(), extra);
        extra.clear();

        assertEquals(
                List.of("zone", "infill"), new ArrayList<>(structure.extra().keySet()));
        assertThrows(
                UnsupportedOperationException.class, () -> structure.extra().clear());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLimitOfTheLinesSigmaThatIsNotAboveZeroIsRefused(double limit) {
        String message = refusal(() -> OrientationSettings.assumed().withLineSigmaLimit(limit));

        assertTrue(message.startsWith("line sigma limit is "), message);
    }

    @Test
    void aLineIsWrittenAsItWasRead() {
        Structure line = Structure.ofLine(3, "lineation", CoreLineReading.of(51.134, 360));
        assertEquals("lineation at 3.00 m, axis angle 51.1, delta 000.0", line.toString());
        assertEquals(
                "lineation at 3.00 m, axis angle 51.1, delta 000.0, pointing up-hole",
                line.withSense(HoleSense.UP_HOLE).toString());
        assertEquals(
                "bed at 3.00 m, alpha 40.0, beta 010.0, facing down-hole",
                Structure.of(3, "bed", 40, 10).withSense(HoleSense.DOWN_HOLE).toString());
    }

    @Test
    void aStructureHasOneLineAtMost() {
        CoreLineReading line = CoreLineReading.of(50, 10);
        assertTrue(refusal(() -> withGamma(40, 20).withCoreLine(line)).startsWith("gamma is given"));
        assertEquals(
                line,
                Structure.of(3, "bed", 90, 0).withCoreLine(line).coreLine().orElseThrow());
    }

    @Test
    void whatStandsSquareToTheAxisTakesNoSense() {
        assertTrue(refusal(() -> Structure.of(3, "bed", 0, 10).withSense(HoleSense.UP_HOLE))
                .contains("a plane at alpha 0"));
        assertTrue(refusal(() ->
                        Structure.ofLine(3, "line", CoreLineReading.of(90, 10)).withSense(HoleSense.UP_HOLE))
                .contains("right angles"));
        assertEquals(0, withGamma(0, 0).withSense(HoleSense.UP_HOLE).alpha().orElseThrow());
    }

    @Test
    void aDeltaIsNeededAboveAxisAngleZeroAndInItsRange() {
        assertTrue(refusal(() -> new CoreLineReading(1, OptionalDouble.empty())).startsWith("delta is empty"));
        assertEquals("axis angle 0.0", new CoreLineReading(0, OptionalDouble.empty()).toString());
        assertTrue(refusal(() -> CoreLineReading.of(90.01, 1)).startsWith("axis angle is "));
        assertTrue(refusal(() -> CoreLineReading.of(9, 360.01)).startsWith("delta is "));
    }
}
