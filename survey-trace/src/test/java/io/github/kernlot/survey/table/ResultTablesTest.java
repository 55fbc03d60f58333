package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.github.kernlot.survey.hole.OrientedHole;
import io.github.kernlot.survey.hole.OrientedStructure;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

class ResultTablesTest {

    @TempDir
    Path folder;

    private Tables tables;
    private Path out;

    @BeforeEach
    void tables() {
        tables = Tables.sound(folder.resolve("in"));
        out = folder.resolve("out").resolve("deeper");
    }

    private List<OrientedHole> write() {
        Job job = tables.read();
        List<OrientedHole> holes = job.orient();
        ResultTables.of(job, holes).write(out);
        return holes;
    }

    private List<NamedCsvRecord> rows(String file) throws IOException {
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(out.resolve(file))) {
            return reader.stream().toList();
        }
    }

    private List<String> column(String file, String column) throws IOException {
        return rows(file).stream().map(row -> row.getField(column)).toList();
    }

    private String header(String file) throws IOException {
        return Files.readString(out.resolve(file)).lines().findFirst().orElseThrow();
    }

    private List<String> files(Path in) throws IOException {
        try (Stream<Path> found = Files.list(in)) {
            return found.map(file -> file.getFileName().toString()).sorted().toList();
        }
    }

    @Test
    void theFilesAreNamedAndNothingElseIsLeft() throws IOException {
        Job job = tables.read();
        assertEquals(
                Stream.of("oriented.csv", "marks.csv", "trace.csv", "findings.csv")
                        .map(out::resolve)
                        .toList(),
                ResultTables.of(job, job.orient()).write(out));
        assertEquals(List.of("findings.csv", "marks.csv", "oriented.csv", "trace.csv"), files(out));
    }

    @Test
    void theColumnsAreThoseOfTheDesign() throws IOException {
        write();
        assertEquals(
                "hole_id,depth_m,kind,alpha_deg,beta_deg,gamma_deg,status,line_angle_deg,line_sigma_deg,line_low_deg,line_high_deg,dip_deg,dip_direction_deg,"
                        + "plunge_deg,trend_deg,easting_m,northing_m,elevation_m,horizontal_sigma_m,vertical_sigma_m,note,logger",
                header("oriented.csv"));
        assertEquals(
                "hole_id,depth_m,offset_deg,predicted_deg,residual_deg,p_sound,p_flipped,p_wrong,verdict,by_hand",
                header("marks.csv"));
        assertEquals(
                "hole_id,depth_m,easting_m,northing_m,elevation_m,azimuth_deg,dip_deg,scribe_turn_deg,horizontal_sigma_m,"
                        + "vertical_sigma_m",
                header("trace.csv"));
        assertEquals("hole_id,depth_m,level,what,measured,limit,unit,limit_standing", header("findings.csv"));
    }

    @Test
    void whatIsWrittenReadsBackAsItWasWorked() throws IOException {
        List<OrientedStructure> structures =
                write().stream().flatMap(hole -> hole.structures().stream()).toList();
        List<NamedCsvRecord> rows = rows("oriented.csv");
        assertEquals(structures.size(), rows.size());
        for (int i = 0; i < rows.size(); i++) {
            OrientedStructure structure = structures.get(i);
            NamedCsvRecord row = rows.get(i);
            assertEquals(structure.structure().depth(), number(row, "depth_m"));
            assertEquals(structure.structure().alpha().orElseThrow(), number(row, "alpha_deg"));
            assertEquals("oriented", row.getField("status"));
            assertEquals(structure.plane().orElseThrow().dip(), number(row, "dip_deg"), 5e-5);
            assertEquals(structure.plane().orElseThrow().dipDirection(), number(row, "dip_direction_deg"), 5e-5);
            assertEquals(structure.line().orElseThrow().mean(), number(row, "line_angle_deg"), 5e-5);
            assertEquals(structure.line().orElseThrow().sigma(), number(row, "line_sigma_deg"), 5e-5);
            assertEquals(structure.position().easting(), number(row, "easting_m"), 5e-5);
            assertEquals(structure.position().northing(), number(row, "northing_m"), 5e-5);
            assertEquals(structure.position().elevation(), number(row, "elevation_m"), 5e-5);
            assertEquals(structure.note(), row.getField("note"));
        }
        assertEquals("second, later", rows.get(1).getField("logger"));
        assertEquals(structures.get(1).lineation().orElseThrow().trend(), number(rows.get(1), "trend_deg"), 5e-5);
        assertEquals("", rows.get(0).getField("trend_deg"));
        assertEquals("", rows.get(2).getField("beta_deg"));
    }

    private static double number(NamedCsvRecord row, String column) {
        return Double.parseDouble(row.getField(column));
    }

    @Test
    void linesEndAsTheStandardSays() throws IOException {
        write();
        String text = Files.readString(out.resolve("trace.csv"));
        assertTrue(text.endsWith("\r\n"));
        assertEquals(text.lines().count(), text.split("\r\n", -1).length - 1);
    }

    @Test
    void gammaHasNoColumnWhereNobodyMeasuredIt() throws IOException {
        tables.replace("structures.csv", "55,10,30", "55,10,");
        write();
        assertFalse(header("oriented.csv").contains("gamma_deg"));
        assertEquals(List.of("213.0000", "10.0000", ""), column("oriented.csv", "beta_deg"));
        assertEquals("oriented", rows("oriented.csv").get(0).getField("status"));
    }

    @Test
    void carriedColumnsGiveWayToThoseOfTheResults() throws IOException {
        tables.replace("structures.csv", "gamma_deg,logger", "gamma_deg,note")
                .replace("structures.csv", "kind,", "kind,logged_note,")
                .replace("structures.csv", "bedding,", "bedding,a,")
                .replace("structures.csv", "vein,", "vein,b,")
                .replace("structures.csv", "joint,", "joint,c,");
        write();
        assertTrue(header("oriented.csv").endsWith(",note,logged_note,logged_logged_note"));
        assertEquals(List.of("a", "b", "c"), column("oriented.csv", "logged_note"));
        assertEquals(List.of("first", "second, later", ""), column("oriented.csv", "logged_logged_note"));
        assertTrue(
                tables.read()
                        .notices()
                        .contains(
                                "structures.csv: columns that are not known: logged_note, note; they are carried along and come out as logged_note, logged_logged_note"));
    }

    @Test
    void whatCouldNotBeOrientedIsBlank() throws IOException {
        tables.replace("structures.csv", "40,213", "40,")
                .replace("surveys.csv", "TN-2,10,270,-70", "TN-2,10,270,-90")
                .settings("mark.side = north");
        write();
        NamedCsvRecord bedding = rows("oriented.csv").get(0);
        assertEquals("unoriented", bedding.getField("status"));
        assertEquals("no beta was measured", bedding.getField("note"));
        assertEquals("", bedding.getField("dip_deg"));
        assertEquals("", bedding.getField("dip_direction_deg"));
        assertFalse(bedding.getField("line_angle_deg").isEmpty());
        List<NamedCsvRecord> trace = rows("trace.csv");
        assertEquals("", trace.get(trace.size() - 1).getField("scribe_turn_deg"));
    }

    @Test
    void theLineAngleIsBlankWhereNoSideIsSharpEnough() throws IOException {
        tables.replace("surveys.csv", "TN-2,10,270,-70", "TN-2,10,270,-89.99999999")
                .settings("mark.sensor_sigma_deg = 1e-12", "survey.extrapolation_limit_m = 50");
        write();
        NamedCsvRecord joint = rows("oriented.csv").get(2);
        assertEquals("", joint.getField("line_angle_deg"));
        assertFalse(joint.getField("line_sigma_deg").isEmpty());
    }

    @Test
    void theTraceIsListedAtStationsAndEveryTenMetres() throws IOException {
        tables.replace("surveys.csv", "TN-1,30,", "TN-1,33.125,");
        write();
        assertEquals(
                List.of(
                        "0.0000", "10.0000", "20.0000", "30.0000", "33.1250", "40.0000", "50.0000", "60.0000", "0.0000",
                        "10.0000", "15.0000"),
                column("trace.csv", "depth_m"));
        assertEquals("90.0000", column("trace.csv", "azimuth_deg").get(0));
        assertEquals("-60.0000", column("trace.csv", "dip_deg").get(0));
        assertEquals("0.0000", column("trace.csv", "scribe_turn_deg").get(0));
    }

    @Test
    void theTurnOfAScribeBeginsWhereThereIsALowSide() throws IOException {
        tables.replace("surveys.csv", "TN-1,0,90,-60", "TN-1,0,90,-90").replace("marks.csv", "TN-1,10,", "TN-1,12,");
        write();
        List<String> turns = column("trace.csv", "scribe_turn_deg");
        assertEquals("", turns.get(0));
        assertEquals("0.0000", turns.get(1));
    }

    @Test
    void azimuthsAreCountedFromTheNorthThatWasAskedFor() throws IOException {
        tables.settings("output.north = true").replace("holes.csv", "310,,,", "310,,-3,");
        write();
        // true = grid + convergence
        assertEquals("91.0000", column("trace.csv", "azimuth_deg").get(0));
        assertEquals("267.0000", column("trace.csv", "azimuth_deg").get(9));
    }

    @Test
    void depthsLoseNothing() throws IOException {
        tables.replace("structures.csv", "11.25,", "11.2512345678,").replace("structures.csv", "21,vein", "1e-30,vein");
        List<OrientedHole> holes = write();
        List<String> depths = column("oriented.csv", "depth_m");
        assertEquals("11.2512345678", depths.get(0));
        assertEquals(holes.get(0).log().structures().get(1).depth(), Double.parseDouble(depths.get(1)));
        assertEquals("14.0000", depths.get(2));
    }

    @Test
    void roundedAnglesStayInTheirRange() {
        assertEquals("0.0000", Cells.azimuth(359.99996));
        assertEquals("359.9999", Cells.azimuth(359.99994));
        assertEquals("180.0000", Cells.difference(-179.99996));
        assertEquals("0.0000", Cells.number(-0.00001));
        assertEquals("-0.0001", Cells.number(-0.00009));
    }

    @Test
    void marksHaveAVerdict() throws IOException {
        tables.put(
                "marks.csv",
                "hole_id,depth_m,offset_deg,use,reason\nTN-1,10,20,,\nTN-1,20,21,,\nTN-1,25,150,,\nTN-1,28,20,no,spun\nTN-2,12,350,,\n");
        write();
        assertEquals(List.of("sound", "sound", "wrong", "left out", "sound"), column("marks.csv", "verdict"));
        assertEquals(List.of("agrees", "agrees", "disagrees", "left out", "alone"), column("marks.csv", "by_hand"));
        List<NamedCsvRecord> rows = rows("marks.csv");
        assertEquals("", rows.get(4).getField("predicted_deg"));
        assertEquals("", rows.get(4).getField("residual_deg"));
        assertEquals(
                number(rows.get(2), "offset_deg") - number(rows.get(2), "predicted_deg"),
                number(rows.get(2), "residual_deg"),
                1.01e-4);
    }

    @Test
    void findingsOfTheJobComeFirstAndThenThoseOfEachHole() throws IOException {
        tables.replace("structures.csv", "40,213", "40,573").delete("joins.csv");
        write();
        List<NamedCsvRecord> rows = rows("findings.csv");
        assertEquals("", rows.get(0).getField("hole_id"));
        assertEquals("", rows.get(0).getField("depth_m"));
        List<String> ofHole = rows.stream()
                .filter(row -> row.getField("hole_id").equals("TN-1"))
                .map(row -> row.getField("depth_m") + " " + row.getField("level") + " " + row.getField("what"))
                .toList();
        assertEquals("11.2500 info structures.csv, line 2: beta_deg 573 is taken as 213 degrees", ofHole.get(0));
        assertTrue(ofHole.get(1).startsWith(" info no joins were recorded"));
    }

    @Test
    void rowsSetAsideAreWrittenAndAnOlderListIsRemoved() throws IOException {
        String sound = tables.text("joins.csv");
        tables.settings("input.bad_rows = set-aside").replace("joins.csv", "locked", "loose");
        write();
        assertEquals(11, rows("set-aside.csv").size());
        assertEquals("file,line,hole_id,reason", header("set-aside.csv"));
        assertEquals(List.of("TN-2"), column("oriented.csv", "hole_id"));
        assertEquals(
                List.of("error"),
                rows("findings.csv").stream()
                        .filter(row -> row.getField("hole_id").equals("TN-1"))
                        .map(row -> row.getField("level"))
                        .toList());
        tables.put("joins.csv", sound);
        write();
        assertFalse(Files.exists(out.resolve("set-aside.csv")));
    }

    @Test
    void theTablesThatWereReadAreNeverOverwritten() {
        out = tables.folder();
        String before = tables.text("marks.csv");
        assertEquals(
                out + ": is the folder that was read, expected another one to write into",
                assertThrows(TableException.class, this::write).getMessage());
        assertEquals(before, tables.text("marks.csv"));
    }

    @Test
    void aTargetThatIsNoFolderIsNamed() throws IOException {
        Path file = Files.createFile(folder.resolve("file"));
        out = file;
        assertEquals(
                file + ": is not a folder, expected a folder to write into",
                assertThrows(TableException.class, this::write).getMessage());
        out = file.resolve("below");
        String below = assertThrows(TableException.class, this::write).getMessage();
        assertTrue(below.startsWith(out + ": cannot be written into ("), below);
        assertEquals(1, below.lines().count());
    }

    @Test
    void nothingIsReplacedWhereOneTableCannotBe() throws IOException {
        write();
        Files.delete(out.resolve("findings.csv"));
        Files.createDirectory(out.resolve("findings.csv"));
        Files.writeString(out.resolve("trace.csv"), "older", StandardCharsets.UTF_8);
        assertEquals(
                out.resolve("findings.csv") + ": is a folder, expected a file to replace or none",
                assertThrows(TableException.class, this::write).getMessage());
        assertEquals("older", Files.readString(out.resolve("trace.csv")));
        assertEquals(List.of("findings.csv", "marks.csv", "oriented.csv", "trace.csv"), files(out));
    }
}
