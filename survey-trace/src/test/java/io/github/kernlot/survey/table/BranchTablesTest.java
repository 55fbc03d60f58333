package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.HoleTrace;
import io.github.kernlot.survey.check.Finding;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** A hole that leaves another one takes place and direction from there. */
class BranchTablesTest {

    private static final String HEADER =
            "hole_id,easting_m,northing_m,elevation_m,declination_deg,grid_convergence_deg,core_diameter_mm,parent_id,kick_off_m\n";

    private Tables tables;

    @BeforeEach
    void tables(@TempDir Path folder) {
        tables = Tables.sound(folder)
                .put(
                        "holes.csv",
                        HEADER + "TN-3,,,,,,,TN-1,45\nTN-1,1000,2000,300,4,1,,,\nTN-2,1100,2050,310,,,47.6,,\n");
        tables.put("surveys.csv", tables.text("surveys.csv") + "TN-3,75,96,-55\nTN-3,105,99,-52\n");
    }

    @Test
    void aBranchBeginsWhereItLeavesItsParent() {
        Job job = tables.read();
        HoleTrace parent = job.hole("TN-1").trace();
        HoleTrace branch = job.hole("TN-3").trace();
        assertEquals(parent.positionAt(45), branch.positionAt(45));
        assertEquals(parent.directionAt(45), branch.directionAt(45));
        assertEquals(45, branch.kickOffDepth().orElseThrow());
        assertEquals(
                List.of("TN-3", "TN-1", "TN-2"),
                job.holes().stream().map(hole -> hole.id()).toList());
    }

    @Test
    void aBranchMayLeaveABranch() {
        tables.put("holes.csv", tables.text("holes.csv") + "TN-4,,,,,,,TN-3,90\n")
                .put("surveys.csv", tables.text("surveys.csv") + "TN-4,120,99,-50\n");
        Job job = tables.read();
        assertEquals(
                job.hole("TN-3").trace().positionAt(90),
                job.hole("TN-4").trace().positionAt(90));
    }

    @Test
    void itsAzimuthsAreConvertedByWhatIsKnownOfItsParent() {
        tables.settings("survey.north = true", "output.north = true")
                .replace("holes.csv", "TN-2,1100,2050,310,,,", "TN-2,1100,2050,310,,0.5,");
        double azimuth = tables.read()
                .hole("TN-3")
                .trace()
                .survey()
                .stations()
                .get(0)
                .direction()
                .azimuth();
        assertEquals(95, azimuth, 1e-9);
    }

    @Test
    void stationsAboveTheKickOffAreTheParents() {
        tables.put("surveys.csv", tables.text("surveys.csv") + "TN-3,30,93,-59\nTN-3,45,93,-59\n");
        Job job = tables.read();
        assertEquals(2, job.hole("TN-3").trace().survey().stations().size());
        List<Finding> told = job.findings("TN-3");
        assertEquals(
                2,
                told.stream()
                        .filter(finding -> finding.what().contains("above the kick-off"))
                        .count());
    }

    @Test
    void coordinatesOfItsOwnAreTold() {
        tables.replace("holes.csv", "TN-3,,,", "TN-3,1000,2000.5,300");
        assertTrue(tables.read().findings("TN-3").stream()
                .anyMatch(finding -> finding.what().contains("0.50 m")));
        tables.replace("holes.csv", "TN-3,1000,2000.5,300", "TN-3,1000,2000,300");
        assertTrue(tables.read().findings("TN-3").stream()
                .noneMatch(finding -> finding.what().contains("coordinates")));
    }

    @ParameterizedTest
    @CsvSource(
            delimiter = '|',
            value = {
                "TN-3,,,,,,,TN-9,45 | column parent_id: \"TN-9\", expected a hole of holes.csv",
                "TN-3,,,,,,,TN-3,45 | column parent_id: \"TN-3\", the hole would leave itself in the end",
                "TN-3,,,,,,,TN-1, | column kick_off_m: blank, expected both parent_id and kick_off_m",
                "TN-3,1,2,3,,,,,45 | column parent_id: blank, expected both parent_id and kick_off_m",
                "TN-3,,,,,,,, | column easting_m: blank",
                "TN-3,,,,,,,TN-1,-5 | column kick_off_m: \"-5\", expected a number within [0, 100000]",
                "TN-3,,,,,,,TN-1,90.5 | column kick_off_m: \"90.5\", beyond the survey of the hole that it leaves, expected at most 90 m",
                "TN-3,,,,,,,TN-2,39 | column parent_id: \"TN-2\", the hole that it leaves has no trace",
                "TN-3,x,,,,,,TN-1,45 | column easting_m: \"x\", expected a number",
            })
    void aBadBranchIsRefused(String row, String fault) {
        tables.settings("survey.north = true")
                .replace("holes.csv", "TN-3,,,,,,,TN-1,45", row)
                .replace("holes.csv", "TN-2,1100,2050,310,,,", "TN-2,1100,2050,310,,,");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(refused.getMessage().contains("holes.csv, line 2, " + fault), refused.getMessage());
    }

    @Test
    void holesThatLeaveEachOtherAreRefused() {
        tables.put("holes.csv", HEADER + "TN-1,,,,4,1,,TN-3,20\nTN-3,,,,,,,TN-1,45\nTN-2,1100,2050,310,,,47.6,,\n");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(refused.getMessage().contains("would leave itself"), refused.getMessage());
    }

    @Test
    void aBranchOfAHoleThatIsSetAsideIsSetAsideToo() {
        tables.settings("input.bad_rows = set-aside").replace("surveys.csv", "TN-1,30,92,-59", "TN-1,30,92,-95");
        Job job = tables.read();
        assertEquals(
                List.of("TN-2"), job.holes().stream().map(hole -> hole.id()).toList());
        assertTrue(job.findings("TN-3").get(0).what().contains("the hole that it leaves has no trace"));
    }

    @Test
    void aBranchNeedsAStationBelowItsKickOff() {
        tables.replace("holes.csv", "TN-3,,,,,,,TN-1,45", "TN-3,,,,,,,TN-1,80")
                .put("surveys.csv", tables.text("surveys.csv").replace("TN-3,105,99,-52\n", ""));
        TableException refused = assertThrows(TableException.class, tables::read);
        assertTrue(refused.getMessage().contains("no station below its kick-off"), refused.getMessage());
    }
}
