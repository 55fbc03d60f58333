package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.WallReference;
import io.github.kernlot.orientation.line.MarkSource;
import io.github.kernlot.orientation.line.OrientationMark;
import io.github.kernlot.survey.North;
import io.github.kernlot.survey.check.Finding;
import io.github.kernlot.survey.hole.HoleLog;
import io.github.kernlot.survey.hole.OrientationSettings;
import io.github.kernlot.survey.hole.Structure;
import java.io.IOException;
import java.nio.file.Files;
import java.nio.file.Path;
import java.util.List;
import java.util.Map;
import java.util.Optional;
import java.util.OptionalDouble;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.BeforeEach;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** What is odd but valid is read as it is meant, and what the reader took in another way than it is written is told. */
class OddTablesTest {

    @TempDir
    Path folder;

    private Tables tables;

    @BeforeEach
    void tables() {
        tables = Tables.sound(folder.resolve("job"));
    }

    private static Arguments same(String name, Consumer<Tables> change) {
        return Arguments.of(name, change);
    }

    static Stream<Arguments> sameJobs() {
        return Stream.of(
                same("a byte-order mark", tables -> tables.put("marks.csv", "\uFEFF" + tables.text("marks.csv"))),
                same("line ends of two characters", tables -> tables.replace("surveys.csv", "\n", "\r\n")),
                same("line ends of one old character", tables -> tables.replace("holes.csv", "\n", "\r")),
                same(
                        "no line end at the end",
                        tables ->
                                tables.put("joins.csv", tables.text("joins.csv").strip())),
                same("blank lines", tables -> tables.replace("joins.csv", "\n", "\n\n  \n")),
                same("blank rows", tables -> tables.append("joins.csv", ",, ")),
                same(
                        "blank lines before the header",
                        tables -> tables.put("joins.csv", "\n" + tables.text("joins.csv"))),
                same(
                        "quoted fields",
                        tables -> tables.replace("joins.csv", "TN-1,12.5,locked", "\"TN-1\",\"12.5\",\"locked\"")),
                same(
                        "spaces round fields",
                        tables -> tables.replace("joins.csv", "TN-1,12.5,locked", " TN-1 ,\t12.5, \"locked\" ")),
                same(
                        "spaces round names of columns",
                        tables -> tables.replace("joins.csv", "hole_id,depth_m,fit", " hole_id, depth_m ,\"fit\"")),
                same("upper case", tables -> tables.replace("joins.csv", "locked", "Locked")),
                same(
                        "plus signs and exponents",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "+3.0e1,.92E2,-59.")),
                same(
                        "columns in another order",
                        tables -> tables.put("joins.csv", "fit,hole_id,depth_m\nlocked,TN-1,12.5\ndoubtful,TN-1,25\n")),
                same(
                        "rows in another order",
                        tables -> tables.put(
                                "surveys.csv",
                                "hole_id,depth_m,azimuth_deg,dip_deg\nTN-1,60,94,-58\nTN-2,10,270,-70\nTN-1,0,90,-60\nTN-1,30,92,-59\n")),
                same(
                        "a column more",
                        tables -> tables.put(
                                "joins.csv",
                                "hole_id,depth_m,fit,by\nTN-1,12.5,locked,x\nTN-1,25,doubtful,\"a\nb\"\n")),
                same(
                        "a column without a name or a value",
                        tables -> tables.put(
                                "joins.csv", "hole_id,depth_m,fit,\nTN-1,12.5,locked,\nTN-1,25,doubtful,\n")),
                same("a whole turn more", tables -> tables.replace("surveys.csv", "30,92,-59", "30,452,-59")),
                same(
                        "settings as they are preset",
                        tables -> tables.settings(
                                "\uFEFF# all as preset",
                                "! really",
                                "",
                                "  survey.north :GRID",
                                "mark.side=Low ",
                                "random.seed = -7")),
                same(
                        "settings with old line ends",
                        tables -> tables.put("job.properties", "#\rmark.side=low\r\nbeta.apex=down-hole")),
                same("an empty settings file", tables -> tables.put("job.properties", "")));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource
    void sameJobs(String name, Consumer<Tables> change) {
        Job plain = tables.read();
        change.accept(tables);
        Job odd = tables.read();
        assertEquals(plain.settings(), odd.settings());
        assertEquals(plain.holes().size(), odd.holes().size());
        for (HoleLog hole : plain.holes()) {
            HoleLog other = odd.hole(hole.id());
            assertEquals(
                    hole.trace().survey().stations(), other.trace().survey().stations());
            assertEquals(hole.trace().collar(), other.trace().collar());
            assertEquals(hole.marks(), other.marks());
            assertEquals(hole.joins(), other.joins());
            assertEquals(hole.structures(), other.structures());
        }
    }

