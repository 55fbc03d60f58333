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
}
