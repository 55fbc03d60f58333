package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;

import java.nio.charset.StandardCharsets;
import java.nio.file.Path;
import java.util.List;
import java.util.function.Consumer;
import java.util.stream.Stream;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.Arguments;
import org.junit.jupiter.params.provider.MethodSource;

/** A sound folder changed in one place is refused with exactly the lines that tell the place. */
class BadTablesTest {

    @TempDir
    Path folder;

    private static Arguments bad(String name, Consumer<Tables> change, String... lines) {
        return Arguments.of(name, change, List.of(lines));
    }

    static Stream<Arguments> files() {
        return Stream.of(
                bad(
                        "a missing table",
                        tables -> tables.delete("surveys.csv"),
                        "surveys.csv: the file is missing from FOLDER"),
                bad(
                        "an empty file",
                        tables -> tables.put("marks.csv", ""),
                        "marks.csv, line 1, column hole_id: the file is empty, expected a header with hole_id, depth_m"),
                bad(
                        "a file of blank lines",
                        tables -> tables.put("marks.csv", "\n \n\n"),
                        "marks.csv, line 1, column hole_id: the file is empty, expected a header with hole_id, depth_m"),
                bad(
                        "a header alone",
                        tables -> tables.put("surveys.csv", "hole_id,depth_m,azimuth_deg,dip_deg\n"),
                        "surveys.csv, line 1, column hole_id: the table has no rows, expected at least one"),
                bad(
                        "a folder in the place of a file",
                        tables ->
                                Tables.sound(tables.delete("joins.csv").folder().resolve("joins.csv")),
                        "joins.csv: is a folder, expected a file"),
                bad(
                        "UTF-16",
                        tables -> tables.put("joins.csv", "hole_id,depth_m,fit\n".getBytes(StandardCharsets.UTF_16)),
                        "joins.csv: the file is UTF-16 text, expected UTF-8"),
                bad(
                        "Latin-1",
                        tables -> tables.put(
                                "structures.csv",
                                tables.text("structures.csv")
                                        .replace("vein", "v\u00e9ine")
                                        .getBytes(StandardCharsets.ISO_8859_1)),
                        "structures.csv, line 3, column kind: \"v\\xE9ine\", the text is not UTF-8"),
                bad(
                        "a Latin-1 header",
                        tables -> tables.put(
                                "joins.csv", "hole_id,depth_m,fit,r\u00e9\n".getBytes(StandardCharsets.ISO_8859_1)),
                        "joins.csv, line 1, column r\\xE9: the name is not UTF-8 text"),
                bad(
                        "an unclosed quote",
                        tables -> tables.replace("joins.csv", "25,doubtful", "25,\"doubtful"),
                        "joins.csv, line 3, column fit: unclosed quoted field at end of input, expected quotes as in RFC 4180; nothing after it was read"),
                bad(
                        "text behind a quote",
                        tables -> tables.replace("joins.csv", "12.5,locked", "\"12.5\"m,locked"),
                        "joins.csv, line 2, column depth_m: unexpected character after closing quote: 'm' (0x6d), expected quotes as in RFC 4180; nothing after it was read"),
                bad(
                        "a stray quote",
                        tables -> tables.replace("structures.csv", "vein", "1\" vein"),
                        "structures.csv, line 3, column kind: \"1\" vein\", a quote stands in a field without quotes, expected it doubled in a field within quotes"),
                bad(
                        "a doubled column",
                        tables -> tables.replace("joins.csv", "depth_m,fit", "depth_m,fit,fit"),
                        "joins.csv, line 1, column fit: the column stands twice in the header"),
                bad(
                        "missing columns",
                        tables -> tables.replace("surveys.csv", "depth_m,azimuth_deg", "Depth_m,azimuth"),
                        "surveys.csv, line 1, column Depth_m: expected depth_m in lower case",
                        "surveys.csv, line 1, column azimuth_deg: the column is missing, expected a header with hole_id, depth_m, azimuth_deg, dip_deg"),
                bad(
                        "no offset column",
                        tables -> tables.replace("marks.csv", "offset_deg,offset_mm", "offset,mm"),
                        "marks.csv, line 1, column offset_deg: the column is missing, expected one of offset_deg, offset_mm"),
                bad(
                        "semicolons",
                        tables -> tables.put("joins.csv", "hole_id;depth_m;fit\nTN-1;12,5;locked\n"),
                        "joins.csv, line 1, column hole_id;depth_m;fit: expected columns separated by commas, not by semicolons"),
                bad(
                        "a control character in the header",
                        tables -> tables.replace("joins.csv", "fit", "fit,\"re\u0007mark\""),
                        "joins.csv, line 1, column re\\u0007mark: expected a name without control characters"),
                bad(
                        "a value without a column name",
                        tables -> tables.put("joins.csv", "hole_id,depth_m,fit,\nTN-1,12.5,locked,x\n"),
                        "joins.csv, line 2, column number 4: the column has no name in the header"));
    }

