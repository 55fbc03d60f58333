package io.github.kernlot.survey.hole;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
}
