package io.github.kernlot.orientation.bulk;

import static org.junit.jupiter.api.Assertions.assertArrayEquals;
import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.BetaConvention;
import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.GammaConvention;
import io.github.kernlot.orientation.HoleDirection;
import java.lang.management.ManagementFactory;
import java.util.Arrays;
import java.util.List;
import java.util.stream.IntStream;
import org.hipparchus.geometry.euclidean.threed.Rotation;
import org.hipparchus.geometry.euclidean.threed.RotationConvention;
import org.hipparchus.geometry.euclidean.threed.Vector3D;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class FrameColumnsTest {

    private static final double NAN = Double.NaN;
    private static final FrameColumns ONE = FrameColumns.of(CoreFrame.at(HoleDirection.ofDip(-60, 90), 25));

    /** Another route: core in a vertical hole turned into place by rotations of a general-purpose library (Hipparchus 4.0.3). */
    @Test
    void planesAreWhereRotationsTakeThem() {
        Rows rows = Rows.random(1, 5000);
        Answer answer = new Answer(rows.length);
        FrameColumns frames = FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle);
        frames.planesToGeographic(rows.first, rows.second, 0, rows.length, answer.first, answer.second, answer.status);
        int compared = 0;
        for (int i = 0; i < rows.length; i++) {
            if (RowStatus.isRefused(answer.status[i]) || Math.abs(rows.lineAngle[i]) > 360) {
                continue;
            }
            // low side to the south; a plane's normal leans to the wall opposite beta
            double clockwise = Math.toRadians(rows.second[i] + rows.lineAngle[i]);
            double across = Math.cos(Math.toRadians(rows.first[i]));
            Vector3D standing = new Vector3D(
                    across * Math.cos(clockwise),
                    across * Math.sin(clockwise),
                    Math.sin(Math.toRadians(rows.first[i])));
            Vector3D normal = about(Vector3D.PLUS_K, rows.azimuth[i])
                    .applyTo(about(Vector3D.PLUS_J, rows.inclination[i]))
                    .applyTo(standing);
            double dip = Math.toRadians(answer.first[i]);
            double direction = Math.toRadians(answer.second[i]);
            Vector3D found = new Vector3D(
                    -Math.sin(dip) * Math.cos(direction), -Math.sin(dip) * Math.sin(direction), Math.cos(dip));
            assertEquals(0, Math.toDegrees(normal.crossProduct(found).getNorm()), 2e-12, "row " + i);
            compared++;
        }
        assertTrue(compared > 4000);
    }

    private static Rotation about(Vector3D axis, double degrees) {
        return new Rotation(axis, Math.toRadians(degrees), RotationConvention.VECTOR_OPERATOR);
    }

    @ParameterizedTest
    @CsvSource({
        "NaN, 90, 0, 40, 200, INCLINATION",
        "-1, 90, 0, 40, 200, INCLINATION",
        "180.1, NaN, 0, 40, 200, INCLINATION",
        "Infinity, 90, 0, 40, 200, INCLINATION",
        "30, 361, 0, 40, 200, AZIMUTH",
        "30, NaN, NaN, NaN, NaN, AZIMUTH",
        "30, 90, NaN, 40, 200, LINE_ANGLE",
        "30, 90, -Infinity, 40, 200, LINE_ANGLE",
        "0, 90, 0, 40, 200, NO_LOW_SIDE",
        "180, 90, 0, 40, 200, NO_LOW_SIDE",
        "30, 90, 0, 90.001, 200, FIRST_ANGLE",
        "30, 90, 0, NaN, NaN, FIRST_ANGLE",
        "30, 90, 0, 40, -1e-300, SECOND_ANGLE",
        "30, 90, 0, 40, 1e300, SECOND_ANGLE",
        "30, 90, 0, 40, NaN, NOT_ORIENTED"
    })
    void aBadRowIsToldAndTheOthersGoOn(
            double inclination, double azimuth, double lineAngle, double alpha, double beta, String refusal) {
        double[][] columns = {
            {30, inclination, 30}, {90, azimuth, 90}, {25, lineAngle, 25}, {40, alpha, 40}, {213, beta, 213}
        };
        Answer answer = new Answer(3);
        FrameColumns frames = FrameColumns.ofInclination(columns[0], columns[1], columns[2]);
        int refused =
                frames.planesToGeographic(columns[3], columns[4], 0, 3, answer.first, answer.second, answer.status);
        assertEquals(1, refused);
        assertArrayEquals(new byte[] {0, code(refusal), 0}, answer.status);
        assertTrue(Double.isNaN(answer.first[1]) && Double.isNaN(answer.second[1]));
        assertEquals(answer.first[0], answer.first[2]);
        assertEquals(answer.second[0], answer.second[2]);
        assertTrue(answer.first[0] > 0);
    }

    @Test
    void aDipOutsideMinus90To90IsRefused() {
        double[] dips = {-90.001, -60, 90.001, NAN};
        double[] zeros = new double[4];
        Answer answer = new Answer(4);
        int refused = FrameColumns.ofDip(dips, zeros, zeros)
                .planesToGeographic(
                        new double[] {40, 40, 40, 40}, zeros, 0, 4, answer.first, answer.second, answer.status);
        assertEquals(3, refused);
        byte refusal = RowStatus.INCLINATION_REFUSED;
        assertArrayEquals(new byte[] {refusal, RowStatus.ANSWERED, refusal, refusal}, answer.status);
    }

    private static byte code(String refusal) {
        return switch (refusal) {
            case "INCLINATION" -> RowStatus.INCLINATION_REFUSED;
            case "AZIMUTH" -> RowStatus.AZIMUTH_REFUSED;
            case "LINE_ANGLE" -> RowStatus.LINE_ANGLE_REFUSED;
            case "NO_LOW_SIDE" -> RowStatus.NO_LOW_SIDE;
            case "FIRST_ANGLE" -> RowStatus.FIRST_ANGLE_REFUSED;
            case "SECOND_ANGLE" -> RowStatus.SECOND_ANGLE_REFUSED;
            default -> RowStatus.NOT_ORIENTED;
        };
    }

    @Test
    void gammaNeedsALongAxis() {
        Answer answer = new Answer(3);
        double[] alpha = {40, 90, 40};
        double[] gamma = {30, 30, NAN};
        ONE.linesInPlanesToGeographic(alpha, new double[3], gamma, 0, 3, answer.first, answer.second, answer.status);
        assertArrayEquals(new byte[] {0, RowStatus.NO_LONG_AXIS, RowStatus.GAMMA_REFUSED}, answer.status);
    }

    /** Clockwise looking up-hole, 325 and -35 are one gamma, 35 by the house convention. */
    @Test
    void gammaIsReadByItsConventionAndMayHaveASignThere() {
        GammaConvention upHole = new GammaConvention(
                BetaConvention.Sense.CLOCKWISE, BetaConvention.View.UP_HOLE, GammaConvention.Zero.LONG_AXIS_DOWN_HOLE);
        double[] alpha = {40, 40, 90, 40, 40};
        double[] beta = {120, 120, 120, 120, 120};
        double[] read = {325, -35, 10, -181, NAN};
        Answer answer = new Answer(5);
        int refused = ONE.withGamma(upHole)
                .linesInPlanesToGeographic(alpha, beta, read, 0, 5, answer.first, answer.second, answer.status);
        assertEquals(3, refused);
        assertArrayEquals(
                new byte[] {0, 0, RowStatus.NO_LONG_AXIS, RowStatus.GAMMA_REFUSED, RowStatus.GAMMA_REFUSED},
                answer.status);
        Answer house = new Answer(1);
        ONE.linesInPlanesToGeographic(alpha, beta, new double[] {35}, 0, 1, house.first, house.second, house.status);
        assertEquals(house.first[0], answer.first[0]);
        assertEquals(house.first[0], answer.first[1]);
        assertEquals(house.second[0], answer.second[0]);
        assertEquals(house.second[0], answer.second[1]);
        ONE.linesInPlanesToGeographic(alpha, beta, read, 1, 1, answer.first, answer.second, answer.status);
        assertEquals(RowStatus.GAMMA_REFUSED, answer.status[1]);
    }

    @Test
    void framesPrintWithTheirConventions() {
        assertEquals("one frame for all rows, " + BetaConvention.HOUSE + ", " + GammaConvention.HOUSE, ONE.toString());
        double[] two = {10, 20};
        BetaConvention upHole = BetaConvention.HOUSE.withArrowUpHole();
        GammaConvention gamma = GammaConvention.HOUSE.withArrowUpHole();
        assertEquals(
                "a frame for each of 2 rows, beta read by the row, " + gamma,
                FrameColumns.ofDip(two, two, two)
                        .withGamma(gamma)
                        .withBeta(new BetaConvention[] {upHole, upHole})
                        .toString());
    }

    @Test
    void atAlpha90BetaMayBeBlank() {
        Answer answer = new Answer(2);
        BetaConvention upHole = BetaConvention.HOUSE.withArrowUpHole();
        assertEquals(
                0,
                ONE.withBeta(upHole)
                        .planesToGeographic(
                                new double[] {90, 90},
                                new double[] {NAN, 77},
                                0,
                                2,
                                answer.first,
                                answer.second,
                                answer.status));
        // the plane across a hole that dips 60 to the east falls 30 to the west
        assertEquals(30, answer.first[0], 1e-13);
        assertEquals(270, answer.second[0], 1e-13);
        assertEquals(answer.first[0], answer.first[1], 1e-13);
        assertEquals(answer.second[0], answer.second[1], 1e-12);
    }

    @Test
    void anAngleThatIsChosenIsTold() {
        FrameColumns level = FrameColumns.of(CoreFrame.at(HoleDirection.ofDip(0, 90), 0));
        Answer answer = new Answer(3);
        double[] dips = {90, 90, 0};
        double[] directions = {90, 0, 0};
        level.planesToCore(dips, directions, 0, 3, answer.first, answer.second, answer.status);
        assertArrayEquals(
                new byte[] {RowStatus.SECOND_ANGLE_IDLE, RowStatus.SECOND_ANGLE_TWOFOLD, RowStatus.SECOND_ANGLE_TWOFOLD
                },
                answer.status);
        assertArrayEquals(new double[] {90, 0, 0}, answer.first);
        assertEquals(0, answer.second[0]);
        level.polesToGeographic(
                new double[] {0, 0, 45}, new double[] {0, 90, 30}, 0, 3, answer.first, answer.second, answer.status);
        assertArrayEquals(new byte[] {RowStatus.SECOND_ANGLE_IDLE, RowStatus.SECOND_ANGLE_TWOFOLD, 0}, answer.status);
    }

    @Test
    void rowsOutsideAreLeftAlone() {
        Rows rows = Rows.random(2, 900);
        FrameColumns frames = FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle);
        Answer whole = new Answer(rows.length);
        frames.planesToGeographic(rows.first, rows.second, 0, rows.length, whole.first, whole.second, whole.status);
        for (int[] part : new int[][] {{0, 0}, {900, 0}, {7, 1}, {899, 1}, {3, 256}, {5, 257}, {100, 700}}) {
            Answer answer = new Answer(rows.length);
            frames.planesToGeographic(
                    rows.first, rows.second, part[0], part[1], answer.first, answer.second, answer.status);
            for (int i = 0; i < rows.length; i++) {
                boolean isInside = i >= part[0] && i < part[0] + part[1];
                assertEquals(isInside ? whole.first[i] : -7, answer.first[i]);
                assertEquals(isInside ? whole.second[i] : -7, answer.second[i]);
                assertEquals(isInside ? whole.status[i] : (byte) 99, answer.status[i]);
            }
        }
    }

    @Test
    void anAnswerMayTakeThePlaceOfTheQuestion() {
        Rows rows = Rows.random(3, 700);
        Answer answer = new Answer(rows.length);
        FrameColumns frames = FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle);
        frames.planesToGeographic(rows.first, rows.second, 0, rows.length, answer.first, answer.second, answer.status);
        frames.planesToGeographic(
                rows.first, rows.second, 0, rows.length, rows.second, rows.inclination, answer.status);
        assertArrayEquals(answer.first, rows.second);
        assertArrayEquals(answer.second, rows.inclination);
    }

    @Test
    void columnsThatAreTooShortOrOneArrayAreRefusedBeforeAnythingIsWritten() {
        double[] long3 = {10, 20, 30};
        double[] short2 = {10, 20};
        Answer answer = new Answer(3);
        List<Runnable> calls = List.of(
                () -> ONE.planesToGeographic(short2, long3, 0, 3, answer.first, answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, short2, 0, 3, answer.first, answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, long3, 1, 3, answer.first, answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, long3, -1, 2, answer.first, answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, long3, 0, -1, answer.first, answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, long3, 0, 3, new double[2], answer.second, answer.status),
                () -> ONE.planesToGeographic(long3, long3, 0, 3, answer.first, answer.second, new byte[2]),
                () -> ONE.linesInPlanesToGeographic(
                        long3, long3, short2, 0, 3, answer.first, answer.second, answer.status),
                () -> FrameColumns.ofDip(short2, long3, long3)
                        .planesToCore(long3, long3, 0, 3, answer.first, answer.second, answer.status),
                () -> ONE.withBeta(new BetaConvention[2])
                        .planesToCore(long3, long3, 0, 3, answer.first, answer.second, answer.status));
        for (Runnable call : calls) {
            assertThrows(IndexOutOfBoundsException.class, call::run);
        }
        assertThrows(
                IllegalArgumentException.class,
                () -> ONE.planesToGeographic(long3, long3, 0, 3, answer.first, answer.first, answer.status));
        assertThrows(
                NullPointerException.class,
                () -> ONE.withBeta(new BetaConvention[3])
                        .planesToCore(long3, long3, 0, 3, answer.first, answer.second, answer.status));
        assertArrayEquals(new Answer(3).first, answer.first);
        assertArrayEquals(new Answer(3).status, answer.status);
    }

    @Test
    void manyThreadsMayShareTheFrames() {
        Rows rows = Rows.random(4, 3000);
        FrameColumns frames = FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle);
        Answer alone = new Answer(rows.length);
        frames.planesToGeographic(rows.first, rows.second, 0, rows.length, alone.first, alone.second, alone.status);
        boolean isAlike = IntStream.range(0, 200).parallel().allMatch(i -> {
            Answer answer = new Answer(rows.length);
            frames.planesToGeographic(
                    rows.first, rows.second, 0, rows.length, answer.first, answer.second, answer.status);
            return Arrays.equals(alone.first, answer.first) && Arrays.equals(alone.second, answer.second);
        });
        assertTrue(isAlike);
    }

    @Test
    void aRowTakesNoMemory() {
        Rows rows = Rows.random(4, 100_000);
        FrameColumns frames = FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle);
        Answer answer = new Answer(rows.length);
        var threads = (com.sun.management.ThreadMXBean) ManagementFactory.getThreadMXBean();
        long least = Long.MAX_VALUE;
        for (int i = 0; i < 5; i++) {
            long before = threads.getCurrentThreadAllocatedBytes();
            frames.planesToGeographic(
                    rows.first, rows.second, 0, rows.length, answer.first, answer.second, answer.status);
            least = Math.min(least, threads.getCurrentThreadAllocatedBytes() - before);
        }
        assertTrue(least < 1000, least + " bytes for 100 000 rows");
    }

    @Test
    void everyStatusHasItsWords() {
        for (byte status = RowStatus.NO_LONG_AXIS; status <= RowStatus.SECOND_ANGLE_TWOFOLD; status++) {
            assertEquals(status >= 0, RowStatus.text(status).startsWith("answered"));
            assertEquals(status < 0, RowStatus.isRefused(status));
        }
        assertThrows(IllegalArgumentException.class, () -> RowStatus.text((byte) 3));
    }

    /** Columns that show where they were written. */
    private static final class Answer {
        final double[] first;
        final double[] second;
        final byte[] status;

        Answer(int length) {
            first = new double[length];
            second = new double[length];
            status = new byte[length];
            Arrays.fill(first, -7);
            Arrays.fill(second, -7);
            Arrays.fill(status, (byte) 99);
        }
    }
}
