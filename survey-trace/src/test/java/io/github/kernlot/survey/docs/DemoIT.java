package io.github.kernlot.survey.docs;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertFalse;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import java.io.IOException;
import java.nio.charset.StandardCharsets;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.ArrayList;
import java.util.List;
import java.util.Map;
import java.util.stream.Collectors;
import java.util.stream.IntStream;
import java.util.stream.Stream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;

/** Runs docs/demo/run.sh as a user does, from another folder. */
class DemoIT {

    private static final Path DEMO = Path.of("../docs/demo").toAbsolutePath().normalize();

    @TempDir
    Path folder;

    private record Outcome(int status, String output, String errors) {}

    private Outcome run(String... arguments) throws IOException, InterruptedException {
        return run(Map.of(), arguments);
    }

    private Outcome run(Map<String, String> environment, String... arguments) throws IOException, InterruptedException {
        List<String> command =
                new ArrayList<>(List.of("bash", DEMO.resolve("run.sh").toString()));
        command.addAll(List.of(arguments));
        Path output = folder.resolve("output.txt");
        Path errors = folder.resolve("errors.txt");
        ProcessBuilder builder = new ProcessBuilder(command);
        builder.directory(folder.toFile());
        builder.environment().put("JAVA_HOME", System.getProperty("java.home"));
        builder.environment().putAll(environment);
        builder.redirectOutput(output.toFile());
        builder.redirectError(errors.toFile());
        int status = builder.start().waitFor();
        return new Outcome(status, Files.readString(output), Files.readString(errors));
    }

    private static List<Map<String, String>> table(Path file) throws IOException {
        List<String> lines = Files.readAllLines(file, StandardCharsets.UTF_8);
        String[] header = lines.get(0).split(",");
        return lines.stream()
                .skip(1)
                .map(line -> line.split(",", -1))
                .map(cells -> IntStream.range(0, header.length)
                        .boxed()
                        .collect(Collectors.toMap(i -> header[i], i -> cells[i])))
                .toList();
    }

    @Test
    void theInventedProspectIsOriented() throws Exception {
        Outcome outcome = run("--out", "results");
        assertEquals(0, outcome.status(), outcome.errors());
        Path results = folder.resolve("results");
        for (String name : List.of("oriented.csv", "marks.csv", "trace.csv", "findings.csv", "index.html")) {
            assertTrue(Files.size(results.resolve(name)) > 0, name);
        }
        try (Stream<Path> files = Files.list(results)) {
            assertTrue(files.filter(file -> file.toString().endsWith(".svg")).count() >= 5);
        }
        assertTrue(
                table(results.resolve("findings.csv")).stream()
                        .anyMatch(row -> row.get("hole_id").equals("QB-01")
                                && row.get("what").contains("before the rods were still")),
                "the driller's note of rods that turned is borne out by the run log");
        assertTrue(
                Files.readString(results.resolve("findings.csv")).contains(",66.2983,1.83712,degrees,assumed"),
                "a limit that was worked out keeps the digits that mean something");
        assertEquals(
                List.of("QT-1", "QT-2", "day", "night", "QT-1", "QT-2", "QT-3"),
                table(results.resolve("audit.csv")).stream()
                        .filter(row -> List.of("tool", "crew", "check").contains(row.get("group_kind")))
                        .map(row -> row.get("group"))
                        .toList());
        String page = Files.readString(results.resolve("index.html"));
        assertTrue(page.contains("Audit of marks and tools"));
        assertTrue(page.contains("<svg"));
        assertFalse(page.contains("src=\"http"), "the page needs a network");
        assertTrue(outcome.output().contains("index.html"));
    }