    @Test
    void holesKeepTheOrderOfTheirTable() {
        assertEquals(
                List.of("TN-1", "TN-2"),
                tables.read().holes().stream().map(HoleLog::id).toList());
    }

    @Test
    void everyAngleTakenOtherwiseIsToldWithItsHoleAndDepth() {
        Job job = tables.replace("surveys.csv", "30,92,-59", "30,-268,-59")
                .replace("marks.csv", "10,20,", "10,-340,")
                .replace("structures.csv", "55,10,30", "55,370,-330")
                .replace("structures.csv", "40,213", "40,360")
                .read();
        assertEquals(
                List.of(
                        Finding.at(
                                30, Finding.Level.INFO, "surveys.csv, line 3: azimuth_deg -268 is taken as 92 degrees"),
                        Finding.at(10, Finding.Level.INFO, "marks.csv, line 2: offset_deg -340 is taken as 20 degrees"),
                        Finding.at(
                                11.25,
                                Finding.Level.INFO,
                                "structures.csv, line 2: beta_deg 360 is taken as 0 degrees"),
                        Finding.at(
                                21, Finding.Level.INFO, "structures.csv, line 3: beta_deg 370 is taken as 10 degrees"),
                        Finding.at(
                                21,
                                Finding.Level.INFO,
                                "structures.csv, line 3: gamma_deg -330 is taken as 30 degrees")),
                job.findings("TN-1"));
        assertTrue(job.findings("TN-2").stream()
                .noneMatch(finding -> finding.what().contains(".csv")));
    }

    @Test
    void lengthsRoundTheCoreUseTheDiameterNearestToTheMark() {
        Job job = tables.settings("core.diameter_mm = 60")
                .put(
                        "marks.csv",
                        "hole_id,depth_m,offset_mm,core_diameter_mm\nTN-1,10,10,\nTN-1,20,10,50\nTN-2,12,10,\nTN-2,13,10,50\n")
                .read();
        assertEquals(List.of(60.0, 50.0), diameters(job.hole("TN-1")));
        assertEquals(List.of(47.6, 50.0), diameters(job.hole("TN-2")));
        // 360 mm / (pi diameter), worked by hand for 10 mm on 60 mm
        assertEquals(19.0986, job.hole("TN-1").marks().get(0).offset(), 5e-5);
    }

    private static List<Double> diameters(HoleLog hole) {
        return hole.marks().stream()
                .map(OrientationMark::diameter)
                .map(CoreDiameter::millimetres)
                .toList();
    }

    @Test
    void marksAreLeftOutWithTheirReason() {
        Job job = tables.put("marks.csv", """
                        hole_id,depth_m,offset_deg,sigma_deg,use,reason,tool,crew,grade
                        TN-1,10,20,2.5,No,"core
                         spun",a,b,1
                        TN-1,20,20,,yes,,a,b,1
                        TN-1,30,20,,,,a,b,1
                        """).read();
        List<OrientationMark> marks = job.hole("TN-1").marks();
        assertEquals(
                List.of(Optional.of("core spun"), Optional.empty(), Optional.empty()),
                marks.stream().map(OrientationMark::leftOut).toList());
        assertEquals(OptionalDouble.of(2.5), marks.get(0).sigma());
        assertEquals(
                new MarkSource(Optional.of("a"), Optional.of("b"), Optional.of("1")),
                marks.get(0).source());
    }

    @Test
    void whatWasNotRecordedIsEmpty() {
        Job job = tables.delete("joins.csv").read();
        assertEquals(Optional.empty(), job.hole("TN-1").joins());
        Structure joint = job.hole("TN-2").structures().get(0);
        assertEquals(OptionalDouble.empty(), joint.beta());
        assertEquals(OptionalDouble.empty(), joint.gamma());
        assertEquals(Map.of("logger", ""), joint.extra());
        assertTrue(
                job.notices().contains("joins.csv: there is none, and nothing is known of how the core fits together"));
    }

    @Test
    void aHoleWithoutARowInTheTableOfJoinsHasNone() {
        assertEquals(Optional.of(List.of()), tables.read().hole("TN-2").joins());
    }

