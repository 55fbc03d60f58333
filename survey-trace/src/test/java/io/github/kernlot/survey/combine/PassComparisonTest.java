package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.SurveyLimit;
import io.github.kernlot.survey.check.SurveyLimits;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PassComparisonTest {

    private static final SurveyLimits LIMITS = SurveyLimits.assumed();

    private static SurveyRun pass(SurveyPass pass, int count, double inclination, double azimuth, double deeper) {
        return Runs.of(
                        pass.name(),
                        IntStream.range(0, count)
                                .mapToObj(i -> SurveyStation.ofInclination(30 * i + deeper, inclination, azimuth))
                                .toList())
                .withPass(pass);
    }

    private static List<Finding> found(double inclination, double more, double turn) {
        return PassComparison.of(
                        pass(SurveyPass.IN, 10, inclination, 359, 0),
                        pass(SurveyPass.OUT, 10, inclination + more, (359 + turn) % 360, 0.05))
                .findings(LIMITS);
    }

    @ParameterizedTest
    @CsvSource({
        "30, 0.23, 0, 0",
        "30, -0.23, 0, 0",
        "30, 0.24, 0, 10",
        "30, -0.24, 0, 10",
        "30, 0, 1.0, 0",
        "30, 0, 1.1, 10",
        "10, 0, 1.1, 10",
        "9.99, 0, 1.1, 0",
        "9.99, 0, 5, 0",
        "9.99, 0, 5.1, 10",
        "175, 0, 4, 0",
        "150, 0.24, 1.1, 20"
    })
    void eachCommonStationIsHeldAgainstTheTolerance(double inclination, double more, double turn, int findings) {
        assertEquals(findings, found(inclination, more, turn).size());
    }

    @Test
    void fewerThanTenCommonStationsAreTold() {
        PassComparison nine =
                PassComparison.of(pass(SurveyPass.IN, 9, 30, 90, 0), pass(SurveyPass.OUT, 20, 30, 90, 0.1));
        assertEquals(9, nine.differences().size());
        assertEquals(
                "warning: the two passes have 9 common stations; the published tolerances ask for 10",
                nine.findings(LIMITS).get(0).toString());
        PassComparison none = PassComparison.of(pass(SurveyPass.IN, 9, 30, 90, 0), pass(SurveyPass.OUT, 9, 30, 90, 15));
        assertEquals(List.of(), none.differences());
        assertEquals("", none.toString());
    }

    @Test
    void aDifferenceIsOutLessIn() {
        PassDifference one = new PassDifference(
                SurveyStation.ofInclination(60, 20, 359.5), SurveyStation.ofInclination(60, 20.1, 0.25));
        assertEquals("60.00 m: inclination 0.10, azimuth 0.75 degrees (out less in)", one.toString());
        assertEquals(20.05, one.fromVertical(), 1e-12);
        assertTrue(found(30, 0.5, 0)
                .get(0)
                .toString()
                .contains("difference of inclination 0.50 degrees, limit 0.23 (published)"));
    }

    @Test
    void passesTheWrongWayRoundAreRefused() {
        SurveyRun in = pass(SurveyPass.IN, 10, 30, 90, 0);
        SurveyRun out = pass(SurveyPass.OUT, 10, 30, 90, 0);
        assertThrows(IllegalArgumentException.class, () -> PassComparison.of(out, in));
        assertThrows(IllegalArgumentException.class, () -> PassComparison.of(in, in));
    }

    /** Less than 1 ft per 1,000 ft: total slip x 1000 / (2 x hold-up depth). */
    @Test
    void theSlipOfTheWireline() {
        assertEquals(0.5, PassComparison.wirelineSlip(-0.6, 600), 1e-12);
        assertEquals(List.of(), PassComparison.slipFindings(1.19, 600, LIMITS));
        assertEquals(1, PassComparison.slipFindings(1.2, 600, LIMITS).size());
        assertEquals(List.of(), PassComparison.slipFindings(5, 600, LIMITS.without(SurveyLimit.WIRELINE_SLIP)));
        assertThrows(IllegalArgumentException.class, () -> PassComparison.wirelineSlip(1, 0));
        assertThrows(IllegalArgumentException.class, () -> PassComparison.wirelineSlip(Double.NaN, 10));
    }
}
