package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.line.DrawnLine;
import io.github.kernlot.orientation.line.DrawnLines;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientedHole;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Optional;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** The tables of runs, of drawn lines and of checks, which may be absent. */
class RecordTablesTest {

    private static final String RUNS = """
            hole_id,from_m,to_m,recovered_m,tool,read_tool,prepared_at,rods_still_at,read_at,marked_at
            TN-1,7,10,2.95,A,A,2026-03-01T06:00,2026-03-01T06:50,2026-03-01T06:52,2026-03-01T07:15
            TN-1,17,20,,A,A,2026-03-01T09:00,2026-03-01T09:50,2026-03-01T09:48,
            """;
    private static final String LINES = """
            hole_id,from_m,to_m,arrow,grade,drawn_by
            TN-1,0,15,down-hole,good,shed
            TN-1,15,20.5,Up-Hole,,
            """;
    private static final String CHECKS = """
            tool,checked_at,known_roll_deg,read_roll_deg
            A,2026-02-28T10:00+11:00,90,98
            A,2026-02-28T10:05+11:00,210,217.5
            A,2026-02-28T10:10+11:00,330,-21.5
            B,2026-02-28T10:00,90,90
            """;

    @TempDir
    Path folder;

    private Tables tables;

    @BeforeEach
    void tables() {
        tables = Tables.sound(folder);
    }

    private static Arguments bad(String name, Consumer<Tables> change, String... lines) {
        return Arguments.of(name, change, List.of(lines));
    }

