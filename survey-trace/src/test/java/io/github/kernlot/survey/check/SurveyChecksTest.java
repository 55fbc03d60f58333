package io.github.kernlot.survey.check;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.NorthReference;
import io.github.kernlot.survey.Survey;
import io.github.kernlot.survey.SurveyStation;
import io.github.kernlot.survey.check.Finding.Level;
import java.time.Duration;
import java.util.ArrayList;
import java.util.Arrays;
import java.util.List;
import java.util.OptionalDouble;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** Each check at its edge. */
class SurveyChecksTest {

    private static final SurveyChecks CHECKS = SurveyChecks.assumed();
    private static final ToolReadings EXPECTED = ToolReadings.of(1, 50_000, 60);

    /** Rows written as depth, dip and azimuth: {@code 0 -60 90; 30 -60 90}. */
    private static List<SurveyStation> stations(String rows) {
        return Arrays.stream(rows.split(";"))
                .map(text -> text.strip().split(" "))
                .map(row -> SurveyStation.ofDip(
                        Double.parseDouble(row[0]), Double.parseDouble(row[1]), Double.parseDouble(row[2])))
                .toList();
    }

    private static RawSurvey survey(String rows) {
        return RawSurvey.ofStations(stations(rows));
    }

    private static List<String> told(RawSurvey survey) {
        return CHECKS.findings(survey).stream().map(Finding::toString).toList();
    }

    private static void assertTold(RawSurvey survey, String... starts) {
        List<String> told = told(survey);
        assertEquals(starts.length, told.size(), told.toString());
        for (int i = 0; i < starts.length; i++) {
            assertTrue(told.get(i).startsWith(starts[i]), told.get(i) + " where expected: " + starts[i]);
        }
    }

    @ParameterizedTest
    @ValueSource(
            strings = {
                "0 -60 90; 30 -60.5 91; 60 -61 91.5; 90 -61.2 92.5",
                "0 -90 0; 30 -90 200; 60 -90 100; 90 -90 20",
                "0 -2 10; 30 -0.5 10; 60 1 10; 90 2.5 10",
                "0 -60 359; 30 -60 1; 60 -60 359.5; 90 -60 0.5"
            })
    void ofASoundSurveyNothingIsSaid(String rows) {
        assertTold(survey(rows).withEnd(120));
    }

    @Test
    void aSurveyWithoutShotsIsAnError() {
        assertTold(RawSurvey.of(List.of()), "error: the survey has no shot");
    }

    @Test
    void ofOneShotItIsSaidThatNothingChecksIt() {
        assertTold(survey("0 -60 90"), "info: the survey has one shot");
    }

    @Test
    void readingsAtTheLimitPass() {
        assertTold(read(ToolReadings.of(1 + 0x1p-9, 50_300, 60.25)));
        assertTold(read(ToolReadings.of(1 - 0x1p-9, 49_700, 59.75)));
        assertTold(read(ToolReadings.none()));
        assertTold(RawSurvey.of(List.of(shot(0, ToolReadings.of(2, 1, 0)), shot(30, ToolReadings.of(2, 1, 0)))));
    }

    @Test
    void readingsBeyondTheLimitAreTold() {
        assertTold(
                read(ToolReadings.of(1.004, 50_301, 59.7)),
                "warning at 30.00 m: the tool moved or its accelerometers are off: neither dip nor azimuth can be relied on: "
                        + "total gravity from expected 0.0040 g, limit 0.0030 (common practice, no source)",
                "warning at 30.00 m: the magnetic field is disturbed: the azimuth cannot be relied on: "
                        + "total field from expected 301 nT, limit 300 (published)",
                "warning at 30.00 m: the magnetic field is disturbed: the azimuth cannot be relied on: "
                        + "dip of the field from expected -0.30 degrees, limit 0.25 (published)");
        assertTold(read(ToolReadings.ofGravity(0.99)), "warning at 30.00 m: the tool moved");
    }

    @Test
    void theDipOfTheFieldIsComparedFromShotToShotOverShotsWithoutIt() {
        RawSurvey survey = RawSurvey.of(List.of(
                shot(60, ToolReadings.of(1, 50_000, 60.5)),
                shot(0, ToolReadings.of(1, 50_000, 60)),
                shot(30, ToolReadings.none())));
        assertEquals(
                List.of("warning at 60.00 m: the magnetic field is disturbed: the azimuth cannot be relied on: "
                        + "dip of the field from the shot above 0.50 degrees, limit 0.30 (published)"),
                told(survey).stream().filter(text -> text.contains("field")).toList());
    }

    private static RawSurvey read(ToolReadings readings) {
        return RawSurvey.of(List.of(shot(0, ToolReadings.none()), shot(30, readings)))
                .withExpected(EXPECTED);
    }

    private static SurveyShot shot(double depth, ToolReadings readings) {
        return new SurveyShot(SurveyStation.ofDip(depth, -60, 90), readings);
    }

