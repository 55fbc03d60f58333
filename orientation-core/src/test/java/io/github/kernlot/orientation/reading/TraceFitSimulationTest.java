package io.github.kernlot.orientation.reading;

import static io.github.kernlot.orientation.reading.WallDraws.CORE;
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
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;
import org.junit.jupiter.params.provider.ValueSource;

class TraceFitSimulationTest {

    private static final WallSigmas SIGMAS = WallSigmas.of(0.5, 1);

    @ParameterizedTest
    @ValueSource(doubles = {0.01, 1, 5, 10, 20, 30, 45, 60, 75, 85, 89, 89.999, 90})
    void anExactTraceGivesThePlaneItCameFrom(double alpha) {
        for (double beta : new double[] {0, 33, 180, 271, 359.5}) {
            List<WallPoint> points = WallDraws.exact(alpha, beta, 212.4, 10, 360, 24);
            for (TraceFit fit : List.of(TraceFit.of(CORE, points, SIGMAS), TraceFit.of(CORE, points))) {
                assertEquals(
                        0, WallDraws.apart(CorePlane.of(alpha, beta), fit.plane()), 2e-9, () -> fit + " of " + alpha);
                assertEquals(List.of(), fit.leftOut());
                assertEquals(345, fit.arcCovered(), 1e-9);
            }
            if (alpha > 1) {
                assertEquals(
                        212.4, TraceFit.of(CORE, points, SIGMAS).axisDepth().orElseThrow(), 1e-9);
            }
        }
    }

    @Test
    void twoLinesAlongTheCoreAreAPlaneOfAlpha0() {
        List<WallPoint> points = new ArrayList<>();
        for (int i = 0; i < 6; i++) {
            points.add(WallPoint.of(350, 10 + 0.02 * i));
            points.add(WallPoint.of(130, 10.01 + 0.02 * i));
        }
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        // the pole halves the angle between the lines: (350 + 130) / 2 = 240, or 60
        assertEquals(0, fit.plane().alpha(), 1e-9);
        assertEquals(0, WallDraws.apart(CorePlane.of(0, 60), fit.plane()), 1e-9);
        assertTrue(fit.axisDepth().isEmpty());
        assertTrue(fit.axisDepthSigma().isEmpty());
        assertTrue(fit.estimate().orElseThrow().alphaSigma() > 0);
        List<List<WallPoint>> lines = fit.curve().polylines(9, 11, 5);
        assertEquals(2, lines.size());
        double sum = 0;
        for (List<WallPoint> line : lines) {
            assertEquals(2, line.size());
            assertEquals(line.get(0).angle(), line.get(1).angle(), 1e-6);
            assertEquals(2, Math.abs(line.get(1).depth() - line.get(0).depth()), 1e-12);
            sum += line.get(0).angle();
        }
        assertEquals(480, sum, 1e-6);
    }

    @Test
    void atAlpha90BetaAndItsSigmaAreAbsent() {
        TraceFit fit = TraceFit.of(CORE, WallDraws.exact(90, 0, 5, 0, 360, 12), SIGMAS);
        assertTrue(fit.estimate().orElseThrow().betaSigma().isEmpty());
        assertEquals(5, fit.axisDepth().orElseThrow(), 1e-12);
        // z sigma over sqrt(n / 2) radii, by the normal equations of 1, cos and sin, times 1 / 0.95 of the biweight
        double sigma = Math.toDegrees(0.5 / (47.6 / 2) / Math.sqrt(6)) / Math.sqrt(0.95);
        assertEquals(sigma, fit.estimate().orElseThrow().alphaSigma(), 1e-9);
        assertEquals(
                0.0005 / Math.sqrt(12) / Math.sqrt(0.95), fit.axisDepthSigma().orElseThrow(), 1e-12);
    }

