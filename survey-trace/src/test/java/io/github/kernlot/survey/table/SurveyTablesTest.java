package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.SurveyStation;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** What surveys.csv may say beside depth, azimuth and dip, and what the checks of a survey say of its rows. */
class SurveyTablesTest {

    @TempDir
    Path folder;

    private Tables tables;

    @BeforeEach
    void tables() {
        tables = Tables.sound(folder);
    }

    private List<String> told(String hole) {
        return tables.read().findings(hole).stream().map(Object::toString).toList();
    }

    @Test
    void theChecksOfASurveyAreTold() {
        tables.replace("surveys.csv", "TN-1,30,92,-59", "TN-1,30,92,-49");
        assertTrue(
                told("TN-1").stream()
                        .anyMatch(finding -> finding.startsWith("error at 30.00 m: the hole bends")
                                && finding.endsWith("limit 3.00 (common practice, no source)")),
                told("TN-1").toString());
    }

    @Test
    void stationsAreHeldAgainstTheEndOfTheHole() {
        tables.put("holes.csv", """
                        hole_id,easting_m,northing_m,elevation_m,end_m
                        TN-1,1000,2000,300,50
                        TN-2,1100,2050,310,80
                        """);
        assertTrue(told("TN-1").contains("error at 60.00 m: below the end of the hole, 50.00 m"));
        assertTrue(told("TN-2").stream().anyMatch(finding -> finding.contains("does not reach the end of the hole")));
    }

    @Test
    void aRowsOwnNorthHoldsForTheRow() {
        tables.put("surveys.csv", """
                        hole_id,depth_m,azimuth_deg,dip_deg,north
                        TN-1,0,90,-60,
                        TN-1,30,89,-59,magnetic
                        TN-1,60,95,-58,True
                        TN-2,10,270,-70,grid
                        """);
        List<SurveyStation> stations =
                tables.read().hole("TN-1").trace().survey().stations();
        // grid = magnetic + declination 4 - convergence 1
        assertEquals(92, stations.get(1).direction().azimuth(), 1e-12);
        assertEquals(94, stations.get(2).direction().azimuth(), 1e-12);
    }

