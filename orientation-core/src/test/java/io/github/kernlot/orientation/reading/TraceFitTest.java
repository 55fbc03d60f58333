package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTimeout;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.time.Duration;
import java.util.ArrayList;
import java.util.List;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

/** On exact traces, and what is refused. */
class TraceFitTest {

    private static final CoreDiameter CORE = CoreDiameter.N;
    private static final WallSigmas SIGMAS = WallSigmas.of(0.5, 1);

    private static List<WallPoint> whole(CorePlane plane, int count) {
        return Traces.round(plane, CORE, 412.3, 10, 360, count);
    }

    @ParameterizedTest
    @CsvSource({
        "0.01, 271",
        "0.1, 0",
        "1, 359.5",
        "2.9, 77",
        "5, 213",
        "10, 33",
        "20, 0",
        "30, 90",
        "45, 300",
        "60, 180",
        "75, 271",
        "80, 12",
        "89, 271",
        "89.9, 45",
        "89.999, 333",
        "90, 0"
    })
    void thePlaneOfAWholeTraceIsFound(double alpha, double beta) {
        CorePlane plane = CorePlane.of(alpha, beta);
        for (int count : new int[] {3, 4, 7, 8, 25}) {
            assertFound(plane, whole(plane, count), 2e-9, 360 - 360.0 / count);
        }
    }

    @ParameterizedTest
    @CsvSource({"0, 40", "0, 179", "1e-6, 200", "1e-3, 200", "0.1, 0", "1, 359", "2.9, 77"})
    void thePlaneOfATraceOnAShortPieceIsFound(double alpha, double beta) {
        CorePlane plane = CorePlane.of(alpha, beta);
        for (int count : new int[] {3, 4, 7, 8, 25}) {
            List<WallPoint> points = Traces.piece(plane, CORE, 412.3, 412, 412.6, count);
            assertFound(plane, points, 1e-7, TraceFit.of(CORE, points).arcCovered());
        }
    }

