package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.List;
import java.util.stream.IntStream;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class WallCurveTest {

    private static final CoreDiameter CORE = CoreDiameter.N;

    @Test
    void theCurveIsTheSinusoid() {
        CorePlane plane = CorePlane.of(25, 310);
        WallCurve curve = WallCurve.crossing(plane, CORE, 30);
        for (double angle = -360; angle <= 720; angle += 17) {
            assertEquals(
                    Traces.depth(plane, CORE, 30, angle), curve.depthAt(angle).orElseThrow(), 1e-12);
        }
        WallPoint down = curve.downHoleEnd().orElseThrow();
        WallPoint up = curve.upHoleEnd().orElseThrow();
        assertEquals(310, down.angle(), 1e-9);
        assertEquals(130, up.angle(), 1e-9);
        assertEquals(TraceHeight.ofAlpha(25, CORE).millimetres(), (down.depth() - up.depth()) * 1000, 1e-9);
        assertThrows(IllegalArgumentException.class, () -> curve.depthAt(Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WallCurve.crossing(CorePlane.of(0, 3), CORE, 5));
    }

    @Test
    void aCircleHasNoEnds() {
        WallCurve circle = WallCurve.crossing(CorePlane.perpendicular(), CORE, 5);
        assertTrue(circle.downHoleEnd().isEmpty() && circle.upHoleEnd().isEmpty());
        assertEquals(5, circle.depthAt(77).orElseThrow());
    }

    /** The trace at alpha 20 is 131 mm high. */
    @ParameterizedTest
    @CsvSource({
        "20, 9, 11, 1",
        "20, 10, 11, 1",
        "20, 9, 10, 1",
        "20, 9.98, 10.02, 2",
        "20, 10.1, 11, 0",
        "20, 9, 9.9, 0",
        "90, 9, 11, 1",
        "90, 10, 11, 1",
        "90, 10.1, 11, 0"
    })
    void thePieceCutsTheTrace(double alpha, double from, double to, int lines) {
        CorePlane plane = CorePlane.of(alpha, 50);
        List<List<WallPoint>> found = WallCurve.crossing(plane, CORE, 10).polylines(from, to, 5);
        assertEquals(lines, found.size());
        double covered = 0;
        for (List<WallPoint> line : found) {
            double length = 0;
            for (WallPoint point : line) {
                assertEquals(Traces.depth(plane, CORE, 10, point.angle()), point.depth(), 1e-9);
                assertTrue(point.depth() >= from - 1e-9 && point.depth() <= to + 1e-9);
            }
            for (int i = 1; i < line.size(); i++) {
                double step = line.get(i).angle() - line.get(i - 1).angle();
                assertTrue(Math.abs(Math.IEEEremainder(step, 360)) <= 5 + 1e-9);
                length += Math.abs(Math.IEEEremainder(step, 360));
            }
            assertTrue(line.size() <= length / 5 + 2);
            WallPoint last = line.get(line.size() - 1);
            if (length < 359) {
                assertTrue(isEndOfPiece(line.get(0), from, to) && isEndOfPiece(last, from, to));
            } else {
                assertEquals(line.get(0), last);
            }
            covered += length;
        }
        // another way: how much of the wall has the trace on the piece, in steps of a hundredth of a degree
        long inside = IntStream.range(0, 36_000)
                .mapToDouble(i -> Traces.depth(plane, CORE, 10, i / 100.0))
                .filter(depth -> depth >= from && depth <= to)
                .count();
        assertEquals(inside / 100.0, covered, 0.03);
    }

    private static boolean isEndOfPiece(WallPoint point, double from, double to) {
        return point.depth() == from || point.depth() == to;
    }

    @Test
    void aTracePrintsWhereItCrossesTheAxisOrPassesIt() {
        assertEquals(
                "alpha 25.0, beta 310.0 at 30.1234 m",
                WallCurve.crossing(CorePlane.of(25, 310), CORE, 30.1234).toString());
        assertEquals(
                "alpha 0.0, beta 030.0, 11.9 mm from the axis",
                WallCurve.alongCore(30, 11.9, CORE).toString());
        assertEquals(
                "0.50 mm along and 1.00 degrees round the core",
                WallSigmas.of(0.5, 1).toString());
    }

    @Test
    void alongTheCoreItIsTwoStraightLinesOneOrNone() {
        // 11.9 mm of a radius of 23.8: cos 60
        List<List<WallPoint>> lines = WallCurve.alongCore(30, 11.9, CORE).polylines(1, 2, 5);
        assertEquals(2, lines.size());
        assertEquals(1, lines.get(0).get(0).depth());
        assertEquals(2, lines.get(0).get(1).depth());
        List<Double> angles =
                lines.stream().map(line -> line.get(0).angle()).sorted().toList();
        assertEquals(90, angles.get(0), 1e-9);
        assertEquals(330, angles.get(1), 1e-9);
        assertEquals(1, WallCurve.alongCore(30, 23.8, CORE).polylines(1, 2, 5).size());
        assertEquals(0, WallCurve.alongCore(30, 24, CORE).polylines(1, 2, 5).size());
        WallCurve curve = WallCurve.alongCore(30, 0, CORE);
        assertTrue(curve.depthAt(20).isEmpty() && curve.axisDepth().isEmpty());
        assertTrue(curve.downHoleEnd().isEmpty() && curve.upHoleEnd().isEmpty());
        assertThrows(IllegalArgumentException.class, () -> curve.polylines(2, 1, 5));
        assertThrows(IllegalArgumentException.class, () -> curve.polylines(1, 2, 0));
        assertThrows(IllegalArgumentException.class, () -> WallCurve.alongCore(30, -1, CORE));
    }
}