    @Test
    void tablesOfMarksAndStructuresMayBeEmpty() {
        Job job = tables.put("marks.csv", "hole_id,depth_m,offset_deg\n")
                .put("structures.csv", "hole_id,depth_m,kind,alpha_deg,beta_deg\n")
                .read();
        assertEquals(List.of(), job.hole("TN-1").marks());
        assertEquals(List.of(), job.hole("TN-1").structures());
        assertTrue(job.notices()
                .containsAll(List.of("marks.csv: the table has no rows", "structures.csv: the table has no rows")));
    }

    @Test
    void whatIsNotUsedIsToldOnce() {
        tables.put(
                        "surveys.csv",
                        "hole_id,depth_m,azimuth_deg,dip_deg,azimuth_sigma_deg,shift\nTN-1,0,90,-60,1,a\nTN-2,0,90,-60,,b\n")
                .put(
                        "structures.csv",
                        "hole_id,depth_m,kind,alpha_deg,beta_deg,alpha_sigma_deg,logger\nTN-1,9,vein,40,20,3,c\n")
                .settings("alpha.sigma_deg = 3", "random.seed = 5");
        List<String> notices = tables.read().notices();
        assertTrue(notices.containsAll(List.of(
                "job.properties: checked and not used yet: alpha.sigma_deg, random.seed",
                "structures.csv: not used yet: alpha_sigma_deg",
                "surveys.csv: columns that are not known: shift; they are not used",
                "structures.csv: columns that are not known: logger; they are carried along")));
        assertEquals(notices.size(), notices.stream().distinct().count());
    }

    @Test
    void presetNumbersAreToldAsAssumed() {
        String assumed =
                tables.settings("hand.tolerance_deg = 8").read().notices().get(0);
        assertTrue(assumed.startsWith("job.properties: assumed, because not given: "));
        assertTrue(assumed.contains("mark.sensor_sigma_deg = 1.0"));
        assertTrue(!assumed.contains("hand.tolerance_deg"));
    }

    @Test
    void dipsMayBePositiveDown() {
        Job job = tables.settings("survey.dip_sign = positive-down")
                .replace("surveys.csv", ",-", ",")
                .read();
        assertEquals(-60, job.hole("TN-1").trace().directionAt(0).dip());
        assertTrue(job.notices().contains("surveys.csv: dips are taken as positive down (survey.dip_sign)"));
        assertTrue(job.notices().stream().noneMatch(notice -> notice.contains("no hole goes down")));
    }

    @Test
    void holesThatAllGoUpAreTold() {
        assertTrue(
                tables.replace("surveys.csv", ",-", ",")
                        .read()
                        .notices()
                        .contains(
                                "surveys.csv: by survey.dip_sign = negative-down no hole goes down; if they do, the other sign was meant"));
        tables.replace("surveys.csv", "94,58", "94,-58").settings("survey.dip_sign = negative-down");
        assertTrue(tables.read().notices().stream().noneMatch(notice -> notice.contains("no hole goes down")));
    }

    @Test
    void azimuthsAreTurnedToTheGrid() {
        Job job = tables.settings("survey.north = magnetic", "output.north = true", "mark.side = north")
                .replace("holes.csv", "310,,,", "310,4,1,")
                .read();
        HoleLog hole = job.hole("TN-1");
        // true = magnetic + declination, grid = true - convergence
        assertEquals(93, hole.trace().directionAt(0).azimuth(), 1e-12);
        assertEquals(North.MAGNETIC, hole.trace().survey().measuredFrom());
        assertEquals(North.TRUE, job.settings().output());
        assertEquals(2, job.orient().size());
    }

    @Test
    void settingsReachTheMethod() {
        OrientationSettings settings = tables.settings(
                        "mark.side = high",
                        "beta.sense = anticlockwise",
                        "beta.apex = up-hole",
                        "mark.sensor_sigma_deg = 0",
                        "mark.level_sigma_deg = 3",
                        "mark.pencil_sigma_mm = 4",
                        "mark.transfer_sigma_mm = 5",
                        "mark.bias_sigma_deg = 6",
                        "hand.tolerance_deg = 7",
                        "hand.neighbours = 2",
                        "line.sigma_limit_deg = 20",
                        "survey.extrapolation_limit_m = 40")
                .read()
                .settings();
        assertEquals(WallReference.highSide(), settings.model().side());
        assertEquals(
                new BetaConvention(
                        BetaConvention.Sense.ANTICLOCKWISE, BetaConvention.View.DOWN_HOLE, BetaConvention.Apex.UP_HOLE),
                settings.beta());
        assertEquals(0, settings.model().noise().sensor());
        assertEquals(3, settings.model().noise().level());
        assertEquals(4, settings.model().noise().pencilMillimetres());
        assertEquals(5, settings.model().noise().transferMillimetres());
        assertEquals(6, settings.model().noise().bias());
        assertEquals(7, settings.handTolerance());
        assertEquals(2, settings.handNeighbours());
        assertEquals(20, settings.lineSigmaLimit());
        assertEquals(100, tables.read().hole("TN-1").trace().reach());
    }