    private static void assertFound(CorePlane plane, List<WallPoint> points, double within, double arc) {
        for (TraceFit fit : List.of(TraceFit.of(CORE, points, SIGMAS), TraceFit.of(CORE, points))) {
            assertEquals(0, Traces.apart(plane, fit.plane()), within, () -> points.size() + " points: " + fit);
            assertEquals(List.of(), fit.leftOut());
            assertEquals(0, fit.chiSquare(), 1e-6);
            assertEquals(arc, fit.arcCovered(), 1e-9);
            fit.axisDepth().ifPresent(depth -> assertEquals(412.3, depth, plane.alpha() < 3 ? 1e-3 : 1e-9));
            assertTrue(plane.alpha() < 3 || fit.axisDepth().isPresent());
            fit.residuals().forEach(residual -> assertTrue(Double.isFinite(residual)));
            fit.estimate().ifPresent(estimate -> assertTrue(Double.isFinite(estimate.cone95())));
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {30, 210})
    void aPlaneAlongTheCoreBesideTheAxisLeavesTwoLines(double side) {
        // 10 mm from the axis: cos x = 10 / 23.8
        double away = Math.toDegrees(Math.acos(10 / 23.8));
        List<WallPoint> points = new ArrayList<>();
        for (double depth : new double[] {7.1, 7.2, 7.3}) {
            points.add(WallPoint.of(side + away, depth));
            points.add(WallPoint.of(Traces.wrapped(side - away), depth + 0.01));
        }
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        assertEquals(0, fit.plane().alpha(), 1e-9);
        assertEquals(0, Traces.apart(CorePlane.of(0, 30), fit.plane()), 1e-9);
        assertTrue(fit.axisDepth().isEmpty() && fit.axisDepthSigma().isEmpty());
        assertTrue(fit.estimate().orElseThrow().betaSigma().isPresent());
        assertTrue(fit.estimate().orElseThrow().alphaSigma() > 0);
        assertTrue(fit.curve().downHoleEnd().isEmpty() || fit.plane().alpha() > 0);
        List<List<WallPoint>> lines = fit.curve().polylines(6, 8, 5);
        assertEquals(2, lines.size());
        double sum = 0;
        for (List<WallPoint> line : lines) {
            assertEquals(2, line.size());
            assertEquals(line.get(0).angle(), line.get(1).angle(), 1e-6);
            assertEquals(2, Math.abs(line.get(1).depth() - line.get(0).depth()), 1e-12);
            sum += line.get(0).angle();
            assertEquals(10 / 23.8, Math.cos(Math.toRadians(line.get(0).angle() - side)), 1e-9);
        }
        assertEquals(60 + 360, sum, 1e-6);
    }

    @Test
    void betaHasNoSigmaWhereItDoesNotExist() {
        CorePlaneEstimate square = TraceFit.of(CORE, whole(CorePlane.perpendicular(), 20), SIGMAS)
                .estimate()
                .orElseThrow();
        assertTrue(square.betaSigma().isEmpty());
        CorePlaneEstimate oblique = TraceFit.of(CORE, whole(CorePlane.of(50, 20), 20), SIGMAS)
                .estimate()
                .orElseThrow();
        assertEquals(
                oblique.roundSigma() / Math.cos(Math.toRadians(50)),
                oblique.betaSigma().orElseThrow(),
                1e-9);
    }

    @Test
    void theArcIsATurnLessTheWidestGap() {
        CorePlane plane = CorePlane.of(40, 0);
        List<WallPoint> points = new ArrayList<>();
        for (double angle : new double[] {350, 10, 60, 100}) {
            points.add(WallPoint.of(angle, Traces.depth(plane, CORE, 0, angle)));
        }
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        assertEquals(110, fit.arcCovered(), 1e-9);
        assertTrue(fit.toString().endsWith("through 4 of 4 points over 110 degrees of the wall"), fit.toString());
    }

    @Test
    void theWidestGapMayLieAcrossTheLine() {
        CorePlane plane = CorePlane.of(40, 0);
        List<WallPoint> points = new ArrayList<>();
        for (double angle : new double[] {20, 60, 100, 200}) {
            points.add(WallPoint.of(angle, Traces.depth(plane, CORE, 0, angle)));
        }
        assertEquals(180, TraceFit.of(CORE, points, SIGMAS).arcCovered(), 1e-9);
    }

    @Test
    void whatIsLeftOutCountsForNothing() {
        CorePlane plane = CorePlane.of(40, 0);
        List<WallPoint> points = new ArrayList<>();
        for (double angle : new double[] {0, 60, 120, 180}) {
            points.add(WallPoint.of(angle, Traces.depth(plane, CORE, 7, angle)));
        }
        points.add(2, WallPoint.of(270, 7.05));
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        assertEquals(List.of(2), fit.leftOut());
        assertEquals(0, fit.chiSquare(), 1e-6);
        assertEquals(180, fit.arcCovered(), 1e-9);
        assertTrue(fit.toString().endsWith("through 4 of 5 points over 180 degrees of the wall"), fit.toString());
    }

    @Test
    void aBrokenPieceGivesAWidePole() {
        double whole = sigmaOver(360);
        double third = sigmaOver(120);
        double splinter = sigmaOver(25);
        assertTrue(third > 3 * whole && splinter > 10 * third, whole + ", " + third + ", " + splinter);
        // wide, but no plane that touches the wall: the first order sees it
        assertTrue(splinter < 50, () -> splinter + " degrees");
    }

    private static double sigmaOver(double arc) {
        return TraceFit.of(CORE, Traces.round(CorePlane.of(50, 20), CORE, 8, 300, arc, 12), SIGMAS)
                .estimate()
                .orElseThrow()
                .greatestSigma();
    }

    @Test
    void threePointsGiveTheirPlaneAndNoScatter() {
        List<WallPoint> points = whole(CorePlane.of(50, 20), 3);
        TraceFit fit = TraceFit.of(CORE, points);
        assertTrue(fit.estimate().isEmpty() && fit.sigmas().isEmpty());
        assertTrue(fit.axisDepth().isPresent() && fit.axisDepthSigma().isEmpty());
        assertEquals(List.of(0.0, 0.0, 0.0), fit.residuals());
        assertTrue(TraceFit.of(CORE, points, SIGMAS).estimate().isPresent());
        assertEquals("alpha 50.0, beta 020.0, through 3 of 3 points over 240 degrees of the wall", fit.toString());
    }

    @Test
    void theCurveIsThatOfThePlane() {
        CorePlane plane = CorePlane.of(25, 310);
        WallCurve curve = TraceFit.of(CORE, whole(plane, 9), SIGMAS).curve();
        assertEquals(0, Traces.apart(plane, curve.plane()), 1e-9);
        for (double angle = 0; angle < 360; angle += 17) {
            assertEquals(
                    Traces.depth(plane, CORE, 412.3, angle),
                    curve.depthAt(angle).orElseThrow(),
                    1e-9);
        }
        assertEquals(310, curve.downHoleEnd().orElseThrow().angle(), 1e-6);
    }

    @Test
    void pointsAtOnePlaceButForTwoStillGiveTheirPlane() {
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i < 2000; i++) {
            points.add(WallPoint.of(0, 1));
        }
        points.add(WallPoint.of(120, 1));
        points.add(WallPoint.of(240, 1));
        assertEquals(90, TraceFit.of(CORE, points, SIGMAS).plane().alpha(), 1e-6);
        assertEquals(90, TraceFit.of(CORE, points).plane().alpha(), 1e-6);
    }