    /**
     * The survey is published (USGS, positions and orientations of geophones in the SAFOD Pilot Hole, US government data; seen in
     * source); its printed positions are rounded to 0.5 m across and 1 m in height, and deviate by up to 0.73 m as recomputed. The
     * marks and the structures are invented: one plane, 60/135, computed outside the library.
     */
    @Test
    void aPublishedGyroSurveyRunsAsAHole() throws Exception {
        Outcome outcome = run(
                "--data",
                Path.of("src/test/resources/gyro-hole").toAbsolutePath().toString(),
                "--out",
                "gyro");
        assertEquals(0, outcome.status(), outcome.errors());
        List<Map<String, String>> trace = table(folder.resolve("gyro/trace.csv"));
        Map<String, String> last = trace.get(trace.size() - 1);
        assertEquals(6, Double.parseDouble(last.get("easting_m")), 0.75);
        assertEquals(-26, Double.parseDouble(last.get("northing_m")), 0.75);
        assertEquals(-1436, Double.parseDouble(last.get("elevation_m")), 0.5);
        List<Map<String, String>> oriented = table(folder.resolve("gyro/oriented.csv"));
        assertEquals(13, oriented.size());
        for (Map<String, String> row : oriented) {
            PlaneOrientation plane = PlaneOrientation.ofDipAndDirection(
                    Double.parseDouble(row.get("dip_deg")), Double.parseDouble(row.get("dip_direction_deg")));
            assertEquals(0, plane.angleTo(PlaneOrientation.ofDipAndDirection(60, 135)), 1.5, row.toString());
        }
    }

    @Test
    void badTablesAreRefusedInLinesWithoutAStackTraceAndNothingIsWritten() throws Exception {
        Path bad = Files.createDirectories(folder.resolve("bad"));
        Files.writeString(bad.resolve("holes.csv"), "hole_id,easting_m,northing_m,elevation_m\nA,1,2,three\n");
        Files.writeString(bad.resolve("surveys.csv"), "hole_id,depth_m,azimuth_deg,dip_deg\nA,0,90,-95\n");
        Files.writeString(bad.resolve("marks.csv"), "hole_id,depth_m,offset_deg\n");
        Files.writeString(bad.resolve("structures.csv"), "hole_id,depth_m,kind,alpha_deg,beta_deg\n");
        Outcome outcome = run("--data", "bad", "--out", "none");
        assertEquals(2, outcome.status());
        assertTrue(outcome.errors().contains("holes.csv"), outcome.errors());
        assertTrue(outcome.errors().contains("surveys.csv"), outcome.errors());
        assertFalse(outcome.errors().contains("\tat "), outcome.errors());
        assertFalse(Files.exists(folder.resolve("none")));
    }

    @Test
    void aJobOfWhichNoHoleIsLeftIsToldInOneLine() throws Exception {
        Path bad = Files.createDirectories(folder.resolve("nothing left"));
        Files.writeString(bad.resolve("job.properties"), "input.bad_rows = set-aside\n");
        Files.writeString(bad.resolve("holes.csv"), "hole_id,easting_m,northing_m,elevation_m\nA,1,2,3\n");
        Files.writeString(bad.resolve("surveys.csv"), "hole_id,depth_m,azimuth_deg,dip_deg\nA,0,90,-95\n");
        Files.writeString(bad.resolve("marks.csv"), "hole_id,depth_m,offset_deg\n");
        Files.writeString(bad.resolve("structures.csv"), "hole_id,depth_m,kind,alpha_deg,beta_deg\n");
        Outcome outcome = run("--data", "nothing left", "--out", "told");
        assertEquals(2, outcome.status());
        assertEquals(1, outcome.errors().lines().count(), outcome.errors());
        assertTrue(Files.readString(folder.resolve("told/findings.csv")).contains("-95"));
        assertFalse(Files.exists(folder.resolve("told/index.html")));
    }

    @Test
    void aPathThatTheLocaleCannotNameIsRefusedInOneLine() throws Exception {
        Outcome outcome = run(Map.of("LC_ALL", "C"), "--data", "t\u00E4bles");
        assertEquals(2, outcome.status());
        assertEquals(1, outcome.errors().lines().count(), outcome.errors());
    }

    @Test
    void anUnknownArgumentIsRefusedWithTheUsage() throws Exception {
        Outcome outcome = run("--dta", "x");
        assertEquals(2, outcome.status());
        assertTrue(outcome.errors().contains("usage"), outcome.errors());
    }
}