    static Stream<Arguments> faults() {
        return Stream.of(
                bad(
                        "an empty table",
                        tables -> tables.put("runs.csv", ""),
                        "runs.csv, line 1, column hole_id: the file is empty, expected a header with hole_id, from_m, to_m"),
                bad(
                        "lines without arrows",
                        tables -> tables.put("lines.csv", "hole_id,from_m,to_m\nTN-1,0,5\n"),
                        "lines.csv, line 1, column arrow: the column is missing, expected a header with hole_id, from_m, to_m, arrow"),
                bad(
                        "checks without a time",
                        tables -> tables.put("checks.csv", "tool,known_roll_deg,read_roll_deg\nA,1,2\n"),
                        "checks.csv, line 1, column checked_at: the column is missing, expected a header with tool, checked_at, known_roll_deg, read_roll_deg"),
                bad(
                        "bad numbers of a run",
                        tables -> tables.put("runs.csv", RUNS.replace("7,10,2.95", "-7,,x")),
                        "runs.csv, line 2, column from_m: \"-7\", expected a number within [0, 100000]",
                        "runs.csv, line 2, column to_m: blank, expected a number within [0, 100000]",
                        "runs.csv, line 2, column recovered_m: \"x\", expected a number within [0, 100000]"),
                bad(
                        "a date of another country",
                        tables -> tables.put("runs.csv", RUNS.replace("2026-03-01T06:52", "1.3.2026 6:52")),
                        "runs.csv, line 2, column read_at: \"1.3.2026 6:52\", expected a date and time by ISO 8601, as 2026-03-01T06:40 or 2026-03-01T06:40+11:00"),
                bad(
                        "an offset from UTC among clocks without",
                        tables -> tables.put("runs.csv", RUNS.replace("T09:48", "T09:48Z")),
                        "runs.csv, line 3, column read_at: \"2026-03-01T09:48Z\", expected no offset from UTC, as the time in line 2 of the hole has none"),
                bad(
                        "a tool of two lines",
                        tables -> tables.put("runs.csv", RUNS.replace("2.95,A,A", "2.95,\"A\nB\",A")),
                        "runs.csv, line 2, column tool: \"A\\u000AB\", expected a name without control characters"),
                bad(
                        "a run of no hole",
                        tables -> tables.put("runs.csv", RUNS.replace("TN-1,17", "TN-9,17")),
                        "runs.csv, line 3, column hole_id: \"TN-9\", expected a hole of holes.csv"),
                bad(
                        "a line that goes nowhere, and an arrow that does",
                        tables -> tables.put("lines.csv", LINES.replace("0,15,down-hole", "15,15,sideways")),
                        "lines.csv, line 2, column arrow: \"sideways\", expected one of down-hole, up-hole",
                        "lines.csv, line 2, column to_m: \"15\", expected a depth below that of from_m, 15 m"),
                bad(
                        "no arrow",
                        tables -> tables.put("lines.csv", LINES.replace("Up-Hole", "")),
                        "lines.csv, line 3, column arrow: blank, expected one of down-hole, up-hole"),
                bad(
                        "lines that overlap",
                        tables -> tables.put("lines.csv", LINES.replace("TN-1,15,20.5", "TN-1,14.9,20.5")),
                        "lines.csv, line 3, column from_m: \"14.9\", the line overlaps the one in line 2, expected at least 15 m"),
                bad(
                        "bad checks",
                        tables -> tables.put(
                                "checks.csv",
                                CHECKS.replace("A,2026-02-28T10:05+11:00,210", ",,210,")
                                                .trim() + "\nB,,x,\n"),
                        "checks.csv, line 3, column read_roll_deg: the row has 5 fields, expected 4 as in the header (a decimal comma makes two of one)",
                        "checks.csv, line 6, column checked_at: blank, expected a date and time by ISO 8601",
                        "checks.csv, line 6, column known_roll_deg: \"x\", expected a number",
                        "checks.csv, line 6, column read_roll_deg: blank, expected a number"),
                bad(
                        "a check of no tool, and one by another clock",
                        tables -> tables.put(
                                "checks.csv",
                                CHECKS.replace("A,2026-02-28T10:05+11:00", ",2026-02-28T10:05+11:00")
                                        .replace("T10:10+11:00", "T10:10")),
                        "checks.csv, line 3, column tool: blank, expected a name",
                        "checks.csv, line 4, column checked_at: \"2026-02-28T10:10\", expected an offset from UTC, as the time in line 2 of the tool has"),
                bad(
                        "a factor below 1",
                        tables -> tables.settings("run.finding_prior_factor = 0.5"),
                        "job.properties, line 1, key run.finding_prior_factor: \"0.5\", expected a number within [1, 1000000]"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource("faults")
    void isRefused(String name, Consumer<Tables> change, List<String> lines) {
        change.accept(tables);
        assertEquals(lines, tables.refusal());
    }

    private static List<String> told(OrientedHole hole) {
        return hole.findings().stream().map(Finding::toString).toList();
    }

    @Test
    void aRunReadWhileTheRodsTurnedMakesItsMarkTheMoreProbablyWrong() {
        OrientedHole hole = tables.put("runs.csv", RUNS).read().orient("TN-1");
        List<String> told = told(hole);

        assertTrue(
                told.contains(
                        "warning at 20.00 m: run from 17.00 to 20.00 m: read at 2026-03-01T09:48 before the rods were still at 2026-03-01T09:50"),
                told.toString());
        assertTrue(
                told.stream()
                        .anyMatch(
                                text -> text.startsWith(
                                        "info at 20.00 m: mark at 20.00 m, offset 022.0: prior of a wrong mark 0.0500 raised to 0.150 because of run from 17.00")),
                told.toString());
        assertTrue(told.contains("warning at 30.00 m: mark at 30.00 m, offset 021.0 lies in no run of the log"));
        List<OrientationMark> marks =
                hole.line().marks().stream().map(mark -> mark.mark()).toList();
        assertEquals(Optional.of("A"), marks.get(0).source().tool());
        assertEquals(Optional.empty(), marks.get(0).blunders());
        assertEquals(0.15, marks.get(1).blunders().orElseThrow().wrong(), 1e-12);
        assertTrue(hole.runReview().isPresent());
        assertTrue(tables.read().hole("TN-2").runs().isEmpty());
    }

    @Test
    void theFactorIsASetting() {
        Job job = tables.put("runs.csv", RUNS)
                .settings("run.finding_prior_factor = 10")
                .read();

        assertEquals(10, job.settings().runFindingFactor());
        assertEquals(
                0.5,
                job.orient("TN-1")
                        .line()
                        .marks()
                        .get(1)
                        .mark()
                        .blunders()
                        .orElseThrow()
                        .wrong(),
                1e-12);
    }

    @Test
    void linesAreReadWithTheirArrows() {
        Job job = tables.put("lines.csv", LINES).read();
        DrawnLine up = new DrawnLine(15, 20.5, DrawnLine.Arrow.UP_HOLE, Optional.empty(), Optional.empty());

        List<DrawnLine> lines = job.hole("TN-1").drawn().recorded().orElseThrow();
        assertEquals(Optional.of("good"), lines.get(0).grade());
        assertEquals(Optional.of("shed"), lines.get(0).drawnBy());
        assertEquals(up, lines.get(1));
        assertTrue(job.findings("TN-2")
                .contains(Finding.ofHole(
                        Finding.Level.INFO, "lines.csv has no line of this hole: it is taken as drawn everywhere")));
        List<String> told = told(job.orient("TN-1"));
        assertTrue(told.contains("warning at 21.00 m: vein is unoriented: no line was drawn here"), told.toString());
        assertTrue(told.contains(
                "info at 15.00 m: line from 15.00 to 20.50 m, arrow up-hole: beta, gamma and offsets on it are"
                        + " taken as read looking up-hole, beta to the end of the ellipse that the arrow points to"));
        assertTrue(
                told.contains(
                        "warning at 30.00 m: no line was drawn at this mark; its offset is taken as one to the line that goes on"));
        assertEquals(
                "338.0",
                String.valueOf(job.orient("TN-1").line().marks().get(1).mark().offset()));
    }

    @Test
    void aTableOfLinesWithoutARowSaysNothing() {
        Job job = tables.put("lines.csv", "hole_id,from_m,to_m,arrow\n").read();

        assertTrue(job.hole("TN-1").drawn().recorded().isEmpty());
        assertTrue(job.notices().contains("lines.csv: the table has no rows"));
        assertEquals(List.of(), job.findings("TN-1"));
        assertEquals(
                DrawnLines.everywhere().toString(), job.hole("TN-1").drawn().toString());
    }

    @Test
    void checksGoToTheAudit() throws IOException {
        Job job = tables.put("checks.csv", CHECKS)
                .put("runs.csv", RUNS.replace("A,A,2026-03-01T09", "C,C,2026-03-01T09"))
                .read();
        List<String> notices = job.notices();

        assertEquals(4, job.checks().size());
        assertEquals(338.5, job.checks().get(2).readRoll());
        assertTrue(notices.contains("checks.csv, line 4: read_roll_deg -21.5 is taken as 338.5 degrees"));
        assertTrue(
                notices.contains("checks.csv: no check of the tools C, which marks or runs name"), notices.toString());
        assertTrue(notices.contains("checks.csv: checks of the tools B, which neither marks nor runs name"));

        Path out = folder.resolve("out");
        ResultTables results = ResultTables.of(job, job.orient());
        results.write(out);
        List<String> audit = Files.readAllLines(out.resolve("audit.csv"));
        assertEquals(
                "group_kind,group,marks,mean_residual_deg,spread_deg,bias_deg,bias_low_deg,bias_high_deg,p_no_bias,trend_deg_per_100m,trend_sigma,blunder_rate,blunder_low,blunder_high,mirrored_log10_odds",
                audit.get(0));
        assertEquals(
                List.of("tool,A,1", "tool,C,1"),
                audit.subList(1, 3).stream().map(line -> line.substring(0, 8)).toList());
        // 8, 7.5 and 8.5: mean 8; Student's t with 2 degrees of freedom, 4.3027 (table, from memory), times 0.5 / sqrt
        // 3
        assertEquals(
                List.of("shift", "hole", "hole", "depth"),
                audit.subList(3, 7).stream()
                        .map(line -> line.substring(0, line.indexOf(',')))
                        .toList());
        String[] check = audit.get(7).split(",", -1);
        assertEquals(List.of("check", "A", "3"), List.of(check).subList(0, 3));
        assertEquals(8, Double.parseDouble(check[5]), 1e-3);
        assertEquals(8 - 4.3027 * 0.5 / Math.sqrt(3), Double.parseDouble(check[6]), 2e-3);
        assertEquals(8 + 4.3027 * 0.5 / Math.sqrt(3), Double.parseDouble(check[7]), 2e-3);
        assertEquals("0.0013", check[8]);
        assertEquals(
                List.of("check", "B", "1"), List.of(audit.get(8).split(",")).subList(0, 3));
        assertEquals(8, results.audit().size());

        ResultTables.of(Tables.sound(folder.resolve("plain")).read(), List.of()).write(out);
        assertFalse(Files.exists(out.resolve("audit.csv")), "of another job");
    }

    @Test
    void badRunsAndLinesSetTheirHoleAsideAndBadChecksThemselves() {
        Job job = tables.put("lines.csv", LINES.replace("15,20.5", "15,x"))
                .put("checks.csv", CHECKS.replace("210,217.5", "210,y"))
                .settings("input.bad_rows = set-aside")
                .read();

        assertEquals(List.of("TN-2"), job.holes().stream().map(HoleLog::id).toList());
        assertEquals(3, job.checks().size());
        SetAsideRow check = new SetAsideRow("checks.csv", 3, "", "column read_roll_deg: \"y\", expected a number");
        assertTrue(job.setAside().contains(check), job.setAside().toString());
        assertTrue(job.notices().contains(check.toString()));
        assertEquals(
                "lines.csv",
                job.setAside().stream()
                        .filter(row -> row.line() == 3 && row.reason().startsWith("column to_m"))
                        .findFirst()
                        .orElseThrow()
                        .file());
    }
}