    @Test
    void aNorthThatCannotBeConvertedIsAFaultOfItsRow() {
        tables.replace("surveys.csv", "azimuth_deg,dip_deg", "azimuth_deg,dip_deg,north")
                .put("surveys.csv", """
                        hole_id,depth_m,azimuth_deg,dip_deg,north
                        TN-1,0,90,-60,
                        TN-2,10,270,-70,magnetic
                        """);
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(
                refused.getMessage()
                        .contains("surveys.csv, line 3, column north: \"magnetic\", azimuths from magnetic north"),
                refused.getMessage());
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "2026-02-30,,,     | column date: \"2026-02-30\", expected a date by ISO 8601",
                "1/3/26,,,         | column date: \"1/3/26\", expected a date by ISO 8601",
                ",compass,,        | column north: \"compass\", expected one of grid, magnetic, true",
                ",,0,              | column azimuth_sigma_deg: \"0\", expected a number within",
                ",,,x              | column dip_sigma_deg: \"x\", expected a number within",
            })
    void aBadWordIsRefused(String words, String fault) {
        tables.put(
                "surveys.csv",
                "date,north,azimuth_sigma_deg,dip_sigma_deg,hole_id,depth_m,azimuth_deg,dip_deg\n" + words.strip()
                        + ",TN-1,0,90,-60\n,,,,TN-2,10,270,-70\n");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(refused.getMessage().contains("surveys.csv, line 2, " + fault), refused.getMessage());
    }

    private Tables severalSurveys() {
        return tables.put("surveys.csv", """
                        hole_id,depth_m,azimuth_deg,dip_deg,survey,tool,date,dip_sigma_deg
                        TN-1,0,90,-60,multishot,M,2026-03-02,
                        TN-1,30,92,-59,multishot,M,2026-03-02,
                        TN-1,60,94,-58,multishot,M,2026-03-02,
                        TN-1,90,96,-57,multishot,M,2026-03-02,0.9
                        TN-1,0,91,-60.2,gyro,G,2026-03-09,0.1
                        TN-1,30,93,-59.2,gyro,G,2026-03-09,
                        TN-1,60,95,-58.2,gyro,G,2026-03-09,
                        TN-2,10,270,-70,,,,
                        """);
    }

    private List<SurveyStation> stations() {
        return tables.read().hole("TN-1").trace().survey().stations();
    }

    @Test
    void ofSeveralSurveysTheFirstNamedCounts() {
        severalSurveys();
        assertEquals(4, stations().size());
        assertEquals(-60, stations().get(0).direction().dip(), 1e-9);
        assertTrue(
                told("TN-1").stream()
                        .anyMatch(finding -> finding.startsWith("info: 2 surveys,")
                                && finding.endsWith("stations from each: multishot 4, gyro 0")),
                told("TN-1").toString());
    }

    @Test
    void thePriorityOfSurveysIsASetting() {
        severalSurveys().settings("survey.priority = gyro, multishot");
        assertEquals(
                List.of(-60.2, -59.2, -58.2, -57.0),
                stations().stream()
                        .map(station -> Math.round(station.direction().dip() * 1e6) / 1e6)
                        .toList());
        assertTrue(told("TN-1").stream().anyMatch(finding -> finding.endsWith("gyro 3, multishot 1")));
    }

    @Test
    void aWeightedMeanOfSurveysLiesBetweenThem() {
        severalSurveys().settings("survey.several = weighted-mean");
        double dip = stations().get(1).direction().dip();
        assertTrue(dip > -59.2 && dip < -59.0, "dip " + dip);
        assertTrue(told("TN-1").stream().anyMatch(finding -> finding.contains("their weighted mean is used")));
    }

    @Test
    void surveysOfAHoleAreCompared() {
        severalSurveys();
        assertTrue(
                told("TN-1").stream().anyMatch(finding -> finding.contains("azimuth") && finding.contains("gyro")),
                told("TN-1").toString());
    }

    @Test
    void twoSurveysMayHaveStationsAtOneDepthAndOneSurveyNot() {
        severalSurveys().replace("surveys.csv", "TN-1,60,95,-58.2,gyro", "TN-1,30,95,-58.2,gyro");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(
                refused.getMessage().contains("line 8, column depth_m: \"30\", a station of the survey at this depth"),
                refused.getMessage());
    }

    @Test
    void surveysThatContradictEachOtherAreRefused() {
        severalSurveys()
                .settings("survey.several = weighted-mean")
                .replace("surveys.csv", "TN-1,30,93,-59.2,gyro", "TN-1,30,273,59,gyro")
                .replace("surveys.csv", "TN-1,60,95,-58.2,gyro", "TN-1,60,275,58,gyro")
                .replace("surveys.csv", "TN-1,0,91,-60.2,gyro", "TN-1,0,271,60,gyro");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(refused.getMessage().contains("do not go together"), refused.getMessage());
    }

    @Test
    void aStationsOwnSigmaIsHeeded() {
        double before = verticalSigma();
        tables.replace("surveys.csv", "azimuth_deg,dip_deg", "azimuth_deg,dip_deg,dip_sigma_deg")
                .put("surveys.csv", tables.text("surveys.csv").replaceAll("(?m)^(TN-.*)$", "$1,2.5"));
        assertTrue(verticalSigma() > 3 * before);
        tables.settings("survey.dip.bias_sigma_deg = 0", "depth.sigma_m = 0")
                .put("surveys.csv", tables.text("surveys.csv").replace(",2.5", ",0.000001"));
        // what is left is the azimuth, which bends the arcs
        assertEquals(0, verticalSigma(), 2e-3);
    }

    private double verticalSigma() {
        return tables.read().orient("TN-1").structures().get(1).covariance().verticalSigma();
    }

    @Test
    void aHoleMayGoOnWithTheCurvatureOfItsEnd() {
        double straight = tables.read().hole("TN-1").trace().directionAt(80).dip();
        tables.settings("survey.beyond_last = constant-curvature")
                .put("structures.csv", tables.text("structures.csv") + "TN-1,80,vein,40,213,,\n");
        Job job = tables.read();
        assertEquals(-58, straight, 1e-9);
        assertTrue(job.hole("TN-1").trace().directionAt(80).dip() > -57.5);
        assertTrue(job.orient("TN-1").structures().stream()
                .anyMatch(structure -> structure.note().contains("taken on with the curvature of its end")));
        assertTrue(told("TN-2").contains("info: the hole has one station: taken as straight below it"));
    }

    @Test
    void whatWasAddedToAzimuthsIsTold() {
        tables.settings("survey.north = magnetic", "survey.dip_sign = negative-down")
                .replace("holes.csv", "TN-2,1100,2050,310,,,", "TN-2,1100,2050,310,4,1,");
        assertTrue(
                told("TN-1").stream().anyMatch(finding -> finding.contains("magnetic to grid north, +3.0000 degrees")),
                told("TN-1").toString());
    }
}
