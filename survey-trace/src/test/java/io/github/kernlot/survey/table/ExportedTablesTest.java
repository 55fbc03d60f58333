package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.survey.check.Finding;
import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** Tables as spreadsheets and data bases export them are refused in few lines that say what to change. */
class ExportedTablesTest {

    private static final String HEADER = "expected a header with hole_id, depth_m, azimuth_deg, dip_deg";

    @TempDir
    Path folder;

    private static Arguments bad(Consumer<Tables> change, String... lines) {
        return Arguments.of(change, List.of(lines));
    }

    private static Arguments header(String line, String shown) {
        return bad(
                tables -> tables.put("surveys.csv", line + "\n" + tables.text("surveys.csv")),
                "surveys.csv, line 1, column hole_id: \"" + shown + "\", " + HEADER);
    }

    private static Arguments dip(String written, String expected) {
        return bad(
                tables -> tables.replace("surveys.csv", "92,-59", "92," + written),
                "surveys.csv, line 3, column dip_deg: \"" + written + "\", " + expected);
    }

    private static Arguments wholeFile(byte[] bytes, String what) {
        return bad(tables -> tables.put("joins.csv", bytes), "joins.csv: " + what);
    }

    static Stream<Arguments> exports() {
        String joins = "hole_id,depth_m,fit\nTN-1,12.5,locked\n";
        return Stream.of(
                header("sep=,", "sep=,"),
                header("sep=;", "sep=;"),
                header("# stations", "# stations"),
                header("Stations of the east side,,,", "Stations of the east side,,,"),
                header("TN-1,0,90,-60", "TN-1,0,90,-60"),
                bad(
                        tables -> tables.replace("joins.csv", ",", "\t"),
                        "joins.csv, line 1, column hole_id depth_m fit: expected columns separated by commas, not by tabs"),
                bad(
                        tables -> tables.replace("marks.csv", "offset_deg,offset_mm", "Offset_Deg,mm"),
                        "marks.csv, line 1, column Offset_Deg: expected offset_deg in lower case"),
                bad(
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30,92,-59,,"),
                        "surveys.csv, line 3, column dip_deg: \"-59\", the row has 6 fields, expected 4 as in the header (a comma at the end begins one more)"),
                bad(
                        tables -> tables.replace("joins.csv", "TN-1,12.5,locked", "TN-1"),
                        "joins.csv, line 2, column depth_m: the row has 1 field, expected 3 as in the header"),
                dip("-59 deg", "expected a number without a unit within [-90, 90]"),
                dip("-59\u00B0", "expected a number without a unit within [-90, 90]"),
                dip("\u221259", "expected a number with the minus sign of the keyboard within [-90, 90]"),
                dip("1e400", "expected a number within [-90, 90]"),
                bad(
                        tables -> tables.settings("north.of_survey = true"),
                        "job.properties, line 1, key north.of_survey: \"true\", the key is not known, expected one of "
                                + String.join(", ", JobKey.ALL.keySet())),
                wholeFile(joins.getBytes(StandardCharsets.UTF_16LE), "the file is UTF-16 text, expected UTF-8"),
                wholeFile(joins.getBytes(StandardCharsets.UTF_16BE), "the file is UTF-16 text, expected UTF-8"),
                wholeFile(
                        new byte[] {'P', 'K', 3, 4, 20, 0},
                        "the file is a spreadsheet or an archive, expected plain text in UTF-8"));
    }

    @ParameterizedTest
    @MethodSource("exports")
    void anExportIsRefused(Consumer<Tables> change, List<String> lines) {
        Tables tables = Tables.sound(folder);
        change.accept(tables);
        assertEquals(lines, tables.refusal());
    }

    @Test
    void aMarkThatStandsTwiceDoesNotAgreeWithItself() {
        Tables tables = Tables.sound(folder).append("marks.csv", "TN-1, 10,20,");
        assertEquals(
                List.of("marks.csv, line 7, column depth_m: \"10\", the same mark stands in line 2 already"),
                tables.refusal());
        tables.settings("input.bad_rows = set-aside");
        Job job = tables.read();
        assertEquals(3, job.hole("TN-1").marks().size());
        assertEquals(1, job.setAside().size());
    }

    @Test
    void aStructureThatStandsTwiceIsKeptAndTold() {
        Job job = Tables.sound(folder)
                .append("structures.csv", "TN-1,21,vein,55,10,30,\"second, later\"")
                .read();
        assertEquals(3, job.hole("TN-1").structures().size());
        assertEquals(
                List.of(Finding.at(
                        21,
                        Finding.Level.WARNING,
                        "structures.csv, line 5: the same structure stands in line 3 already")),
                job.findings("TN-1"));
    }

    @Test
    void aCodeForWhatWasNotMeasuredIsWarnedOf() {
        Job job = Tables.sound(folder)
                .replace("structures.csv", "55,10", "55,-999")
                .read();
        Finding finding = job.findings("TN-1").get(0);
        assertEquals(Finding.Level.WARNING, finding.level());
        assertTrue(finding.what().endsWith("taken as 81 degrees; what was not measured is left blank"), finding.what());
    }
}
