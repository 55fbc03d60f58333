package io.github.kernlot.survey.table;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import de.siegmar.fastcsv.reader.CsvReader;
import de.siegmar.fastcsv.reader.NamedCsvRecord;
import io.github.kernlot.orientation.DirectedLine;
import java.io.IOException;
import java.nio.file.Path;
import java.util.List;
import java.util.Random;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.api.io.TempDir;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Lines through the core and senses, from structures.csv to oriented.csv. */
class CoreLineColumnsTest {

    private static final String HEADER =
            "hole_id,depth_m,kind,alpha_deg,beta_deg,gamma_deg,axis_angle_deg,delta_deg,sense\n";
    /** Tables have four decimals, and the worked examples three. */
    private static final double WRITTEN = 2e-4;

    private static final double WORKED = 1.2e-3;

    @TempDir
    Path folder;

    /** A straight hole whose line stands on the low side; in a vertical one, on what becomes its low side as it steepens. */
    private Tables straight(double azimuth, double plunge, String structures, String... settings) {
        boolean isVertical = Math.abs(plunge) == 90;
        double toNorth = plunge > 0 ? 180 - azimuth : azimuth;
        double offset = isVertical ? (toNorth + 360) % 360 : 0;
        Tables tables = Tables.sound(folder.resolve("in"));
        tables.put("holes.csv", """
                hole_id,easting_m,northing_m,elevation_m,declination_deg,grid_convergence_deg
                S-1,1000,2000,300,4,1
                """);
        tables.put(
                "surveys.csv",
                "hole_id,depth_m,azimuth_deg,dip_deg\nS-1,0," + azimuth + "," + -plunge + "\nS-1,100," + azimuth + ","
                        + -plunge + "\n");
        tables.put(
                "marks.csv",
                "hole_id,depth_m,offset_deg\nS-1,40," + offset + "\nS-1,50," + offset + "\nS-1,60," + offset + "\n");
        tables.put("joins.csv", "hole_id,depth_m,fit\n");
        tables.put("structures.csv", HEADER + structures);
        String[] all = new String[settings.length + 1];
        System.arraycopy(settings, 0, all, 0, settings.length);
        all[settings.length] = isVertical ? "mark.side = north" : "mark.side = low";
        return tables.settings(all);
    }

    private List<NamedCsvRecord> oriented(Tables tables) throws IOException {
        Job job = tables.read();
        Path out = folder.resolve("out");
        ResultTables.of(job, job.orient()).write(out);
        try (CsvReader<NamedCsvRecord> reader = CsvReader.builder().ofNamedCsvRecord(out.resolve("oriented.csv"))) {
            return reader.stream().toList();
        }
    }

    private static DirectedLine arrow(NamedCsvRecord row) {
        return DirectedLine.ofPlungeAndTrend(
                Double.parseDouble(row.getField("arrow_plunge_deg")),
                Double.parseDouble(row.getField("arrow_trend_deg")));
    }

    private static DirectedLine line(NamedCsvRecord row) {
        return DirectedLine.ofPlungeAndTrend(
                Double.parseDouble(row.getField("plunge_deg")), Double.parseDouble(row.getField("trend_deg")));
    }

    /**
     * Lines in planes and the same lines through the core by themselves: constructed examples with closed forms and by vectors, not
     * published. Which end is the down-hole one was told by hand from the direction of the hole.
     */
    @ParameterizedTest
    @CsvSource({
        "90, 60, 40, 120, 0, 40, 120, 30.18, 49.912",
        "90, 60, 40, 120, 35, 51.134, 167.448, 9.406, 80.124",
        "90, 60, 40, 120, -35, 51.134, 72.552, 41.313, 8.542",
        "270, -30, 55, 200, 70, 78.687, 273.398, -2.737, 348.511",
        "45, 90, 30, 60, 20, 35.531, 96.052, 54.469, 321.052"
    })
    void aLineComesOutAlikeByGammaAndByItself(
            double azimuth,
            double holePlunge,
            double alpha,
            double beta,
            double gamma,
            double axisAngle,
            double delta,
            double plunge,
            double trend)
            throws IOException {
        String plane = alpha + "," + beta;
        String itself = axisAngle + "," + delta;
        List<NamedCsvRecord> rows = oriented(straight(
                azimuth,
                holePlunge,
                "S-1,50,vein," + plane + "," + gamma + ",,,down-hole\n"
                        + "S-1,50,vein," + plane + ",," + itself + ",down-hole\n"
                        + "S-1,50,bed,90,,," + itself + ",Down-Hole\n"
                        + "S-1,50,line,,,," + itself + ",down-hole\n"
                        + "S-1,50,vein," + plane + "," + gamma + ",,,up-hole\n"
                        + "S-1,50,line,,,," + itself + ",up-hole\n"
                        + "S-1,50,line,,,," + itself + ",\n"));
        DirectedLine downHole = DirectedLine.ofPlungeAndTrend(plunge, trend);
        for (int i = 0; i < rows.size(); i++) {
            NamedCsvRecord row = rows.get(i);
            assertEquals("oriented", row.getField("status"), row.toString());
            assertEquals("", row.getField("note"));
            DirectedLine low = plunge < 0 ? downHole.reversed() : downHole;
            assertEquals(0, line(row).angleTo(low), WORKED, row.toString());
            if (i < 6) {
                assertEquals(0, arrow(row).angleTo(i < 4 ? downHole : downHole.reversed()), WORKED, row.toString());
            } else {
                assertEquals("", row.getField("arrow_plunge_deg") + row.getField("arrow_trend_deg"));
            }
        }
        assertEquals("", rows.get(3).getField("dip_deg"));
        assertEquals("", rows.get(3).getField("alpha_deg"));
        assertEquals(delta, Double.parseDouble(rows.get(3).getField("delta_deg")), 5e-5);
        assertEquals("up-hole", rows.get(5).getField("sense"));
        assertEquals(90 - Math.abs(holePlunge), Double.parseDouble(rows.get(2).getField("dip_deg")), 5e-5);
    }