    private static void refused(String because, List<WallPoint> points) {
        for (boolean known : new boolean[] {true, false}) {
            String message = assertThrows(
                            IllegalArgumentException.class,
                            () -> fit(CORE, points, known ? SIGMAS : WallSigmas.onWall(1, CORE), known))
                    .getMessage();
            assertTrue(message.contains(because), message);
        }
    }

    private static TraceFit fit(CoreDiameter core, List<WallPoint> points, WallSigmas sigmas, boolean known) {
        return known ? TraceFit.of(core, points, sigmas) : TraceFit.inProportion(core, points, sigmas);
    }

    @Test
    void pointsThatFixNoPlaneAreRefused() {
        WallPoint one = WallPoint.of(0, 1);
        WallPoint same = WallPoint.of(360, 1);
        WallPoint two = WallPoint.of(100, 1.02);
        refused("no place", List.of());
        refused("one place", List.of(one));
        refused("one place", List.of(one, same, one, one));
        refused("two places", List.of(one, two, two, one, same));
        refused("one line along the core", List.of(one, WallPoint.of(360, 2), WallPoint.of(0, 3), WallPoint.of(0, 4)));
    }

    @Test
    void pointsThatDoNotAgreeAreRefused() {
        Random random = new Random(3);
        List<WallPoint> anywhere = new ArrayList<>();
        for (int i = 0; i < 30; i++) {
            anywhere.add(WallPoint.of(360 * random.nextDouble(), random.nextDouble()));
        }
        List<WallPoint> fourth =
                List.of(WallPoint.of(0, 1), WallPoint.of(90, 1), WallPoint.of(180, 1), WallPoint.of(270, 1.2));
        for (List<WallPoint> points : List.of(anywhere, fourth)) {
            String message = assertThrows(
                            IllegalArgumentException.class, () -> TraceFit.of(CORE, points, WallSigmas.of(0.5, 0.5)))
                    .getMessage();
            assertTrue(message.contains("agree on a plane"), message);
        }
    }

