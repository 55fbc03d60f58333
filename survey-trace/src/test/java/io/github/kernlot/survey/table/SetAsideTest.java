package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;

import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.HoleLog;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** With {@code input.bad_rows = set-aside} the rest of a job is worked where that cannot change answers in silence. */
class SetAsideTest {

    @TempDir
    Path folder;

    private Tables tables;

    @BeforeEach
    void tables() {
        tables = Tables.sound(folder).settings("input.bad_rows = set-aside");
    }

    private static List<String> ids(Job job) {
        return job.holes().stream().map(HoleLog::id).toList();
    }

    @Test
    void badMarksAndStructuresGoAlone() {
        Job job = tables.replace("marks.csv", "20,22,", "20,x,")
                .replace("structures.csv", "vein,55,10,30", "vein,95,y,30")
                .append("structures.csv", ",10,vein,20,10,,")
                .append("structures.csv", "TN-5,10,vein,20,10,,")
                .append("structures.csv", "TN-2,10")
                .read();
        assertEquals(List.of("TN-1", "TN-2"), ids(job));
        assertEquals(2, job.hole("TN-1").marks().size());
        assertEquals(1, job.hole("TN-1").structures().size());
        assertEquals(
                List.of(
                        new SetAsideRow("marks.csv", 3, "TN-1", "column offset_deg: \"x\", expected a number"),
                        new SetAsideRow(
                                "structures.csv",
                                3,
                                "TN-1",
                                "column alpha_deg: \"95\", expected a number within [0, 90]; column beta_deg: \"y\", expected a number"),
                        new SetAsideRow("structures.csv", 5, "", "column hole_id: blank, expected a name"),
                        new SetAsideRow(
                                "structures.csv", 6, "TN-5", "column hole_id: \"TN-5\", expected a hole of holes.csv"),
                        new SetAsideRow(
                                "structures.csv",
                                7,
                                "TN-2",
                                "column kind: the row has 2 fields, expected 7 as in the header")),
                job.setAside());
        assertEquals(
                List.of(
                        Finding.at(
                                20,
                                Finding.Level.WARNING,
                                "marks.csv, line 3, set aside: column offset_deg: \"x\", expected a number"),
                        Finding.at(
                                21,
                                Finding.Level.WARNING,
                                "structures.csv, line 3, set aside: column alpha_deg: \"95\", expected a number within [0, 90]; column beta_deg: \"y\", expected a number")),
                job.findings("TN-1"));
        assertEquals(
                "structures.csv, line 5, set aside: column hole_id: blank, expected a name",
                job.notices().get(job.notices().size() - 1));
        assertEquals("2 holes with 2 structures from " + folder + ", 5 rows set aside", job.toString());
    }

    @Test
    void aBadJoinSetsItsHoleAside() {
        Job job = tables.replace("joins.csv", "25,doubtful", "25,loose").read();
        assertEquals(List.of("TN-2"), ids(job));
        String why =
                "hole is set aside: joins.csv, line 3, column fit: \"loose\", expected one of broken, doubtful, locked";
        assertEquals(List.of(Finding.ofHole(Finding.Level.ERROR, "the " + why)), job.findings("TN-1"));
        assertEquals(11, job.setAside().size());
        assertEquals(
                new SetAsideRow(
                        "joins.csv", 3, "TN-1", "column fit: \"loose\", expected one of broken, doubtful, locked"),
                job.setAside().get(8));
        assertEquals(
                new SetAsideRow("holes.csv", 2, "TN-1", "its " + why),
                job.setAside().get(0));
        assertEquals(
                "TN-1: the " + why,
                assertThrows(IllegalArgumentException.class, () -> job.hole("TN-1"))
                        .getMessage());
    }

    @Test
    void badStationsAndCollarsSetTheirHolesAside() {
        assertEquals(
                List.of("TN-2"),
                ids(tables.append("surveys.csv", "TN-1,30,1,-60")
                        .append("holes.csv", "TN-3,1,2,3,,,")
                        .read()));
        assertEquals(List.of(), ids(tables.append("holes.csv", "TN-2,1,2,3,,,").read()));
    }

    @Test
    void aHoleThatIsOnlyNamedElsewhereIsSetAside() {
        Job job = tables.append("surveys.csv", "TN-9,30,1,-60")
                .append("marks.csv", "TN-9,30,1,")
                .read();
        assertEquals(List.of("TN-1", "TN-2"), ids(job));
        assertEquals(2, job.setAside().size());
        assertEquals(
                "the hole is set aside: surveys.csv, line 6, column hole_id: \"TN-9\", expected a hole of holes.csv",
                job.findings("TN-9").get(0).what());
    }

    @Test
    void aStationOrJoinThatDoesNotTellItsHoleIsRefused() {
        assertEquals(
                List.of("joins.csv, line 4, column hole_id: blank, expected a name"),
                tables.append("joins.csv", ",30,broken").refusal());
        tables.put("joins.csv", "fit,hole_id,depth_m\nbroken,TN-1\n");
        assertEquals(
                List.of("joins.csv, line 2, column depth_m: the row has 2 fields, expected 3 as in the header"),
                tables.refusal());
    }

    @Test
    void aHoleIsNotSaidToLackAStationThatMayBeItsOwn() {
        assertEquals(
                List.of("surveys.csv, line 5, column hole_id: blank, expected a name"),
                tables.replace("surveys.csv", "TN-2,10", ",10").refusal());
    }

    @Test
    void aRaggedJoinWhoseHoleIsSureSetsTheHoleAside() {
        assertEquals(
                List.of("TN-2"),
                ids(tables.append("joins.csv", "TN-1,40,5,broken").read()));
    }

    @Test
    void faultsOfFilesAreRefused() {
        assertEquals(
                List.of(
                        "job.properties, line 2, key mark.sides: \"low\", the key is not known, expected one of mark.side, mark.sensor_sigma_deg, mark.level_sigma_deg, mark.pencil_sigma_mm, mark.transfer_sigma_mm, mark.bias_sigma_deg, mark.prior_flipped, mark.prior_wrong",
                        "marks.csv, line 1, column offset_deg: the column is missing, expected one of offset_deg, offset_mm",
                        "structures.csv, line 3, column kind: \"v\\xE9in\", the text is not UTF-8"),
                tables.settings("input.bad_rows = set-aside", "mark.sides = low")
                        .replace("marks.csv", "offset_deg,offset_mm", "offset,mm")
                        .put(
                                "structures.csv",
                                tables.text("structures.csv")
                                        .replace("vein", "v\u00e9in")
                                        .getBytes(StandardCharsets.ISO_8859_1))
                        .refusal());
    }
}
