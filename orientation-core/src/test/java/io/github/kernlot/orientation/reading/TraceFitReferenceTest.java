package io.github.kernlot.orientation.reading;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertTrue;

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
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

/** Against the sinusoid fitted by Apache Commons Math 3.6.1 (Levenberg-Marquardt), and what least squares give by hand. */
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

        // with the sigma that they have, the biweight moves the fit by a small part of it
        TraceFit robust = TraceFit.of(CORE, points, WallSigmas.of(sigma, 1e-6));
        double[] off = Traces.offset(robust.plane(), expected);
        assertEquals(0, off[0], 0.35e-3 * alphaSigma);
        assertEquals(0, off[1], 0.35e-3 * roundSigma);
        assertEquals(
                ofBiweight * roundSigma / 1000, robust.estimate().orElseThrow().roundSigma(), 0.03e-3 * roundSigma);
        double depthSigma = sigma / 1000 * Math.sqrt(covariance.getEntry(0, 0));
        assertEquals(ofBiweight * depthSigma, robust.axisDepthSigma().orElseThrow(), 0.03 * depthSigma);
    }

    /** Even steps round the wall: normal equations of 1, cos and sin, times 1 / 0.95 of the biweight. */
    @Test
    void atAlpha90TheSigmasAreThoseOfEvenSteps() {
        TraceFit fit =
                TraceFit.of(CORE, Traces.round(CorePlane.perpendicular(), CORE, 5, 0, 360, 12), WallSigmas.of(0.5, 1));
        double radius = CORE.millimetres() / 2;
        CorePlaneEstimate estimate = fit.estimate().orElseThrow();
        double sigma = Math.toDegrees(0.5 / radius / Math.sqrt(6)) / Math.sqrt(0.95);
        assertEquals(sigma, estimate.alphaSigma(), 1e-9);
        assertEquals(sigma, estimate.roundSigma(), 1e-9);
        assertEquals(5, fit.axisDepth().orElseThrow(), 1e-12);
        assertEquals(
                0.0005 / Math.sqrt(12) / Math.sqrt(0.95), fit.axisDepthSigma().orElseThrow(), 1e-12);
    }

    /**
     * The apex of a cosine of half height R cot(alpha) is lost within an angle x of {@code 1 - cos x = dz tan(alpha) / R}; a trace of N
     * core read to 0.5 mm loses it within 7 degrees at alpha 20, 12 at 45, 16 at 60, 23 at 75 and 41 at 85. All of the trace is far better.
     */
    @ParameterizedTest
    @CsvSource({"20, 7", "45, 12", "60, 16", "75, 23", "85, 41"})
    void theWholeTraceTellsBetaFarBetterThanItsApex(double alpha, double lost) {
        double rise = 0.5 * Math.tan(Math.toRadians(alpha)) / 23.8;
        assertEquals(lost, Math.toDegrees(Math.acos(1 - rise)), 0.5);
        double exactAngles = betaSigma(alpha, 36, WallSigmas.of(0.5, 1e-3));
        // least squares of a sinusoid by even steps: sigma / (R cot(alpha)) times the root of 2 / n
        double expected = Math.toDegrees(rise * Math.sqrt(2.0 / 36)) / Math.sqrt(0.95);
        assertEquals(expected, exactAngles, 0.01 * expected);
        assertTrue(exactAngles < lost / 4, () -> exactAngles + " against " + lost);
        double read = betaSigma(alpha, 24, WallSigmas.of(0.5, 1));
        assertTrue(1.8 * read < lost / Math.sqrt(3), () -> read + " against " + lost);
    }

    private static double betaSigma(double alpha, int count, WallSigmas sigmas) {
        return TraceFit.of(
                        CoreDiameter.N,
                        Traces.round(CorePlane.of(alpha, 130), CoreDiameter.N, 2, 0, 360, count),
                        sigmas)
                .estimate()
                .orElseThrow()
                .betaSigma()
                .orElseThrow();
    }
}
