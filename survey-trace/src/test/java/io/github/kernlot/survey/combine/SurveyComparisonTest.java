package io.github.kernlot.survey.combine;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.Displacement;
import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.Traces;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.check.SurveyLimit;
import io.github.kernlot.survey.check.SurveyLimits;
import io.github.kernlot.survey.uncertainty.Covariance;
import io.github.kernlot.survey.uncertainty.SurveyErrorSetup;
import io.github.kernlot.survey.uncertainty.SurveySigmas;
import io.github.kernlot.survey.uncertainty.TieIn;
import io.github.kernlot.survey.uncertainty.TraceUncertainty;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvFileSource;

class SurveyComparisonTest {

    @ParameterizedTest
    @CsvFileSource(resources = "pass-tolerances.csv", numLinesToSkip = 1)
    void theTolerancesAreThoseOfTheirSources(SurveyLimit which, double value, String unit, String source) {
        assertEquals(value, which.assumed().orElseThrow().value(), source);
        assertEquals(unit, which.unit(), source);
    }

    /** Two straight holes 2 degrees of azimuth apart at inclination 30: the chord 2 L sin I sin(dA/2). */
    @Test
    void straightHolesPartInProportion() {
        SurveyComparison comparison =
                SurveyComparison.of(Runs.of("one", "0 -60 90; 100 -60 90"), Runs.of("two", "0 -60 92; 100 -60 92"));
        for (double depth : new double[] {0, 37, 100}) {
            Misclose row = comparison.at(depth);
            assertEquals(
                    2 * depth * 0.5 * Math.sin(Math.toRadians(1)), row.way().length(), 1e-9);
        }
        assertEquals(100, comparison.farthest().depth());
        assertEquals(
                "100.00 m: 1.75 m apart (north -1.74, east -0.03, down 0.00), 1.00 degrees",
                comparison.farthest().toString());
        assertEquals(2, comparison.rows().size());
    }

    @Test
    void whatLiesOutsideTheCommonStretchTakesNoPart() {
        SurveyRun whole = Runs.of("whole", "0 -60 90; 50 -60 90; 100 -60 90; 150 -60 90");
        SurveyRun part = Runs.of("part", "40 -60 90; 110 -60 90");
        SurveyComparison comparison = SurveyComparison.of(whole, part);
        assertEquals(40, comparison.from());
        assertEquals(110, comparison.to());
        assertEquals(
                List.of(40.0, 50.0, 100.0, 110.0),
                comparison.rows().stream().map(Misclose::depth).toList());
        comparison.rows().forEach(row -> assertEquals(0, row.way().length(), 1e-9));
        assertThrows(IllegalArgumentException.class, () -> comparison.at(39));
        assertEquals(List.of(), comparison.findings(SurveyLimits.assumed()));
        assertEquals(4, comparison.toString().lines().count());
    }

    @Test
    void surveysWithoutACommonStretchAreRefused() {
        SurveyRun above = Runs.of("above", "0 -60 90; 50 -60 90");
        SurveyRun below = Runs.of("below", "50 -60 90; 90 -60 90");
        IllegalArgumentException refused =
                assertThrows(IllegalArgumentException.class, () -> SurveyComparison.of(above, below));
        assertTrue(refused.getMessage().contains("above covers 0.0 to 50.0 m"), refused.getMessage());
    }

    /** At 1.75 % of the length the surveys pass, at 2.6 % they do not. */
    @Test
    void withoutCovariancesAShareOfTheLengthIsTheLimit() {
        SurveyRun one = Runs.of("one", "0 -60 90; 100 -60 90");
        assertEquals(
                List.of(),
                SurveyComparison.of(one, Runs.of("two", "0 -60 92; 100 -60 92")).findings(SurveyLimits.assumed()));
        List<Finding> found =
                SurveyComparison.of(one, Runs.of("two", "0 -60 93; 100 -60 93")).findings(SurveyLimits.assumed());
        assertEquals(
                "warning at 100.00 m: one and two end apart; 100.00 m: 2.62 m apart (north -2.62, east -0.07, down 0.00), 1.50 degrees: "
                        + "distance 2.62 % of length, limit 2.00 (common practice, no source)",
                found.get(0).toString());
    }