    @ParameterizedTest
    @CsvSource({"2,40,360", "20,310,360", "45,0,360", "75,120,360", "45,200,120", "20,200,200", "70,90,150"})
    void theCovarianceIsThatOfSimulatedTraces(double alpha, double beta, double arc) {
        CorePlane truth = CorePlane.of(alpha, beta);
        List<WallPoint> exact = WallDraws.exact(alpha, beta, 30, 70, arc, 16);
        CorePlaneEstimate expected = TraceFit.of(CORE, exact, SIGMAS).estimate().orElseThrow();
        Random random = new Random(17);
        int runs = 800;
        double[] sums = new double[4];
        int covered = 0;
        int depths = 0;
        for (int run = 0; run < runs; run++) {
            TraceFit fit = TraceFit.of(CORE, WallDraws.noisy(exact, SIGMAS, random), SIGMAS);
            double[] normal = WallDraws.normal(fit.plane());
            double[] withAlpha = WallDraws.normal(CorePlane.of(90 - alpha, (beta + 180) % 360));
            double a = Math.toDegrees(dot(normal, withAlpha));
            double b = Math.toDegrees(
                    normal[1] * Math.sin(Math.toRadians(beta)) - normal[2] * Math.cos(Math.toRadians(beta)));
            sums[0] += a * a / runs;
            sums[1] += b * b / runs;
            sums[2] += a * b / runs;
            sums[3] += fit.chiSquare() / runs;
            covered += WallDraws.apart(truth, fit.plane())
                            <= fit.estimate().orElseThrow().cone95()
                    ? 1
                    : 0;
            double off = Math.abs(fit.axisDepth().orElse(30) - 30);
            depths += off <= 1.96 * fit.axisDepthSigma().orElse(0) ? 1 : 0;
        }
        assertEquals(expected.alphaSigma(), Math.sqrt(sums[0]), 0.09 * expected.alphaSigma());
        assertEquals(expected.roundSigma(), Math.sqrt(sums[1]), 0.09 * expected.roundSigma());
        assertEquals(expected.correlation(), sums[2] / Math.sqrt(sums[0] * sums[1]), 0.1);
        assertEquals(13, sums[3], 0.6);
        assertEquals(0.955, covered / (double) runs, 0.02);
        assertEquals(0.955, depths / (double) runs, 0.02);
    }

    private static double dot(double[] one, double[] other) {
        return one[0] * other[0] + one[1] * other[1] + one[2] * other[2];
    }

    @ParameterizedTest
    @CsvSource({"8,0", "16,0", "30,0", "30,9", "10,2"})
    void withoutSigmasTheScatterTellsThem(int count, int wrong) {
        List<WallPoint> exact = WallDraws.exact(40, 150, 30, 0, 360, count);
        WallSigmas sigmas = WallSigmas.onWall(0.8, CORE);
        Random random = new Random(23);
        int runs = 600;
        double scatter = 0;
        double freely = 0;
        int covered = 0;
        for (int run = 0; run < runs; run++) {
            List<WallPoint> points = new ArrayList<>(WallDraws.noisy(exact, sigmas, random));
            for (int i = 0; i < wrong; i++) {
                points.set(3 * i, WallPoint.of(points.get(3 * i).angle(), 30.03 + 0.1 * random.nextDouble()));
            }
            TraceFit fit = TraceFit.of(CORE, points);
            scatter += Math.pow(fit.sigmas().orElseThrow().depthMillimetres(), 2) / runs;
            freely += (fit.leftOut().size() - wrong) / (double) runs / count;
            covered += WallDraws.apart(CorePlane.of(40, 150), fit.plane())
                            <= fit.estimate().orElseThrow().cone95()
                    ? 1
                    : 0;
        }
        assertEquals(0.8, Math.sqrt(scatter), 0.12);
        // of 2000 traces 94 to 96 %
        assertEquals(0.95, covered / (double) runs, 0.025, () -> count + " points");
        assertEquals(0, freely, 0.03);
    }

