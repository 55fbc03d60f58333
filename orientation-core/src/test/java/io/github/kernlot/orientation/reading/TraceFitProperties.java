package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.ArrayList;
import java.util.Collections;
import java.util.List;
import java.util.Random;
import net.jqwik.api.Arbitraries;
import net.jqwik.api.Arbitrary;
import net.jqwik.api.ForAll;
import net.jqwik.api.Property;
import net.jqwik.api.Provide;
import net.jqwik.api.RandomDistribution;
import net.jqwik.api.constraints.IntRange;

class TraceFitProperties {

    private static final CoreDiameter CORE = CoreDiameter.H;
    private static final WallSigmas SIGMAS = WallSigmas.of(0.7, 1.5);

    @Provide
    Arbitrary<Double> alphas() {
        return Arbitraries.oneOf(
                Arbitraries.doubles().between(0, 90).ofScale(4).withDistribution(RandomDistribution.uniform()),
                Arbitraries.of(0.0, 1e-3, 0.5, 3.0, 45.0, 89.9, 90.0));
    }

    /** Along a piece of core where the trace is too long for it, round it elsewhere; one in seven lies elsewhere. */
    private static List<WallPoint> points(double alpha, int beta, int count, int seed) {
        CorePlane plane = CorePlane.of(alpha, beta);
        Random random = new Random(seed);
        List<WallPoint> points = new ArrayList<>(Traces.disturbed(
                alpha < 5
                        ? Traces.piece(plane, CORE, 3, 2.9, 3.1, count)
                        : Traces.round(plane, CORE, 3, random.nextInt(360), 250, count),
                SIGMAS,
                random));
        for (int i = 6; i < count; i += 7) {
            points.set(i, WallPoint.of(360 * random.nextDouble(), 3.5 + random.nextDouble()));
        }
        return points;
    }

    @Property(tries = 40)
    void turningTheAnglesTurnsBeta(
            @ForAll("alphas") double alpha,
            @ForAll @IntRange(max = 359) int beta,
            @ForAll @IntRange(min = 9, max = 40) int count,
            @ForAll @IntRange(min = 1, max = 359) int turn,
            @ForAll int seed) {
        List<WallPoint> points = points(alpha, beta, count, seed);
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        TraceFit turned = TraceFit.of(
                CORE,
                points.stream()
                        .map(point -> WallPoint.of(Traces.wrapped(point.angle() + turn), point.depth()))
                        .toList(),
                SIGMAS);
        CorePlane plane = fit.plane();
        CorePlane expected = CorePlane.of(plane.alpha(), Traces.wrapped(plane.beta() + turn));
        assertEquals(0, Traces.apart(expected, turned.plane()), 1e-5, () -> fit + " and " + turned);
        assertEquals(fit.leftOut(), turned.leftOut());
        assertEquals(fit.arcCovered(), turned.arcCovered(), 1e-9);
        assertEquals(fit.chiSquare(), turned.chiSquare(), 1e-4 * (1 + fit.chiSquare()));
    }

    @Property(tries = 40)
    void shiftingTheDepthsMovesNothingElse(
            @ForAll("alphas") double alpha,
            @ForAll @IntRange(max = 359) int beta,
            @ForAll @IntRange(min = 9, max = 40) int count,
            @ForAll @IntRange(min = -2000, max = 2000) int shift,
            @ForAll int seed) {
        List<WallPoint> points = points(alpha, beta, count, seed);
        TraceFit fit = TraceFit.of(CORE, points, SIGMAS);
        TraceFit shifted = TraceFit.of(
                CORE,
                points.stream()
                        .map(point -> WallPoint.of(point.angle(), point.depth() + shift))
                        .toList(),
                SIGMAS);
        assertEquals(0, Traces.apart(fit.plane(), shifted.plane()), 1e-5, () -> fit + " and " + shifted);
        assertEquals(fit.leftOut(), shifted.leftOut());
        assertEquals(fit.chiSquare(), shifted.chiSquare(), 1e-4 * (1 + fit.chiSquare()));
        assertEquals(
                fit.estimate().orElseThrow().greatestSigma(),
                shifted.estimate().orElseThrow().greatestSigma(),
                1e-4);
        assertEquals(fit.axisDepth().isPresent(), shifted.axisDepth().isPresent());
        fit.axisDepth()
                .ifPresent(depth ->
                        assertEquals(depth + shift, shifted.axisDepth().orElseThrow(), 1e-6 * (1 + Math.abs(depth))));
    }

    @Property(tries = 40)
    void theOrderOfThePointsDoesNotMatter(
            @ForAll("alphas") double alpha,
            @ForAll @IntRange(max = 359) int beta,
            @ForAll @IntRange(min = 9, max = 40) int count,
            @ForAll int seed) {
        List<WallPoint> points = points(alpha, beta, count, seed);
        List<Integer> order = new ArrayList<>();
        for (int i = 0; i < count; i++) {
            order.add(i);
        }
        Collections.shuffle(order, new Random(seed));
        List<WallPoint> shuffled = order.stream().map(points::get).toList();
        for (boolean known : new boolean[] {true, false}) {
            TraceFit fit = known ? TraceFit.of(CORE, points, SIGMAS) : TraceFit.of(CORE, points);
            TraceFit other = known ? TraceFit.of(CORE, shuffled, SIGMAS) : TraceFit.of(CORE, shuffled);
            assertEquals(fit.plane(), other.plane());
            assertEquals(fit.estimate(), other.estimate());
            for (int i = 0; i < count; i++) {
                assertEquals(
                        fit.residuals().get(order.get(i)), other.residuals().get(i));
            }
            assertEquals(
                    fit.leftOut(),
                    other.leftOut().stream().map(order::get).sorted().toList());
        }
    }

    @Property(tries = 100)
    void whatItSaysIsNeverNaN(
            @ForAll("alphas") double alpha,
            @ForAll @IntRange(max = 359) int beta,
            @ForAll @IntRange(min = 3, max = 6) int count,
            @ForAll int seed) {
        TraceFit fit = TraceFit.of(CORE, points(alpha, beta, count, seed), SIGMAS);
        fit.residuals().forEach(residual -> assertTrue(Double.isFinite(residual)));
        CorePlaneEstimate estimate = fit.estimate().orElseThrow();
        assertTrue(estimate.greatestSigma() >= estimate.leastSigma() && estimate.leastSigma() >= 0);
        estimate.betaSigma().ifPresent(sigma -> assertTrue(Double.isFinite(sigma)));
        fit.axisDepth().ifPresent(depth -> assertTrue(Double.isFinite(depth)));
        fit.axisDepthSigma().ifPresent(sigma -> assertTrue(Double.isFinite(sigma)));
        assertTrue(fit.arcCovered() > 0 && fit.arcCovered() < 360 && fit.chiSquare() >= 0);
    }
}