    @Test
    void withCovariancesOneTestIsMadeAtTheEnd() {
        SurveyComparison comparison =
                SurveyComparison.of(Runs.of("one", "0 -60 90; 100 -60 90"), Runs.of("two", "0 -60 92; 100 -60 92"));
        Covariance loose = new Covariance(1, 1, 1, 0, 0, 0);
        Covariance tight = new Covariance(0.1, 0.1, 0.1, 0, 0, 0);
        assertEquals(List.of(), comparison.findings(depth -> loose, depth -> loose, 0.95));
        List<Finding> found = comparison.findings(depth -> tight, depth -> tight, 0.95);
        assertEquals(1, found.size());
        assertTrue(
                found.get(0)
                        .toString()
                        .contains("chi-square 15.23 with 3 degrees of freedom, probability 0.002, limit 7.81"),
                found.toString());
        assertThrows(IllegalArgumentException.class, () -> comparison.findings(depth -> tight, depth -> tight, 1));
    }

    /**
     * Two surveys of one hole, each with the errors that its covariance is made of, in 600 simulated pairs: the statistic has the mean
     * of chi-square and exceeds its 95 % limit as often as it should, both within four sigmas.
     */
    @Test
    void theStatisticIsChiSquareWhereTheErrorsAreThoseOfTheModel() {
        SurveySigmas sigmas = SurveySigmas.of(1.0, 0.3, 0, 0);
        List<SurveyStation> sound = new ArrayList<>();
        for (int i = 0; i <= 10; i++) {
            sound.add(SurveyStation.ofDip(30 * i, -50 + i, 100 + 2 * i));
        }
        HoleTrace trace = HoleTrace.minimumCurvature(Traces.COLLAR, Survey.of(sound, NorthReference.grid()));
        TraceUncertainty uncertainty = TraceUncertainty.of(trace, SurveyErrorSetup.of(sigmas.model(), TieIn.MEASURED));
        Covariance covariance = uncertainty.at(300).place();
        Random random = new Random(11);
        int pairs = 600;
        double sum = 0;
        int beyond = 0;
        for (int i = 0; i < pairs; i++) {
            Misclose last = SurveyComparison.of(noisy("one", sound, random), noisy("two", sound, random))
                    .at(300);
            ChiSquare test = last.test(covariance, covariance).orElseThrow();
            sum += test.statistic();
            beyond += test.statistic() > test.limit(0.95) ? 1 : 0;
        }
        assertEquals(3, sum / pairs, 4 * Math.sqrt(6.0 / pairs));
        assertEquals(0.05, beyond / (double) pairs, 4 * Math.sqrt(0.05 * 0.95 / pairs));
    }

    private static SurveyRun noisy(String name, List<SurveyStation> sound, Random random) {
        return Runs.of(
                name,
                sound.stream()
                        .map(station -> {
                            double sine =
                                    Math.cos(Math.toRadians(station.direction().dip()));
                            double azimuth = Math.hypot(1.0, 0.3 / sine) * random.nextGaussian();
                            return new SurveyStation(
                                    station.depth(),
                                    SurveyStation.ofDip(
                                                    0,
                                                    station.direction().dip() + 0.3 * random.nextGaussian(),
                                                    station.direction().azimuth())
                                            .direction()
                                            .withAzimuthTurned(azimuth));
                        })
                        .toList());
    }

    @Test
    void differencesAreSecondLessFirst() {
        SurveyComparison comparison =
                SurveyComparison.of(Runs.of("one", "0 -90 0; 10 -90 0"), Runs.of("two", "0 0 0; 10 0 0"));
        Displacement way = comparison.at(10).way();
        assertEquals(10, way.north(), 1e-12);
        assertEquals(-10, way.down(), 1e-12);
        assertEquals(90, comparison.at(10).angle(), 1e-12);
    }
}
