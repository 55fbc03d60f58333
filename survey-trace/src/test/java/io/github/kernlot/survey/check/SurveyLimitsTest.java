package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertNotEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.check.Limit.Standing;
import java.util.Arrays;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;
import org.junit.jupiter.params.provider.ValueSource;

class SurveyLimitsTest {

    @ParameterizedTest
    @CsvFileSource(resources = "limits.csv", numLinesToSkip = 1)
    void aLimitHasTheValueAndTheStandingOfItsSource(
            SurveyLimit which, double value, String unit, Standing standing, String source) {
        Limit limit = SurveyLimits.assumed().of(which).orElseThrow();
        assertEquals(value, limit.value(), 1e-9, source);
        assertEquals(unit, limit.unit());
        assertEquals(standing, limit.standing());
    }

    @Test
    void onlyAPublishedLimitNamesASource() {
        Arrays.stream(SurveyLimit.values())
                .flatMap(which -> which.assumed().stream())
                .forEach(limit -> assertEquals(
                        limit.standing() == Standing.PUBLISHED, !limit.source().isEmpty(), limit.toString()));
    }

    @Test
    void aCallersOwnLimitSaysSo() {
        SurveyLimits own = SurveyLimits.assumed().with(SurveyLimit.SPACING, 30);
        assertEquals(
                "30.00 m (given)", own.of(SurveyLimit.SPACING).orElseThrow().toString());
        assertNotEquals(SurveyLimits.assumed(), own);
        assertEquals(SurveyLimits.assumed(), own.without(SurveyLimit.SPACING));
        assertEquals(
                SurveyLimits.assumed().hashCode(),
                own.without(SurveyLimit.SPACING).hashCode());
    }

    @Test
    void printedTheLimitsAreATable() {
        String table = SurveyLimits.assumed().toString();
        assertEquals(SurveyLimit.values().length, table.lines().count());
        assertTrue(table.startsWith("gravity total     0.0030 g (common practice, no source)"), table);
        assertTrue(table.contains("\nspacing           none\n"), table);
    }

    @ParameterizedTest
    @ValueSource(doubles = {-1, Double.NaN, Double.POSITIVE_INFINITY})
    void aLimitThatIsNoneIsRefused(double value) {
        IllegalArgumentException refused = assertThrows(
                IllegalArgumentException.class, () -> SurveyLimits.assumed().with(SurveyLimit.SPACING, value));
        assertTrue(refused.getMessage().startsWith("limit is "), refused.getMessage());
    }

    @Test
    void aMeasurementOfNothingIsRefused() {
        Limit limit = SurveyLimit.OUTLIER.assumed().orElseThrow();
        assertThrows(IllegalArgumentException.class, () -> new Measurement("angle", Double.NaN, limit));
    }
}