    /** The plane that touches the wall along them has the least residuals, and yet any other about that line fits them. */
    @ParameterizedTest
    @CsvSource({
        "3, true, 0.4",
        "4, true, 0.4",
        "8, true, 0.4",
        "8, true, 0.03",
        "20, true, 0.4",
        "8, false, 0.4",
        "20, false, 0.4"
    })
    void onePlaneAmongManyAboutALineIsNotTold(int count, boolean known, double length) {
        CorePlane truth = CorePlane.of(0, 77);
        Random random = new Random(3);
        int covered = 0;
        int open = 0;
        for (int i = 0; i < 200; i++) {
            List<WallPoint> line = new ArrayList<>();
            for (int k = 0; k < count; k++) {
                line.add(WallPoint.of(135, 50 + length * random.nextDouble()));
            }
            List<WallPoint> points = Traces.disturbed(line, SIGMAS, random);
            TraceFit fit = known ? TraceFit.of(CORE, points, SIGMAS) : TraceFit.inProportion(CORE, points, SIGMAS);
            CorePlaneEstimate estimate = fit.estimate().orElseThrow();
            covered += Traces.apart(truth, fit.plane()) <= estimate.cone95() ? 1 : 0;
            open += estimate.greatestSigma() >= 90 ? 1 : 0;
        }
        assertEquals(200, covered, 10);
        assertEquals(200, open, 10);
    }

    /**
     * By hand: four points that lie to both sides of a line along the core by turns. The plane through the axis misses each by so many sigmas;
     * chi-square with 2 degrees of freedom is 13.816 at 0.001 (tables of chi-square), so that 1.8585 of them still fit it.
     */
    @ParameterizedTest
    @CsvSource({"1.84, true", "1.88, false"})
    void pointsOnALineWithinTheirSigmasLeaveThePlaneOpen(double sigmasAside, boolean open) {
        double aside = Math.toDegrees(Math.atan(Math.toRadians(sigmasAside * SIGMAS.angle())));
        List<WallPoint> points = List.of(
                WallPoint.of(aside, 8.0),
                WallPoint.of(360 - aside, 8.1),
                WallPoint.of(360 - aside, 8.2),
                WallPoint.of(aside, 8.3));
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        assertEquals(0, fit.chiSquare(), 1e-9);
        assertEquals(open, fit.estimate().orElseThrow().greatestSigma() >= 90, () -> fit.toString());
    }

    @ParameterizedTest
    @ValueSource(doubles = {0, -1, Double.NaN, Double.POSITIVE_INFINITY})
    void sigmasMustBeAboveNothing(double sigma) {
        List<WallPoint> points = whole(CorePlane.of(40, 20), 5);
        for (boolean known : new boolean[] {true, false}) {
            assertThrows(IllegalArgumentException.class, () -> fit(CORE, points, WallSigmas.of(sigma, 1), known));
            assertThrows(IllegalArgumentException.class, () -> fit(CORE, points, WallSigmas.of(1, sigma), known));
        }
    }

    @Test
    void aCoreOfNoThicknessIsRefused() {
        List<WallPoint> points = whole(CorePlane.of(40, 20), 5);
        CoreDiameter thread = CoreDiameter.ofMillimetres(1e-200);
        assertThrows(IllegalArgumentException.class, () -> TraceFit.of(thread, points, SIGMAS));
        assertThrows(IllegalArgumentException.class, () -> TraceFit.of(thread, points));
    }

    @Test
    void manyPointsTakeSeconds() {
        CorePlane plane = CorePlane.of(33, 44);
        List<WallPoint> points = Traces.disturbed(whole(plane, 20_000), SIGMAS, new Random(1));
        TraceFit fit = assertTimeout(Duration.ofSeconds(20), () -> TraceFit.of(CORE, points, SIGMAS));
        assertEquals(0, Traces.apart(plane, fit.plane()), 0.03);
        assertTrue(fit.leftOut().size() <= 20, () -> fit.leftOut() + " left out");
        TraceFit free =
                assertTimeout(Duration.ofSeconds(20), () -> TraceFit.inProportion(CORE, points, SIGMAS.times(3)));
        assertEquals(0.5, free.sigmas().orElseThrow().depthMillimetres(), 0.01);
    }
}
