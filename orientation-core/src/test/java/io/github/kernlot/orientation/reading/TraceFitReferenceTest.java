package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;

import io.github.kernlot.orientation.CoreDiameter;
import io.github.kernlot.orientation.CorePlane;
import java.util.List;
import java.util.Random;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresBuilder;
import org.apache.commons.math3.fitting.leastsquares.LeastSquaresOptimizer;
import org.apache.commons.math3.fitting.leastsquares.LevenbergMarquardtOptimizer;
import org.apache.commons.math3.linear.Array2DRowRealMatrix;
import org.apache.commons.math3.linear.ArrayRealVector;
import org.apache.commons.math3.linear.RealMatrix;
import org.apache.commons.math3.util.Pair;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the sinusoid fitted by Apache Commons Math's Levenberg-Marquardt, and against what many drawn traces scatter. */
class TraceFitReferenceTest {

    private static final CoreDiameter CORE = CoreDiameter.H;

    /** z0, R cot(alpha) and beta in radians, by least squares in the depths. */
    private static LeastSquaresOptimizer.Optimum sinusoid(List<WallPoint> points, double[] start) {
        double[] observed = points.stream().mapToDouble(WallPoint::depth).toArray();
        return new LevenbergMarquardtOptimizer()
                .optimize(new LeastSquaresBuilder()
                        .start(start)
                        .target(observed)
                        .maxEvaluations(1000)
                        .maxIterations(1000)
                        .model(unknown -> {
                            double[] value = new double[observed.length];
                            RealMatrix jacobian = new Array2DRowRealMatrix(observed.length, 3);
                            for (int i = 0; i < value.length; i++) {
                                double away = Math.toRadians(points.get(i).angle()) - unknown.getEntry(2);
                                value[i] = unknown.getEntry(0) + unknown.getEntry(1) * Math.cos(away);
                                jacobian.setRow(
                                        i, new double[] {1, Math.cos(away), unknown.getEntry(1) * Math.sin(away)});
                            }
                            return Pair.create(new ArrayRealVector(value), jacobian);
                        })
                        .build());
    }

    /** With sigmas a thousand times the scatter, no residual is so great that the biweight differs from squares. */
    @ParameterizedTest
    @CsvSource({"12, 200", "30, 10", "45, 300", "60, 77", "80, 123", "89, 5"})
    void whereOnlyTheDepthsAreUncertainTheFitIsTheLeastSquareSinusoid(double alpha, double beta) {
        List<WallPoint> points = Traces.disturbed(
                Traces.round(CorePlane.of(alpha, beta), CORE, 50, 40, 300, 30), WallSigmas.of(0.3, 0), new Random(8));
        double radius = CORE.millimetres() / 2000;
        double sigma = 0.3;
        LeastSquaresOptimizer.Optimum reference =
                sinusoid(points, new double[] {50, radius / Math.tan(Math.toRadians(alpha)), Math.toRadians(beta)});
        TraceFit fit = TraceFit.of(CORE, points, WallSigmas.of(1000 * sigma, 1e-9));
        CorePlane expected = CorePlane.of(
                Math.toDegrees(Math.atan2(radius, reference.getPoint().getEntry(1))),
                Traces.wrapped(Math.toDegrees(reference.getPoint().getEntry(2))));
        assertEquals(0, Traces.apart(expected, fit.plane()), 2e-4);
        assertEquals(reference.getPoint().getEntry(0), fit.curve().axisDepth().orElseThrow(), 1e-6);

        RealMatrix covariance = reference.getCovariances(1e-30);
        double sine = Math.sin(Math.toRadians(expected.alpha()));
        double alphaSigma = Math.toDegrees(sigma * sine * sine / radius * Math.sqrt(covariance.getEntry(1, 1)));
        double roundSigma = Math.toDegrees(
                sigma * Math.cos(Math.toRadians(expected.alpha())) * Math.sqrt(covariance.getEntry(2, 2)));
        CorePlaneEstimate estimate = fit.estimate().orElseThrow();
        double ofBiweight = 1 / Math.sqrt(0.95);
        assertEquals(ofBiweight * alphaSigma, estimate.alphaSigma(), 1e-3 * alphaSigma);
        assertEquals(ofBiweight * roundSigma, estimate.roundSigma(), 1e-3 * roundSigma);
        double correlation =
                covariance.getEntry(1, 2) / Math.sqrt(covariance.getEntry(1, 1) * covariance.getEntry(2, 2));
        // alpha falls as the height grows
        assertEquals(-correlation, estimate.correlation(), 2e-3);
    }

    /** 400 traces each; the scatter of a sigma from so many is 3.5 %. */
    @ParameterizedTest
    @CsvSource({
        "0, 30, 0.5, 1",
        "1, 200, 0.5, 1",
        "10, 100, 0.5, 2",
        "30, 300, 0.5, 2",
        "45, 77, 1, 1",
        "60, 10, 0.5, 2",
        "80, 220, 0.5, 1",
        "88, 220, 0.5, 1",
        "90, 0, 0.5, 1"
    })
    void theSigmasAreWhatDrawnTracesScatter(double alpha, double beta, double depthSigma, double angleSigma) {
        CorePlane plane = CorePlane.of(alpha, beta);
        WallSigmas sigmas = WallSigmas.of(depthSigma, angleSigma);
        List<WallPoint> exact = alpha < 5
                ? Traces.piece(plane, CORE, 5, 4.8, 5.2, 24)
                : Traces.round(plane, CORE, 5, beta + 20, 280, 24);
        CorePlaneEstimate estimate = TraceFit.of(CORE, exact, sigmas).estimate().orElseThrow();
        Random random = new Random(12);
        int draws = 400;
        double one = 0;
        double two = 0;
        double both = 0;
        for (int i = 0; i < draws; i++) {
            CorePlane found = TraceFit.of(CORE, Traces.disturbed(exact, sigmas, random), sigmas)
                    .plane();
            double[] off = Traces.offset(found, plane);
            one += off[0] * off[0] / draws;
            two += off[1] * off[1] / draws;
            both += off[0] * off[1] / draws;
        }
        assertEquals(Math.sqrt(one), estimate.alphaSigma(), 0.12 * estimate.alphaSigma());
        assertEquals(Math.sqrt(two), estimate.roundSigma(), 0.12 * estimate.roundSigma());
        assertEquals(both / Math.sqrt(one * two), estimate.correlation(), 0.15);
    }
}