    /** Poles of constructed examples, not published; which side is the down-hole one was told by hand from the direction of the hole. */
    @ParameterizedTest
    @CsvSource({
        "90, 60, 45, 0, 15, 90",
        "90, 60, 40, 120, 48.433, 180.891",
        "200, -35, 50, 140, -2.065, 224.421",
        "45, 90, 35, 250, 35, 295",
        "33, -90, 35, 250, -35, 323",
        "270, 60, 90, , 60, 270"
    })
    void aBedFacesTheSideThatItsSenseNames(
            double azimuth, double holePlunge, double alpha, String beta, double plunge, double trend)
            throws IOException {
        String plane = alpha + "," + (beta == null ? "" : beta);
        List<NamedCsvRecord> rows = oriented(straight(
                azimuth, holePlunge, "S-1,50,bed," + plane + ",,,,down-hole\nS-1,50,bed," + plane + ",,,,up-hole\n"));
        DirectedLine downHole = DirectedLine.ofPlungeAndTrend(plunge, trend);
        assertEquals(0, arrow(rows.get(0)).angleTo(downHole), WORKED);
        assertEquals(0, arrow(rows.get(1)).angleTo(downHole.reversed()), WORKED);
        assertEquals("", rows.get(0).getField("plunge_deg"));
    }

    /**
     * The arrow against a rotation of the low side about the core axis by Hipparchus, for every way of counting. Written anticlockwise,
     * delta is -delta; along an arrow up-hole one looks the other way and counts to the other end, 180 - delta; the apex of beta does
     * not change it.
     */
    @ParameterizedTest
    @CsvSource({
        "clockwise, down-hole, down-hole, 1, 0",
        "clockwise, up-hole, down-hole, 1, 0",
        "anticlockwise, down-hole, down-hole, -1, 0",
        "anticlockwise, up-hole, down-hole, -1, 0",
        "clockwise, down-hole, up-hole, -1, 180",
        "clockwise, up-hole, up-hole, -1, 180",
        "anticlockwise, down-hole, up-hole, 1, 180",
        "anticlockwise, up-hole, up-hole, 1, 180"
    })
    void deltaIsCountedAsBetaIsWithoutTheApex(String counted, String apex, String lineArrow, double sign, double turned)
            throws IOException {
        Random random = new Random(7);
        for (int i = 0; i < 6; i++) {
            double azimuth = 360 * random.nextDouble();
            double plunge = 170 * random.nextDouble() - 85;
            double axisAngle = 89 * random.nextDouble();
            double delta = 360 * random.nextDouble();
            double written = sign * delta + turned;
            Tables tables = straight(
                            azimuth,
                            plunge,
                            "S-1,50,bed,90,,," + axisAngle + "," + written + ",down-hole\n",
                            "beta.sense = " + counted,
                            "beta.apex = " + apex)
                    .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,0,100," + lineArrow + "\n");
            Vector3D axis = vector(DirectedLine.ofPlungeAndTrend(plunge, azimuth));
            Vector3D low =
                    Vector3D.PLUS_K.subtract(axis.scalarMultiply(axis.getZ())).normalize();
            Vector3D wall = new Rotation(axis, Math.toRadians(delta), RotationConvention.VECTOR_OPERATOR).applyTo(low);
            Vector3D line =
                    new Vector3D(Math.cos(Math.toRadians(axisAngle)), axis, Math.sin(Math.toRadians(axisAngle)), wall);
            double apart = Math.toDegrees(
                    Vector3D.angle(line, vector(arrow(oriented(tables).get(0)))));
            assertEquals(0, apart, WRITTEN, azimuth + " " + plunge + " " + axisAngle + " " + delta);
        }
    }