    @ParameterizedTest
    @ValueSource(doubles = {0.5, 3, 20, 45, 70, 88})
    void aThirdOfWrongPointsAreLeftOut(double alpha) {
        Random random = new Random(3);
        for (int run = 0; run < 40; run++) {
            List<WallPoint> points =
                    new ArrayList<>(WallDraws.noisy(WallDraws.exact(alpha, 77, 30, 0, 360, 24), SIGMAS, random));
            List<Integer> wrong = new ArrayList<>();
            for (int i = 0; i < 24; i += 3) {
                wrong.add(i);
                points.set(i, WallPoint.of(points.get(i).angle(), 31.5 + 60 / alpha + random.nextDouble()));
            }
            TraceFit known = TraceFit.of(CORE, points, SIGMAS);
            assertEquals(wrong, known.leftOut(), known::toString);
            assertTrue(WallDraws.apart(CorePlane.of(alpha, 77), known.plane())
                    < 4 * known.estimate().orElseThrow().greatestSigma());
            TraceFit scattered = TraceFit.inProportion(CORE, points, SIGMAS.times(7));
            assertTrue(scattered.leftOut().containsAll(wrong), scattered::toString);
            assertTrue(WallDraws.apart(CorePlane.of(alpha, 77), scattered.plane())
                    < 6 * known.estimate().orElseThrow().greatestSigma());
        }
    }

