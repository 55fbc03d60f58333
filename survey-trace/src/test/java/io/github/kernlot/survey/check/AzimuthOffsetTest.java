package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class AzimuthOffsetTest {

    private static final NorthReference PLACE = NorthReference.magnetic(5, -1.2);

    private static Survey survey(List<SurveyStation> stations) {
        return Survey.of(stations, NorthReference.grid());
    }

    private static Survey turned(List<SurveyStation> stations, double angle) {
        return survey(stations.stream()
                .map(station ->
                        new SurveyStation(station.depth(), station.direction().withAzimuthTurned(angle)))
                .toList());
    }

    @ParameterizedTest
    @CsvSource({"0", "0.1", "-3.2", "179", "180", "-90"})
    void theOffsetOfATurnedSurveyIsItsTurn(double turn) {
        List<SurveyStation> stations = SimulatedHoles.sound(3, 15, 30, 50, 0.5, 0);
        AzimuthOffset offset = AzimuthOffset.between(survey(stations), turned(stations, turn));
        assertEquals(turn, offset.degrees(), 1e-9);
        assertEquals(0, offset.standardError(), 1e-9);
        assertEquals(15, offset.comparisons());
    }

    /** A difference seen in the steep part says nothing where sin I is a fiftieth. */
    @Test
    void whatStandsNearlyVerticalHardlyCounts() {
        List<SurveyStation> one = new ArrayList<>();
        List<SurveyStation> other = new ArrayList<>();
        for (int i = 0; i < 10; i++) {
            double inclination = i < 5 ? 1 : 50;
            one.add(SurveyStation.ofInclination(30 * i, inclination, 100));
            other.add(SurveyStation.ofInclination(30 * i, inclination, i < 5 ? 160 : 102));
        }
        AzimuthOffset offset = AzimuthOffset.between(survey(one), survey(other));
        assertEquals(2, offset.degrees(), 0.05);
    }

    /** The standard error of 400 pairs of surveys covers the truth as a normal one should: 68 % within one, by a binomial's four sigmas. */
    @Test
    void theStandardErrorIsWhatTheOffsetScattersBy() {
        int within = 0;
        int pairs = 400;
        for (int pair = 0; pair < pairs; pair++) {
            List<SurveyStation> sound = SimulatedHoles.sound(pair, 25, 30, 50, 0.5, 0);
            AzimuthOffset offset = AzimuthOffset.between(noisy(sound, 2 * pair), noisy(sound, 2 * pair + 1));
            within += Math.abs(offset.degrees()) < offset.standardError() ? 1 : 0;
        }
        assertEquals(0.683, within / (double) pairs, 0.093);
    }

    private static Survey noisy(List<SurveyStation> sound, int seed) {
        Random random = new Random(seed);
        return survey(sound.stream()
                .map(station -> SimulatedHoles.turned(station, 0.5 * random.nextGaussian(), 360 * random.nextDouble()))
                .toList());
    }

    @ParameterizedTest
    @CsvSource({
        "5, the declination is missing in the first survey or applied twice in the second",
        "-5, the declination is missing in the second survey or applied twice in the first",
        "10, the declination was taken off in the first survey",
        "1.2, the convergence is missing in the first survey or applied twice in the second",
        "-2.4, the convergence was added in the second survey",
        "6.2, declination and convergence are both missing in the first survey"
    })
    void theMistakeIsNamed(double turn, String mistake) {
        List<SurveyStation> stations = SimulatedHoles.sound(3, 15, 30, 50, 0.5, 0);
        AzimuthOffset offset = AzimuthOffset.between(survey(stations), turned(stations, turn));
        assertEquals(List.of(mistake), offset.candidates(PLACE, 0.25));
        List<Finding> found = SurveyChecks.assumed().azimuthReference(survey(stations), turned(stations, turn), PLACE);
        assertEquals(1, found.size());
        assertTrue(found.get(0).what().contains("perhaps " + mistake), found.toString());
    }

    /** By the conversions of the library itself: a survey that was never brought from magnetic to grid north. */
    @Test
    void theMistakeIsThatOfTheConversion() {
        List<SurveyStation> magnetic = SimulatedHoles.sound(4, 15, 30, 50, 0.5, 0);
        Survey right = Survey.of(magnetic, PLACE).toGrid();
        Survey forgotten = survey(magnetic);
        assertEquals(
                List.of("declination and convergence are both missing in the second survey"),
                AzimuthOffset.between(right, forgotten).candidates(PLACE, 0.25));
    }

    @Test
    void anOffsetWithoutAKnownMistakeIsToldAllTheSame() {
        List<SurveyStation> stations = SimulatedHoles.sound(3, 15, 30, 50, 0.5, 0);
        List<Finding> found = SurveyChecks.assumed().azimuthReference(survey(stations), turned(stations, 3.4), PLACE);
        assertEquals(
                "warning: the azimuths of two surveys differ by 3.40 +- 0.00 degrees from 15 stations throughout (second less first); "
                        + "no mistake with declination or convergence explains it: offset 3.40 degrees, limit 0.50 (assumed)",
                found.get(0).toString());
        assertEquals(
                List.of(),
                AzimuthOffset.between(survey(stations), turned(stations, 3.4)).candidates(NorthReference.grid(), 0.25));
    }

    @Test
    void aSmallOffsetIsNotTold() {
        List<SurveyStation> stations = SimulatedHoles.sound(3, 15, 30, 50, 0.5, 0);
        assertEquals(
                List.of(), SurveyChecks.assumed().azimuthReference(survey(stations), turned(stations, 0.4), PLACE));
    }

    @Test
    void theSecondSurveyIsReadOnItsArcs() {
        Survey first = survey(List.of(
                SurveyStation.ofDip(10, 0, 90),
                SurveyStation.ofDip(20, 0, 90),
                SurveyStation.ofDip(25, 0, 90),
                SurveyStation.ofDip(90, 0, 0)));
        Survey second = survey(List.of(SurveyStation.ofDip(0, 0, 90), SurveyStation.ofDip(30, 0, 120)));
        AzimuthOffset offset = AzimuthOffset.between(first, second);
        assertEquals(3, offset.comparisons());
        assertEquals((10 + 20 + 25) / 3.0, offset.degrees(), 0.05);
    }

    @Test
    void surveysThatCannotBeComparedAreRefused() {
        List<SurveyStation> stations = SimulatedHoles.sound(3, 15, 30, 50, 0.5, 0);
        Survey grid = survey(stations);
        assertThrows(IllegalArgumentException.class, () -> AzimuthOffset.between(grid, Survey.of(stations, PLACE)));
        assertThrows(IllegalArgumentException.class, () -> AzimuthOffset.between(grid, survey(stations.subList(0, 1))));
        Survey vertical = survey(List.of(
                SurveyStation.ofDip(0, -90, 0), SurveyStation.ofDip(30, -90, 0), SurveyStation.ofDip(60, -90, 0)));
        assertThrows(IllegalArgumentException.class, () -> AzimuthOffset.between(vertical, vertical));
    }
}