    static Stream<Arguments> rows() {
        return Stream.of(
                bad(
                        "too few fields",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30,92"),
                        "surveys.csv, line 3, column dip_deg: the row has 3 fields, expected 4 as in the header"),
                bad(
                        "a decimal comma",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30,92,-59,5"),
                        "surveys.csv, line 3, column dip_deg: \"-59\", the row has 5 fields, expected 4 as in the header (a decimal comma makes two of one)"),
                bad(
                        "a decimal comma within quotes",
                        tables -> tables.replace("joins.csv", "12.5", "\"12,5\""),
                        "joins.csv, line 2, column depth_m: \"12,5\", expected a number with a decimal point within [0, 100000]"),
                bad(
                        "not a number",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "NaN,Infinity,0x1p3"),
                        "surveys.csv, line 3, column depth_m: \"NaN\", expected a number within [0, 100000]",
                        "surveys.csv, line 3, column azimuth_deg: \"Infinity\", expected a number",
                        "surveys.csv, line 3, column dip_deg: \"0x1p3\", expected a number within [-90, 90]"),
                bad(
                        "Java suffixes",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30d,92f,-59D"),
                        "surveys.csv, line 3, column depth_m: \"30d\", expected a number without a unit within [0, 100000]",
                        "surveys.csv, line 3, column azimuth_deg: \"92f\", expected a number without a unit",
                        "surveys.csv, line 3, column dip_deg: \"-59D\", expected a number without a unit within [-90, 90]"),
                bad(
                        "too large for a double",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30,1e999,-59"),
                        "surveys.csv, line 3, column azimuth_deg: \"1e999\", expected a number"),
                bad(
                        "digits of another script",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "\u0660,92,\u221259"),
                        "surveys.csv, line 3, column depth_m: \"\u0660\", expected a number within [0, 100000]",
                        "surveys.csv, line 3, column dip_deg: \"\u221259\", expected a number with the minus sign of the keyboard within [-90, 90]"),
                bad(
                        "blank where required",
                        tables -> tables.replace("surveys.csv", "30,92,-59", ", ,-59"),
                        "surveys.csv, line 3, column depth_m: blank, expected a number within [0, 100000]",
                        "surveys.csv, line 3, column azimuth_deg: blank, expected a number"),
                bad(
                        "dip out of range",
                        tables -> tables.replace("surveys.csv", "30,92,-59", "30,92,-95"),
                        "surveys.csv, line 3, column dip_deg: \"-95\", expected a number within [-90, 90]"),
                bad(
                        "negative depth",
                        tables -> tables.replace("surveys.csv", "TN-1,0,", "TN-1,-1,"),
                        "surveys.csv, line 2, column depth_m: \"-1\", expected a number within [0, 100000]"),
                bad(
                        "blank hole",
                        tables -> tables.append("marks.csv", " ,10,20,"),
                        "marks.csv, line 7, column hole_id: blank, expected a name"),
                bad(
                        "control characters in a hole",
                        tables -> tables.append("marks.csv", "\"TN\t1\",10,20,"),
                        "marks.csv, line 7, column hole_id: \"TN\\u00091\", expected a name without control characters"),
                bad(
                        "an unknown hole",
                        tables -> tables.append("marks.csv", "TN-9,10,20,"),
                        "marks.csv, line 7, column hole_id: \"TN-9\", expected a hole of holes.csv"),
                bad(
                        "a doubled hole",
                        tables -> tables.append("holes.csv", "TN-2,1,2,3,,,"),
                        "holes.csv, line 4, column hole_id: \"TN-2\", the hole stands in line 3 already"),
                bad(
                        "a hole without stations",
                        tables -> tables.append("holes.csv", "TN-3,1,2,3,,,"),
                        "holes.csv, line 4, column hole_id: \"TN-3\", the hole has no station, expected one or more in surveys.csv"),
                bad(
                        "two stations at one depth",
                        tables -> tables.append("surveys.csv", "TN-1,30.0,80,-60"),
                        "surveys.csv, line 6, column depth_m: \"30.0\", a station of the hole at this depth stands in line 3 already"),
                bad(
                        "a dogleg of 180 degrees",
                        tables -> tables.append("surveys.csv", "TN-1,90,274,58"),
                        "surveys.csv, line 6, column dip_deg: \"58\", with the station in line 4: the dogleg between 60.00 m -58.0/094.0 (dip/azimuth) and 90.00 m 58.0/274.0 (dip/azimuth) is 180.0 degrees; expected at most 179.9"),
                bad(
                        "a deep first station",
                        tables -> tables.replace("surveys.csv", "TN-2,10,", "TN-2,30.5,"),
                        "surveys.csv, line 5, column depth_m: \"30.5\", the first station of the hole, expected at most 30 m from the collar (survey.extrapolation_limit_m)"),
                bad(
                        "depths beyond the survey",
                        tables -> tables.append("marks.csv", "TN-1,90.01,1,")
                                .append("joins.csv", "TN-1,95,broken")
                                .append("structures.csv", "TN-1,1e5,vein,1,1,,"),
                        "marks.csv, line 7, column depth_m: \"90.01\", beyond the survey, expected at most 90 m",
                        "joins.csv, line 4, column depth_m: \"95\", beyond the survey, expected at most 90 m",
                        "structures.csv, line 5, column depth_m: \"1e5\", beyond the survey, expected at most 90 m"),
                bad(
                        "collar",
                        tables -> tables.replace("holes.csv", "1000,2000,300,4,1,", "1e10,,x,181,-181,0"),
                        "holes.csv, line 2, column easting_m: \"1e10\", expected a number within [-1000000000, 1000000000]",
                        "holes.csv, line 2, column northing_m: blank, expected a number within [-1000000000, 1000000000]",
                        "holes.csv, line 2, column elevation_m: \"x\", expected a number within [-1000000000, 1000000000]",
                        "holes.csv, line 2, column declination_deg: \"181\", expected a number within [-180, 180]",
                        "holes.csv, line 2, column grid_convergence_deg: \"-181\", expected a number within [-180, 180]",
                        "holes.csv, line 2, column core_diameter_mm: \"0\", expected a number within [1, 2000]"),
                bad(
                        "alpha out of range",
                        tables -> tables.replace("structures.csv", "vein,55,", "vein,90.1,"),
                        "structures.csv, line 3, column alpha_deg: \"90.1\", expected a number within [0, 90]"),
                bad(
                        "no kind",
                        tables -> tables.replace("structures.csv", "vein", " "),
                        "structures.csv, line 3, column kind: blank, expected a name"),
                bad(
                        "a control character in a carried column",
                        tables -> tables.replace("structures.csv", "first", "fi\u0000rst"),
                        "structures.csv, line 2, column logger: \"fi\\u0000rst\", expected a text without control characters"),
                bad(
                        "gamma at alpha 90",
                        tables -> tables.replace("structures.csv", "joint,90,,", "joint,90,,10"),
                        "structures.csv, line 4, column gamma_deg: \"10\", expected none at alpha 90, where the ellipse has no long axis to count from; a line is given by axis_angle_deg and delta_deg there"),
                bad(
                        "both offsets",
                        tables -> tables.replace("marks.csv", "10,20,", "10,20,5"),
                        "marks.csv, line 2, column offset_mm: \"5\", offset_deg is given too, expected one of the two"),
                bad(
                        "no offset",
                        tables -> tables.replace("marks.csv", "10,20,", "10,,"),
                        "marks.csv, line 2, column offset_deg: blank, expected a number here or under offset_mm"),
                bad(
                        "an unknown fit",
                        tables -> tables.replace("joins.csv", "locked", "loose"),
                        "joins.csv, line 2, column fit: \"loose\", expected one of broken, doubtful, locked"),
                bad(
                        "no fit",
                        tables -> tables.replace("joins.csv", "locked", ""),
                        "joins.csv, line 2, column fit: blank, expected one of broken, doubtful, locked"),
                bad(
                        "two joins at one depth",
                        tables -> tables.append("joins.csv", "TN-1,25.0,broken"),
                        "joins.csv, line 4, column depth_m: \"25.0\", a join of the hole at this depth stands in line 3 already"),
                bad(
                        "sigmas of marks",
                        tables -> tables.put(
                                "marks.csv",
                                "hole_id,depth_m,offset_deg,sigma_deg,core_diameter_mm,use\nTN-1,10,20,0,-47,maybe\nTN-1,20,20,-1,,\n"),
                        "marks.csv, line 2, column sigma_deg: \"0\", expected a number within [0.000001, 360]",
                        "marks.csv, line 2, column core_diameter_mm: \"-47\", expected a number within [1, 2000]",
                        "marks.csv, line 2, column use: \"maybe\", expected one of no, yes",
                        "marks.csv, line 3, column sigma_deg: \"-1\", expected a number within [0.000001, 360]"),
                bad(
                        "sigmas of structures",
                        tables -> tables.put(
                                "structures.csv",
                                "hole_id,depth_m,kind,alpha_deg,beta_deg,alpha_sigma_deg,beta_sigma_deg\nTN-1,10,vein,20,0,0,x\n"),
                        "structures.csv, line 2, column alpha_sigma_deg: \"0\", expected a number within [0.000001, 360]",
                        "structures.csv, line 2, column beta_sigma_deg: \"x\", expected a number within [0.000001, 360]"),
                bad(
                        "sigmas of stations",
                        tables -> tables.put(
                                "surveys.csv",
                                "hole_id,depth_m,azimuth_deg,dip_deg,azimuth_sigma_deg,dip_sigma_deg\nTN-1,0,20,-60,-1,0\nTN-2,0,20,-60,1,1\n"),
                        "surveys.csv, line 2, column azimuth_sigma_deg: \"-1\", expected a number within [0.000001, 360]",
                        "surveys.csv, line 2, column dip_sigma_deg: \"0\", expected a number within [0.000001, 360]"),
                bad(
                        "marks of the low side in a vertical hole",
                        tables -> tables.replace("surveys.csv", "TN-2,10,270,-70", "TN-2,10,270,-90"),
                        "marks.csv, line 5, column depth_m: \"12\", the hole goes -90.0/270.0 (dip/azimuth) here and has no low side for a mark to stand for, expected mark.side = north",
                        "marks.csv, line 6, column depth_m: \"15\", the hole goes -90.0/270.0 (dip/azimuth) here and has no low side for a mark to stand for, expected mark.side = north"),
                bad(
                        "marks of north in a horizontal hole to the north",
                        tables -> tables.replace("surveys.csv", "TN-2,10,270,-70", "TN-2,10,180,0")
                                .settings("mark.side = north"),
                        "marks.csv, line 5, column depth_m: \"12\", the hole goes 0.0/180.0 (dip/azimuth) here and has no north for a mark to stand for, expected mark.side = low",
                        "marks.csv, line 6, column depth_m: \"15\", the hole goes 0.0/180.0 (dip/azimuth) here and has no north for a mark to stand for, expected mark.side = low"),
                bad(
                        "no declination",
                        tables -> tables.settings("survey.north = magnetic"),
                        "holes.csv, line 3, column grid_convergence_deg: blank, expected a number, because survey.north is magnetic and output.north is grid, and coordinates are on the grid",
                        "holes.csv, line 3, column declination_deg: blank, expected a number, because survey.north is magnetic and output.north is grid, and coordinates are on the grid"),
                bad(
                        "no convergence",
                        tables -> tables.settings("output.north = true"),
                        "holes.csv, line 3, column grid_convergence_deg: blank, expected a number, because survey.north is grid and output.north is true, and coordinates are on the grid"),
                bad(
                        "the lines behind a field of several lines",
                        tables -> tables.replace("structures.csv", "second, later", "second\nand\r\nlater")
                                .replace("structures.csv", "joint,90", "joint,91"),
                        "structures.csv, line 6, column alpha_deg: \"91\", expected a number within [0, 90]"));
    }

    static Stream<Arguments> settings() {
        return Stream.of(
                bad(
                        "an unknown key",
                        tables -> tables.settings("# mine", "", "mark.sides = low"),
                        "job.properties, line 3, key mark.sides: \"low\", the key is not known, expected one of mark.side, mark.sensor_sigma_deg, mark.level_sigma_deg, mark.pencil_sigma_mm, mark.transfer_sigma_mm, mark.bias_sigma_deg, mark.prior_flipped, mark.prior_wrong"),
                bad(
                        "a doubled key",
                        tables -> tables.settings("mark.side = low", "! again", "mark.side: high"),
                        "job.properties, line 3, key mark.side: \"high\", the key stands in line 1 already"),
                bad(
                        "no separator",
                        tables -> tables.settings("mark.side low"),
                        "job.properties, line 1: \"mark.side low\", expected key = value"),
                bad(
                        "a blank value",
                        tables -> tables.settings("mark.side =", "core.diameter_mm:"),
                        "job.properties, line 1, key mark.side: blank, expected one of high, low, north",
                        "job.properties, line 2, key core.diameter_mm: blank, expected a number within [1, 2000]"),
                bad(
                        "unknown words",
                        tables -> tables.settings("survey.north=up", "beta.sense=left", "input.bad_rows=drop"),
                        "job.properties, line 1, key survey.north: \"up\", expected one of grid, magnetic, true",
                        "job.properties, line 2, key beta.sense: \"left\", expected one of anticlockwise, clockwise",
                        "job.properties, line 3, key input.bad_rows: \"drop\", expected one of refuse, set-aside"),
                bad(
                        "an unknown method",
                        tables -> tables.settings("survey.method = straight"),
                        "job.properties, line 1, key survey.method: \"straight\", expected one of average-angle, balanced-tangential, minimum-curvature, radius-of-curvature, tangential"),
                bad(
                        "numbers",
                        tables -> tables.settings(
                                "core.diameter_mm = 0",
                                "hand.neighbours = 1.5",
                                "hand.tolerance_deg = 181",
                                "mark.bias_sigma_deg = -1",
                                "line.sigma_limit_deg=1,5",
                                "join.doubtful_prior_slip=1.01",
                                "uncertainty.samples = 0"),
                        "job.properties, line 1, key core.diameter_mm: \"0\", expected a number within [1, 2000]",
                        "job.properties, line 2, key hand.neighbours: \"1.5\", expected a whole number within [1, 1000]",
                        "job.properties, line 3, key hand.tolerance_deg: \"181\", expected a number within [0.000001, 180]",
                        "job.properties, line 4, key mark.bias_sigma_deg: \"-1\", expected a number within [0, 360]",
                        "job.properties, line 5, key line.sigma_limit_deg: \"1,5\", expected a number with a decimal point within [0.000001, 360]",
                        "job.properties, line 6, key join.doubtful_prior_slip: \"1.01\", expected a number within [0, 1]",
                        "job.properties, line 7, key uncertainty.samples: \"0\", expected a whole number within [1, 1000000000]"),
                bad(
                        "priors past 1",
                        tables -> tables.settings("mark.prior_wrong = 0.6", "mark.prior_flipped = 0.5"),
                        "job.properties, line 2, key mark.prior_flipped: \"0.5\", expected mark.prior_flipped and mark.prior_wrong to sum to at most 1"),
                bad(
                        "no cause of error",
                        tables -> tables.settings(
                                "mark.sensor_sigma_deg=0",
                                "mark.level_sigma_deg=0",
                                "mark.pencil_sigma_mm=0",
                                "mark.transfer_sigma_mm=0"),
                        "job.properties, line 4, key mark.transfer_sigma_mm: \"0\", expected one of mark.sensor_sigma_deg, mark.level_sigma_deg, mark.pencil_sigma_mm, mark.transfer_sigma_mm to be 0.000001 or more"),
                bad(
                        "Latin-1",
                        tables -> tables.put(
                                "job.properties", "mark.side = l\u00f6w\n".getBytes(StandardCharsets.ISO_8859_1)),
                        "job.properties, line 1, key mark.side: \"l\\xF6w\", the text is not UTF-8"),
                bad(
                        "a control character",
                        tables -> tables.settings("mark.side = l\u001b[1mow"),
                        "job.properties, line 1, key mark.side: \"l\\u001B[1mow\", expected one of high, low, north"));
    }

    @ParameterizedTest(name = "{0}")
    @MethodSource({"files", "rows", "settings"})
    void isRefused(String name, Consumer<Tables> change, List<String> lines) {
        Tables tables = Tables.sound(folder);
        change.accept(tables);
        assertEquals(
                lines,
                tables.refusal().stream()
                        .map(line -> line.replace(folder.toString(), "FOLDER"))
                        .toList());
    }
}