    @Test
    void impossibleReadingsAreRefused() {
        assertThrows(IllegalArgumentException.class, () -> ToolReadings.ofGravity(0));
        assertThrows(IllegalArgumentException.class, () -> ToolReadings.of(1, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> ToolReadings.of(1, 50_000, 91));
        assertThrows(IllegalArgumentException.class, () -> survey("0 -60 90").withEnd(-1));
    }

    @ParameterizedTest
    @CsvSource({"3, ", "3.03, WARNING", "9, WARNING", "9.03, ERROR", "89.9, ERROR"})
    void aDoglegIsHeldAgainstTenMetres(double dogleg, Level level) {
        List<Finding> found = CHECKS.findings(RawSurvey.ofStations(
                List.of(SurveyStation.ofDip(0, -45, 90), SurveyStation.ofDip(30, -45 + dogleg, 90))));
        List<Finding> severity = found.stream()
                .filter(finding -> finding.what().startsWith("the hole bends by"))
                .toList();
        assertEquals(level == null ? 0 : 1, severity.size(), found.toString());
        if (level != null) {
            assertEquals(level, severity.get(0).level());
            assertEquals(dogleg / 3, severity.get(0).measurement().orElseThrow().value(), 1e-12);
        }
    }

    @Test
    void aDoglegThatRepeatedShotsCouldMakeIsNotTold() {
        assertTold(survey("0 -60 90; 1 -60.49 90"));
        assertTold(
                survey("0 -60 90; 1 -60.51 90"),
                "error at 1.00 m: the hole bends by 0.51 degrees in 1.00 m (15.30 degrees per 30 m): dogleg severity 5.10");
    }

    @Test
    void aDoglegAbove90IsNoBendOfAHole() {
        assertTold(
                survey("0 -45 0; 30 -45 180; 60 -45 180"),
                "error at 30.00 m: the hole bends by 90.00",
                "warning at 30.00 m: the azimuth jumps");
        assertTold(
                survey("0 -44.9 0; 30 -45 180; 60 -45 180"),
                "error at 30.00 m: no hole bends like this: dogleg from the station above 90.10 degrees, limit 90.00",
                "warning at 30.00 m: the azimuth jumps");
    }

    @ParameterizedTest
    @CsvSource({"-88, 180, false", "-87, 180, true", "-60, 9, false", "-60, 11, true", "0, 4.9, false", "0, 5.1, true"})
    void anAzimuthCountsBySinInclination(double dip, double turn, boolean told) {
        List<String> found = told(
                RawSurvey.ofStations(List.of(SurveyStation.ofDip(0, dip, 5), SurveyStation.ofDip(90, dip, 5 + turn))));
        assertEquals(told, found.stream().anyMatch(text -> text.contains("the azimuth jumps")), found.toString());
    }

    @Test
    void theAzimuthsShareIsTheWholeDoglegWhereTheDipStays() {
        Bend bend = new Bend(SurveyStation.ofDip(0, -70, 350), SurveyStation.ofDip(30, -70, 40));
        assertEquals(bend.dogleg(), bend.azimuthShare(), 1e-12);
        Bend through = new Bend(SurveyStation.ofDip(0, 0, 0), SurveyStation.ofDip(30, 0, 180));
        assertEquals(180, through.azimuthShare(), 1e-12);
    }

    @Test
    void theSpacingOfAnInclinedAVerticalAndABendingHole() {
        assertTold(survey("0 -60 90; 152.4 -60 90"));
        assertTold(
                survey("0 -60 90; 152.5 -60 90"),
                "warning at 152.50 m: far from the station above it: spacing 152.50 m, limit 152.40 (published)");
        assertTold(survey("0 -87 90; 304.8 -87 90"));
        assertTold(survey("0 -87 90; 305 -87 90"), "warning at 305.00 m: far from");
        assertTold(survey("0 87 90; 305 87 90"), "info: every station points upward", "warning at 305.00 m: far from");
        assertTold(survey("0 -60 90; 54 -62 90"));
        assertTold(survey("0 -60 90; 55 -62 90"), "warning at 55.00 m: far from");
        assertTold(survey("0 -60 90; 55 -61.6 90"));
    }

    @Test
    void aCallersOwnSpacingComesFirst() {
        List<Finding> found = CHECKS.with(SurveyLimit.SPACING, 30).findings(survey("0 -60 90; 30 -60 90; 200 -60 90"));
        assertEquals(1, found.size());
        assertTrue(found.get(0).what().endsWith("limit 30.00 (given)"), found.toString());
    }

    @Test
    void stationsThatAreHardlyApartAreTold() {
        assertTold(survey("0 -60 90; 0.1 -60 90"));
        assertTold(survey("0 -60 90; 0.05 -60 90"), "info at 0.05 m: hardly deeper than the station above it");
    }

    @Test
    void rowsAtOneDepth() {
        assertTold(
                survey("0 -60 90; 30 -60 90; 30 -60 90"),
                "warning at 30.00 m: two rows at one depth, an interval of no length; they say the same");
        assertTold(
                survey("0 -60 90; 30 -60 90; 30 -60.5 92"),
                "warning at 30.00 m: two rows at one depth, an interval of no length; they agree");
        assertTold(
                survey("0 -60 90; 30 -60 90; 30 -60.6 90"),
                "error at 30.00 m: two rows at one depth contradict each other");
        assertTold(survey("0 -88 90; 30 -88 90; 30 -88 115"), "warning at 30.00 m: two rows at one depth");
        assertTold(
                survey("0 -60 90; 30 -60 90; 30 -60 92.5"),
                "error at 30.00 m: two rows at one depth contradict each other");
    }

    @Test
    void rowsOutOfOrderAreTold() {
        assertTold(
                survey("0 -60 90; 60 -60 90; 30 -60 90; 90 -60 90"),
                "warning at 30.00 m: the row comes after one at 60.00 m: out of order");
    }

    @Test
    void theCollarAndTheEndOfTheHole() {
        assertTold(survey("30 -60 90; 60 -60 90"), "info at 30.00 m: no station at the collar");
        assertTold(survey("30.5 -60 90; 60 -60 90"), "warning at 30.50 m: no station at the collar");
        assertTold(survey("0 -60 90; 60 -60 90").withEnd(90));
        assertTold(
                survey("0 -60 90; 60 -60 90").withEnd(91),
                "warning at 60.00 m: the last station does not reach the end of the hole: hole below the last station 31.00 m, limit 30.00 (assumed)");
        assertTold(survey("0 -60 90; 60 -60 90").withEnd(60));
        assertTold(survey("0 -60 90; 60 -60 90").withEnd(59), "error at 60.00 m: below the end of the hole, 59.00 m");
    }

    @Test
    void signsOfTheDipThatAreMixed() {
        List<String> found = told(survey("0 -60 90; 30 -59 90; 60 58 91; 90 57 92; 120 56 92"));
        assertTrue(
                found.contains(
                        "error at 60.00 m: the hole turns from -59.0/090.0 (dip/azimuth) to 58.0/091.0 (dip/azimuth), and 3 of 5 stations point upward: the signs of the dips are mixed: step of the dip 117.00 degrees, limit 10.00 (assumed)"),
                found.toString());
        assertEquals(1, found.stream().filter(text -> text.contains("mixed")).count());
    }

    @Test
    void aHoleThatTurnsUpThroughHorizontalIsNotMixed() {
        List<String> found = told(survey("0 -8 90; 30 -3 90; 60 3 90; 90 9 90"));
        assertTrue(found.stream().noneMatch(text -> text.contains("mixed")), found.toString());
    }

    @Test
    void aHoleThatPointsUpAllAlongIsTold() {
        assertTold(survey("0 60 90; 30 60 90"), "info: every station points upward");
    }

    @Test
    void aLimitThatIsTakenAwayIsNotHeld() {
        SurveyChecks none = CHECKS;
        for (SurveyLimit which : SurveyLimit.values()) {
            none = new SurveyChecks(none.limits().without(which));
        }
        RawSurvey worst = survey("40 -60 0; 500 80 180; 500.01 -20 90; 530 -20 90; 560 -20 90")
                .withEnd(900);
        assertEquals(
                List.of("info at 40.00 m: no station at the collar: the direction of the first one is used above it"),
                none.findings(worst).stream().map(Finding::toString).toList());
    }

    @Test
    void findingsStandByDepthAndThoseOfTheHoleFirst() {
        List<Finding> found = CHECKS.findings(survey("30 60 90; 60 60 150; 900 60 90"));
        double before = -1;
        for (Finding finding : found) {
            double depth = finding.depth().orElse(-1);
            assertTrue(depth >= before, found.toString());
            before = depth;
        }
        assertEquals(OptionalDouble.empty(), found.get(0).depth());
    }

    @Test
    void aSurveyInUseCanBeCheckedToo() {
        Survey survey = Survey.of(stations("0 -60 90; 30 -60 90"), NorthReference.grid());
        assertEquals(List.of(), CHECKS.findings(survey));
        assertEquals(
                "2 shots, hole to 40.00 m", RawSurvey.of(survey).withEnd(40).toString());
        assertEquals("1 shot", survey("0 -60 90").toString());
    }

    @Test
    void tenThousandRowsAreFast() {
        List<SurveyStation> many = new ArrayList<>();
        for (int i = 0; i < 10_000; i++) {
            many.add(SurveyStation.ofDip(i, i % 100 == 50 ? 60 : -60, 90 + 10 * Math.sin(i / 500.0)));
        }
        List<Finding> found = assertTimeout(Duration.ofSeconds(20), () -> CHECKS.findings(RawSurvey.ofStations(many)));
        assertEquals(
                100,
                found.stream()
                        .filter(finding -> finding.what().contains("a dip with the other sign would explain it"))
                        .count());
    }
}