    @ParameterizedTest
    @ValueSource(doubles = {15, 40, 65, 85})
    void agreesWithASinusoidFittedByCommonsMathWhereAnglesAreExact(double alpha) {
        // source: Apache Commons Math 3.6.1, LevenbergMarquardtOptimizer on z0 + A cos(x - beta)
        Random random = new Random(9);
        List<WallPoint> points =
                WallDraws.noisy(WallDraws.exact(alpha, 250, 0, 0, 360, 30), WallSigmas.of(0.4, 0), random);
        double[] seen = points.stream().mapToDouble(each -> each.depth() * 1000).toArray();
        double[] start = {0, 23.8 / Math.tan(Math.toRadians(alpha)), Math.toRadians(245)};
        LeastSquaresOptimizer.Optimum optimum = new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(seen)
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(at -> {
                            double[] value = new double[seen.length];
                            double[][] slope = new double[seen.length][3];
                            for (int i = 0; i < seen.length; i++) {
                                double from = Math.toRadians(points.get(i).angle()) - at.getEntry(2);
                                value[i] = at.getEntry(0) + at.getEntry(1) * Math.cos(from);
                                slope[i][0] = 1;
                                slope[i][1] = Math.cos(from);
                                slope[i][2] = at.getEntry(1) * Math.sin(from);
                            }
                            return new Pair<>(new ArrayRealVector(value), new Array2DRowRealMatrix(slope));
                        })
                        .build());
        double beta = Math.toDegrees(optimum.getPoint().getEntry(2));
        double found = Math.toDegrees(Math.atan2(23.8, optimum.getPoint().getEntry(1)));
        TraceFit fit = TraceFit.of(CORE, points, WallSigmas.of(0.4, 1e-6));
        // the biweight moves the fit by a small part of its sigma
        CorePlaneEstimate estimate = fit.estimate().orElseThrow();
        assertEquals(found, fit.plane().alpha(), 0.35 * estimate.alphaSigma());
        assertEquals(beta, fit.plane().beta(), 0.35 * estimate.betaSigma().orElseThrow());
        double sigma = Math.toDegrees(optimum.getSigma(1e-12).getEntry(2)) * 0.4;
        assertEquals(sigma / Math.sqrt(0.95), estimate.betaSigma().orElseThrow(), 0.03 * sigma);
    }

    @ParameterizedTest
    @CsvSource({"20,7", "45,12", "60,16", "75,23", "85,41"})
    void theWholeTraceGivesBetaBetterThanItsApex(double alpha, double undefinedWithin) {
        // source: derived, cos x = 1 - 2 dz tan(alpha) / D for dz 0.5 mm on 47.6 mm core: within x of it no ruler tells
        // the apex
        double tangent = Math.tan(Math.toRadians(alpha));
        assertEquals(undefinedWithin, Math.toDegrees(Math.acos(1 - tangent / 47.6)), 0.5);
        List<WallPoint> points = WallDraws.exact(alpha, 100, 0, 0, 360, 24);
        double fitted = TraceFit.of(CORE, points, WallSigmas.of(0.5, 1))
                .estimate()
                .orElseThrow()
                .betaSigma()
                .orElseThrow();
        assertTrue(undefinedWithin / Math.sqrt(3) > 1.8 * fitted, alpha + ": " + fitted);
    }

    @Test
    void aBrokenPieceGivesAWidePole() {
        double whole = sigmaOver(360);
        double third = sigmaOver(120);
        double splinter = sigmaOver(25);
        assertTrue(third > 3 * whole && splinter > 10 * third, whole + ", " + third + ", " + splinter);
    }

    private static double sigmaOver(double arc) {
        return TraceFit.of(CORE, WallDraws.exact(50, 20, 8, 300, arc, 12), SIGMAS)
                .estimate()
                .orElseThrow()
                .greatestSigma();
    }

    @Test
    void threePointsGiveTheirPlaneAndNoScatter() {
        List<WallPoint> points = WallDraws.exact(50, 20, 8, 300, 360, 3);
        TraceFit fit = TraceFit.of(CORE, points);
        assertEquals(0, WallDraws.apart(CorePlane.of(50, 20), fit.plane()), 1e-9);
        assertTrue(fit.estimate().isEmpty());
        assertTrue(fit.sigmas().isEmpty());
        assertEquals(List.of(0.0, 0.0, 0.0), fit.residuals());
        assertTrue(TraceFit.of(CORE, points, SIGMAS).estimate().isPresent());
        assertEquals("alpha 50.0, beta 020.0, through 3 of 3 points over 240 degrees of the wall", fit.toString());
    }

    @Test
    void whatFixesNoPlaneIsRefusedWithTheReason() {
        WallPoint one = WallPoint.of(0, 1);
        WallPoint two = WallPoint.of(360, 2);
        WallPoint three = WallPoint.of(0, 3);
        refused("no place", List.of());
        refused("one place", List.of(one));
        refused("one place", List.of(one, one, one));
        refused("two places", List.of(one, two, one, two));
        refused("one line along the core", List.of(one, two, three));
        refused("agree on a plane", List.of(one, WallPoint.of(90, 1), WallPoint.of(180, 1), WallPoint.of(270, 1.2)));
        List<WallPoint> good = WallDraws.exact(50, 20, 8, 300, 360, 9);
        assertThrows(IllegalArgumentException.class, () -> TraceFit.of(CORE, good, WallSigmas.of(0, 1)));
        assertThrows(IllegalArgumentException.class, () -> TraceFit.of(CORE, good, WallSigmas.of(1, 0)));
        assertThrows(
                IllegalArgumentException.class, () -> TraceFit.of(CoreDiameter.ofMillimetres(1e-200), good, SIGMAS));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(Double.NaN, 1));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(1, Double.NaN));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(360.1, 1));
        assertThrows(IllegalArgumentException.class, () -> WallPoint.of(1, 1e6));
        assertThrows(IllegalArgumentException.class, () -> WallSigmas.of(Double.NaN, 1));
    }

    private static void refused(String reason, List<WallPoint> points) {
        String message = assertThrows(IllegalArgumentException.class, () -> TraceFit.of(CORE, points, SIGMAS))
                .getMessage();
        assertTrue(message.contains(reason), message);
    }

    @Test
    void aHundredThousandPointsTakeSeconds() {
        List<WallPoint> points = WallDraws.noisy(WallDraws.exact(33, 44, 8, 0, 360, 100_000), SIGMAS, new Random(1));
        TraceFit fit = assertTimeout(Duration.ofSeconds(20), () -> TraceFit.of(CORE, points, SIGMAS));
        assertEquals(0, WallDraws.apart(CorePlane.of(33, 44), fit.plane()), 0.03);
        TraceFit free =
                assertTimeout(Duration.ofSeconds(20), () -> TraceFit.inProportion(CORE, points, SIGMAS.times(3)));
        assertEquals(0.5, free.sigmas().orElseThrow().depthMillimetres(), 0.01);
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
}