    @Test
    void presetsAreThoseOfTheValues() {
        assertEquals(OrientationSettings.assumed(), tables.read().settings());
    }

    @Test
    void aHoleThatIsNotThereIsNamed() {
        Job job = tables.read();
        assertEquals(
                "there is no hole TN-7; expected one of [TN-1, TN-2]",
                assertThrows(IllegalArgumentException.class, () -> job.hole("TN-7"))
                        .getMessage());
        assertEquals(
                "there is no hole TN-7; expected one of [TN-1, TN-2]",
                assertThrows(IllegalArgumentException.class, () -> job.findings("TN-7"))
                        .getMessage());
        assertEquals("2 holes with 3 structures from " + tables.folder(), job.toString());
    }

    @Test
    void everyFaultOfEveryTableIsToldAtOnce() {
        tables.settings("mark.side = up")
                .replace("holes.csv", "310", "x")
                .replace("surveys.csv", "-59", "x")
                .replace("surveys.csv", "-70", "y")
                .replace("marks.csv", "20,22,", "20,x,")
                .delete("joins.csv")
                .replace("structures.csv", "40,213", "400,x");
        assertEquals(
                List.of(
                        "job.properties, line 1, key mark.side: \"up\", expected one of high, low, north",
                        "holes.csv, line 3, column elevation_m: \"x\", expected a number within [-1000000000, 1000000000]",
                        "surveys.csv, line 3, column dip_deg: \"x\", expected a number within [-90, 90]",
                        "surveys.csv, line 5, column dip_deg: \"y\", expected a number within [-90, 90]",
                        "marks.csv, line 3, column offset_deg: \"x\", expected a number",
                        "structures.csv, line 2, column alpha_deg: \"400\", expected a number within [0, 90]",
                        "structures.csv, line 2, column beta_deg: \"x\", expected a number"),
                tables.refusal());
    }

    @Test
    void aFaultHasItsParts() {
        tables.replace("surveys.csv", "30,92,-59", "30,92,-95");
        TableException refused = assertThrows(TableException.class, tables::read);
        assertEquals(
                List.of(new Fault("surveys.csv", 3, "dip_deg", "-95", "expected a number within [-90, 90]")),
                refused.faults());
    }

    @Test
    void aLongValueIsCutAndKeptInOneLine() {
        String line = new Fault("a.csv", 2, "b", "x".repeat(70) + "\n", "wrong\r\n\u202E\u2028\u00A0").toString();
        assertEquals(
                "a.csv, line 2, column b: \"" + "x".repeat(60) + "...\", wrong\\u000D\\u000A\\u202E\\u2028\\u00A0",
                line);
    }

    @Test
    void aFolderThatIsNotThereIsNamed() throws IOException {
        Path missing = folder.resolve("nowhere");
        assertEquals(
                missing + ": the folder does not exist, expected a folder of tables",
                assertThrows(TableException.class, () -> Job.read(missing)).getMessage());
        Path file = Files.createFile(folder.resolve("file"));
        assertEquals(
                file + ": is not a folder, expected a folder of tables",
                assertThrows(TableException.class, () -> Job.read(file)).getMessage());
    }

    @Test
    void aMarkThatIsLeftOutMayStandWhereItsSideDoesNotExist() {
        tables.replace("surveys.csv", "TN-2,10,270,-70", "TN-2,10,270,-90");
        tables.put("marks.csv", "hole_id,depth_m,offset_deg,use\nTN-1,10,20,\nTN-1,20,22,\nTN-2,12,350,no\n");

        HoleLog hole = Job.read(tables.folder()).hole("TN-2");

        assertTrue(hole.marks().get(0).leftOut().isPresent());
    }
}
