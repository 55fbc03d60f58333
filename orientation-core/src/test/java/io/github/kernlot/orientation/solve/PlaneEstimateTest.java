package io.github.kernlot.orientation.solve;

import static org.junit.jupiter.api.Assertions.assertEquals;
import static org.junit.jupiter.api.Assertions.assertThrows;
import static org.junit.jupiter.api.Assertions.assertTrue;

import io.github.kernlot.orientation.PlaneOrientation;
import java.util.Random;
import org.junit.jupiter.api.Test;
import org.junit.jupiter.params.ParameterizedTest;
import org.junit.jupiter.params.provider.CsvSource;

class PlaneEstimateTest {

    private static final PlaneOrientation PLANE = PlaneOrientation.ofDipAndDirection(30, 120);

    @Test
    void theConeOfACircleAndOfALineAreThoseOfTheTables() {
        // source: chi-square 0.95 with 2 degrees of freedom is 5.9915, with 1 degree 3.8415 (NIST/SEMATECH handbook,
        // 1.3.6.7.4)
        assertEquals(2 * Math.sqrt(5.9915), new PlaneEstimate(PLANE, 2, 2, 0).cone95(), 1e-4);
        assertEquals(2 * Math.sqrt(3.8415), new PlaneEstimate(PLANE, 2, 0, 0).cone95(), 1e-4);
        assertEquals(2 * Math.sqrt(3.8415), new PlaneEstimate(PLANE, 2, 1e-6, 0).cone95(), 1e-3);
        assertEquals(0, new PlaneEstimate(PLANE, 0, 0, 0).cone95());
    }

    @ParameterizedTest
    @CsvSource({"3, 1, 0.5", "1, 2, -0.9", "0.5, 5, 0"})
    void theConeHoldsNineteenOfTwenty(double dip, double strike, double correlation) {
        PlaneEstimate estimate = new PlaneEstimate(PLANE, dip, strike, correlation);
        double radius = estimate.cone95();
        Random random = new Random(1);
        int inside = 0;
        int runs = 200_000;
        for (int i = 0; i < runs; i++) {
            double one = random.nextGaussian();
            double other = correlation * one + Math.sqrt(1 - correlation * correlation) * random.nextGaussian();
            inside += Math.hypot(dip * one, strike * other) < radius ? 1 : 0;
        }
        assertEquals(0.95, inside / (double) runs, 0.002);
    }

    @ParameterizedTest
    @CsvSource({"1, 12.7062, 199.500", "4, 2.7764, 6.9443", "30, 2.0423, 3.3158"})
    void sigmasOfFewDegreesOfFreedomWidenTheCone(double freedom, double t, double f) {
        // source: Student's t 0.975 and F 0.95 with 2 degrees in the numerator (NIST/SEMATECH handbook, 1.3.6.7.2 and
        // 1.3.6.7.3); 199.500 is 1 / 0.05^2 / 2 - 1/2
        assertEquals(2 * t, new PlaneEstimate(PLANE, 2, 0, 0, freedom).cone95(), 2e-4 * t);
        assertEquals(2 * Math.sqrt(2 * f), new PlaneEstimate(PLANE, 2, 2, 0, freedom).cone95(), 2e-4 * t);
        assertEquals(90, new PlaneEstimate(PLANE, 60, 60, 0, freedom).cone95());
        assertThrows(IllegalArgumentException.class, () -> new PlaneEstimate(PLANE, 2, 2, 0, 0.5));
    }

    @Test
    void theEllipseHasTheEigenvaluesOfTheCovariance() {
        // by hand: variances 4 and 1, covariance 1: eigenvalues (5 +- sqrt(13)) / 2, axis at atan2(2, 3) / 2
        PlaneEstimate estimate = new PlaneEstimate(PLANE, 2, 1, 0.5);
        assertEquals(Math.sqrt((5 + Math.sqrt(13)) / 2), estimate.greatestSigma(), 1e-12);
        assertEquals(Math.sqrt((5 - Math.sqrt(13)) / 2), estimate.leastSigma(), 1e-12);
        assertEquals(Math.toDegrees(Math.atan2(2, 3)) / 2, estimate.longAxis(), 1e-12);
        assertEquals(90, new PlaneEstimate(PLANE, 1, 2, 0).longAxis(), 1e-12);
        assertEquals(0, new PlaneEstimate(PLANE, 0, 0, 0).longAxis());
        assertEquals(0, new PlaneEstimate(PLANE, 0, 0, 0.5).leastSigma());
        for (double scale : new double[] {1e-200, 1e200}) {
            PlaneEstimate scaled = new PlaneEstimate(PLANE, 2 * scale, scale, 0.5);
            assertEquals(scale * estimate.greatestSigma(), scaled.greatestSigma(), 1e-12 * scale);
            assertEquals(scale * estimate.leastSigma(), scaled.leastSigma(), 1e-12 * scale);
            assertEquals(estimate.longAxis(), scaled.longAxis(), 1e-12);
            assertEquals(Math.min(90, scale * estimate.cone95()), scaled.cone95(), 1e-9 * scale);
        }
    }

    @Test
    void aFlatPlaneHasNoSigmaOfItsDipDirection() {
        assertEquals(4, new PlaneEstimate(PLANE, 1, 2, 0).dipDirectionSigma().orElseThrow(), 1e-12);
        PlaneOrientation flat = PlaneOrientation.ofDipAndDirection(3, 120);
        assertTrue(new PlaneEstimate(flat, 1, 2, 0).dipDirectionSigma().isEmpty());
    }

    @Test
    void whatIsNoCovarianceIsRefused() {
        assertThrows(IllegalArgumentException.class, () -> new PlaneEstimate(PLANE, -1, 1, 0));
        assertThrows(IllegalArgumentException.class, () -> new PlaneEstimate(PLANE, 1, Double.NaN, 0));
        assertThrows(IllegalArgumentException.class, () -> new PlaneEstimate(PLANE, 1, 1, 1.1));
    }

    @Test
    void readsWithItsSigmas() {
        assertEquals(
                "30.0/120.0 (dip/dip direction), sigma 1.0 in dip and 2.0 along strike",
                new PlaneEstimate(PLANE, 1, 2, 0).toString());
    }
}