    /** Along an arrow up-hole gamma runs the other way, 360 - gamma; a sense names the end of the hole nevertheless. */
    @Test
    void aSenseNamesAnEndOfTheHoleUnderAnArrowUpHoleToo() throws IOException {
        DirectedLine read = arrow(oriented(straight(90, 60, "S-1,50,vein,40,120,35,,,down-hole\n"))
                .get(0));
        NamedCsvRecord turned = oriented(straight(90, 60, "S-1,50,vein,40,60,325,,,down-hole\n")
                        .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,0,100,up-hole\n"))
                .get(0);
        assertEquals(0, arrow(turned).angleTo(read), WRITTEN);
    }

    /** Counted anticlockwise gamma is 360 - gamma, along an arrow up-hole once more; beta.sense does not touch it. */
    @ParameterizedTest
    @CsvSource({"down-hole, 325", "up-hole, 35"})
    void gammaHasASenseOfItsOwn(String lineArrow, String gamma) throws IOException {
        NamedCsvRecord read = oriented(straight(90, 60, "S-1,50,vein,40,120,35,,,down-hole\n"))
                .get(0);
        String beta = lineArrow.equals("down-hole") ? "240" : "300";
        NamedCsvRecord counted = oriented(straight(
                                90,
                                60,
                                "S-1,50,vein,40," + beta + "," + gamma + ",,,down-hole\n",
                                "beta.sense = anticlockwise",
                                "gamma.sense = anticlockwise")
                        .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,0,100," + lineArrow + "\n"))
                .get(0);
        assertEquals(0, arrow(counted).angleTo(arrow(read)), WRITTEN);
        assertEquals(read.getField("plunge_deg"), counted.getField("plunge_deg"));
    }

    /** The house's gamma 35 less a quarter, a half and three quarters of a turn; along an arrow up-hole the ends change places too. */
    @ParameterizedTest
    @CsvSource({
        "down-hole, short-axis-clockwise, 305",
        "down-hole, long-axis-up-hole, 215",
        "down-hole, short-axis-anticlockwise, 125",
        "up-hole, long-axis-down-hole, 145",
        "up-hole, short-axis-clockwise, 235",
        "up-hole, short-axis-anticlockwise, 55"
    })
    void gammaIsCountedFromItsZero(String lineArrow, String zero, String gamma) throws IOException {
        DirectedLine read = arrow(oriented(straight(90, 60, "S-1,50,vein,40,120,35,,,down-hole\n"))
                .get(0));
        String beta = lineArrow.equals("down-hole") ? "120" : "60";
        NamedCsvRecord counted = oriented(straight(
                                90,
                                60,
                                "S-1,50,vein,40," + beta + "," + gamma + ",,,down-hole\n",
                                "gamma.zero = " + zero)
                        .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,0,100," + lineArrow + "\n"))
                .get(0);
        assertEquals(0, arrow(counted).angleTo(read), WRITTEN);
    }

    @Test
    void fromTheShortAxisGammaZeroLiesAcrossTheCore() {
        assertEquals(
                List.of(
                        "structures.csv, line 2, column sense: \"up-hole\", expected none of a line at right angles to the core"
                                + " axis, which points neither down-hole nor up-hole"),
                straight(
                                90,
                                60,
                                "S-1,50,vein,40,120,0,,,up-hole\nS-1,51,vein,40,120,90,,,up-hole\n",
                                "gamma.zero = short-axis-clockwise")
                        .refusal());
    }

    private static Vector3D vector(DirectedLine line) {
        return new Vector3D(line.north(), line.east(), line.down());
    }

    /** Declination 4 and convergence 1: grid azimuths are 1 less than true ones, and magnetic ones 4 less than true (by definition). */
    @ParameterizedTest
    @CsvSource({"grid, 0", "true, 1", "magnetic, -3"})
    void arrowsTurnWithTheNorthOfTheResults(String north, double added) throws IOException {
        NamedCsvRecord row = oriented(
                        straight(270, -30, "S-1,50,line,,,,78.687,273.398,down-hole\n", "output.north = " + north))
                .get(0);
        assertEquals(348.511 + added, Double.parseDouble(row.getField("arrow_trend_deg")), WORKED);
        assertEquals(168.511 + added, Double.parseDouble(row.getField("trend_deg")), WORKED);
        assertEquals(-2.737, Double.parseDouble(row.getField("arrow_plunge_deg")), WORKED);
    }

    @Test
    void anUnorientedLineKeepsWhatWasRead() throws IOException {
        NamedCsvRecord row = oriented(straight(90, 60, "S-1,50,line,,,,51.134,167.448,down-hole\n")
                        .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,60,100,down-hole\n"))
                .get(0);
        assertEquals("unoriented", row.getField("status"));
        assertEquals("no line was drawn here", row.getField("note"));
        assertEquals("51.134", row.getField("axis_angle_deg").replaceAll("0+$", ""));
        assertEquals("167.448", row.getField("delta_deg").replaceAll("0+$", ""));
        assertEquals("down-hole", row.getField("sense"));
        assertEquals(
                "",
                row.getField("plunge_deg")
                        + row.getField("trend_deg")
                        + row.getField("arrow_plunge_deg")
                        + row.getField("arrow_trend_deg"));
    }

    @Test
    void aPartThatIsOrientedStandsBesideOneThatIsNot() throws IOException {
        List<NamedCsvRecord> rows = oriented(straight(
                        90,
                        60,
                        "S-1,50,vein,40,,,51.134,167.448,\nS-1,30,bed,90,,,51.134,167.448,up-hole\n"
                                + "S-1,30,line,,,,0,,down-hole\n")
                .put("lines.csv", "hole_id,from_m,to_m,arrow\nS-1,40,100,down-hole\n"));
        assertEquals("unoriented", rows.get(0).getField("status"));
        assertEquals(
                "no beta was measured; the line through the core alone is oriented",
                rows.get(0).getField("note"));
        assertEquals(9.406, Double.parseDouble(rows.get(0).getField("plunge_deg")), WORKED);
        assertEquals("oriented", rows.get(1).getField("status"));
        assertEquals(
                "the line through the core is unoriented: no line was drawn here",
                rows.get(1).getField("note"));
        assertEquals("", rows.get(1).getField("arrow_trend_deg"));
        assertEquals("oriented", rows.get(2).getField("status"));
        assertEquals(60, Double.parseDouble(rows.get(2).getField("arrow_plunge_deg")), 5e-5);
        assertEquals(90, Double.parseDouble(rows.get(2).getField("arrow_trend_deg")), 5e-5);
    }

    @Test
    void deltaOutsideACircleIsTakenModulo360AndTold() {
        Job job = straight(90, 60, "S-1,50,line,,,,51.134,-192.552,\nS-1,50,line,,,,51.134,-999,\n")
                .read();
        String told = job.findings().toString();
        assertTrue(told.contains("structures.csv, line 2: delta_deg -192.552 is taken as 167.448 degrees"), told);
        assertTrue(told.contains("structures.csv, line 3: delta_deg -999 is taken as 81 degrees"), told);
    }

    @ParameterizedTest
    @CsvSource(delimiter = '|', textBlock = """
                    40,120,35,50,10, | axis_angle_deg: "50", gamma_deg is given too, expected one line of a structure
                    40,120,35,,10, | delta_deg: "10", gamma_deg is given too, expected one line of a structure
                    40,120,,,10, | axis_angle_deg: blank, expected a number within [0, 90] beside delta_deg
                    40,120,,50,, | delta_deg: blank, expected a number beside axis_angle_deg above 0
                    40,120,,91,10, | axis_angle_deg: "91", expected a number within [0, 90]
                    40,120,,x,10, | axis_angle_deg: "x", expected a number within [0, 90]
                    40,120,,50,x, | delta_deg: "x", expected a number
                    ,120,,50,10, | alpha_deg: blank, expected a number within [0, 90]
                    ,,,,, | alpha_deg: blank, expected a number within [0, 90]
                    40,120,,,,left | sense: "left", expected one of down-hole, up-hole
                    40,120,,90,10,up-hole | sense: "up-hole", expected none of a line at right angles to the core axis, which points neither down-hole nor up-hole
                    40,120,90,,,up-hole | sense: "up-hole", expected none of a line at right angles to the core axis, which points neither down-hole nor up-hole
                    40,120,-90,,,up-hole | sense: "up-hole", expected none of a line at right angles to the core axis, which points neither down-hole nor up-hole
                    0,120,,,,up-hole | sense: "up-hole", expected none of a plane at alpha 0, which faces neither down-hole nor up-hole
                    """)
    void aBadRowIsToldWithItsPlace(String fields, String fault) {
        assertEquals(
                List.of("structures.csv, line 2, column " + fault),
                straight(90, 60, "S-1,50,vein," + fields + "\n").refusal());
    }
}
