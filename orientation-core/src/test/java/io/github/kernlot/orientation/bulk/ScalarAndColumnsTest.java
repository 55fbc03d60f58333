package io.github.kernlot.orientation.bulk;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreFrame;
import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.WallReference;
import java.util.List;
import java.util.function.IntFunction;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.constraints.IntRange;
import org.junit.jupiter.api.Test;

/** Columns answer to the last bit what the scalar methods answer, and refuse what they refuse. */
class ScalarAndColumnsTest {

    private interface Columns {
        int run(FrameColumns frames, Rows rows, int offset, int length, double[] first, double[] second, byte[] status);
    }

    private record Pair(String name, Columns columns, Rows.Scalar scalar) {}

    private static final List<Pair> PAIRS = List.of(
            new Pair(
                    "planes",
                    (f, r, o, n, a, b, s) -> f.planesToGeographic(r.first, r.second, o, n, a, b, s),
                    Rows::plane),
            new Pair(
                    "poles",
                    (f, r, o, n, a, b, s) -> f.polesToGeographic(r.first, r.second, o, n, a, b, s),
                    Rows::pole),
            new Pair(
                    "lines in planes",
                    (f, r, o, n, a, b, s) -> f.linesInPlanesToGeographic(r.first, r.second, r.third, o, n, a, b, s),
                    Rows::lineInPlane),
            new Pair(
                    "lines in planes by conventions",
                    (f, r, o, n, a, b, s) -> f.withGamma(Rows.GAMMA)
                            .withBeta(r.convention)
                            .linesInPlanesToGeographic(r.first, r.second, r.third, o, n, a, b, s),
                    Rows::lineInPlaneRead),
            new Pair(
                    "lines",
                    (f, r, o, n, a, b, s) -> f.linesToGeographic(r.first, r.second, o, n, a, b, s),
                    Rows::line),
            new Pair(
                    "planes on core",
                    (f, r, o, n, a, b, s) -> f.planesToCore(r.first, r.second, o, n, a, b, s),
                    Rows::planeOnCore),
            new Pair(
                    "lines on core",
                    (f, r, o, n, a, b, s) -> f.linesToCore(r.first, r.second, o, n, a, b, s),
                    Rows::lineOnCore),
            new Pair(
                    "planes by a convention a row",
                    (f, r, o, n, a, b, s) ->
                            f.withBeta(r.convention).planesToGeographic(r.first, r.second, o, n, a, b, s),
                    Rows::planeRead),
            new Pair(
                    "planes on core by a convention a row",
                    (f, r, o, n, a, b, s) -> f.withBeta(r.convention).planesToCore(r.first, r.second, o, n, a, b, s),
                    Rows::planeOnCoreRead));

    @Test
    void atEveryEdgeWithAFrameForEachRow() {
        Rows rows = Rows.edges();
        for (Pair pair : PAIRS) {
            assertAlike(
                    pair,
                    FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle),
                    rows,
                    rows::frame);
        }
    }

    @Property(tries = 100)
    void withAFrameForEachRow(@ForAll long seed, @ForAll @IntRange(min = 1, max = 1500) int length) {
        Rows rows = Rows.random(seed, length);
        for (Pair pair : PAIRS) {
            assertAlike(
                    pair,
                    FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle),
                    rows,
                    rows::frame);
        }
    }

    @Property(tries = 100)
    void withOneFrameOfAnyKind(@ForAll long seed, @ForAll @IntRange(min = 1, max = 600) int length) {
        Rows rows = Rows.random(seed, length);
        HoleDirection direction = HoleDirection.ofInclination(rows.inclination[0], rows.azimuth[0]);
        for (CoreFrame frame : List.of(
                CoreFrame.carriedTo(direction),
                CoreFrame.at(HoleDirection.ofInclination(0, 0), WallReference.north(), rows.azimuth[0]),
                CoreFrame.at(HoleDirection.ofInclination(30, 40), rows.third[0]))) {
            for (Pair pair : PAIRS) {
                assertAlike(pair, FrameColumns.of(frame), rows, i -> frame);
            }
        }
    }

    @Test
    void holesByTheirDip() {
        Rows rows = Rows.random(5, 2000);
        double[] dip = new double[rows.length];
        for (int i = 0; i < rows.length; i++) {
            dip[i] = rows.first[(i + 1) % rows.length] * (i % 2 == 0 ? 1 : -1);
        }
        assertAlike(
                PAIRS.get(0),
                FrameColumns.ofDip(dip, rows.azimuth, rows.lineAngle),
                rows,
                i -> CoreFrame.at(HoleDirection.ofDip(dip[i], rows.azimuth[i]), rows.lineAngle[i]));
    }

    @Test
    void aMillionRows() {
        Rows rows = Rows.random(6, 1_000_000);
        assertAlike(
                PAIRS.get(0),
                FrameColumns.ofInclination(rows.inclination, rows.azimuth, rows.lineAngle),
                rows,
                rows::frame);
    }

    private static void assertAlike(Pair pair, FrameColumns frames, Rows rows, IntFunction<CoreFrame> frame) {
        double[] first = new double[rows.length];
        double[] second = new double[rows.length];
        byte[] status = new byte[rows.length];
        int refused = pair.columns.run(frames, rows, 0, rows.length, first, second, status);
        int counted = 0;
        for (int i = 0; i < rows.length; i++) {
            double[] expected;
            try {
                expected = pair.scalar.of(frame.apply(i), rows, i);
            } catch (IllegalArgumentException refusal) {
                expected = new double[] {Double.NaN, Double.NaN};
            }
            boolean isRefused = Double.isNaN(expected[0]);
            boolean isAlike = isSame(expected[0], first[i])
                    && isSame(expected[1], second[i])
                    && isRefused == RowStatus.isRefused(status[i]);
            int row = i;
            double[] wanted = expected;
            assertTrue(
                    isAlike,
                    () -> pair.name + " of " + rows.inclination[row] + " " + rows.azimuth[row] + " "
                            + rows.lineAngle[row] + " " + rows.first[row] + " " + rows.second[row] + " "
                            + rows.third[row] + ": " + first[row] + "/" + second[row] + " " + status[row] + ", scalar "
                            + wanted[0] + "/" + wanted[1]);
            counted += isRefused ? 1 : 0;
        }
        assertEquals(counted, refused);
    }

    private static boolean isSame(double one, double other) {
        return Double.doubleToLongBits(one) == Double.doubleToLongBits(other);
    }
}
