package io.github.kernlot.orientation.sphere.distribution;

import org.apache.commons.math3.analysis.integration.gauss.GaussIntegrator;
import org.apache.commons.math3.analysis.integration.gauss.GaussIntegratorFactory;

/**
 * Integrals over the distance {@code w = 1 - u} from a pole, u the cosine of the angle to it, by 20 Gauss points in each panel. The
 * panels halve towards the pole, so that a peak there of any sharpness meets panels of its own size.
 */
final class SphereIntegral {

    private static final GaussIntegrator GAUSS = new GaussIntegratorFactory().legendre(20);
    private static final int HALVINGS = 50;

    private SphereIntegral() {}

    /** Adds to the sums what stands at a distance from the pole, in [0, 2], times a weight. */
    @FunctionalInterface
    interface Integrand {
        /** Adds. */
        void add(double distance, double weight, double[] sums);
    }

    /** The integrals from the pole to the equator, w from 0 to 1. */
    static double[] overHemisphere(int count, Integrand integrand) {
        double[] sums = new double[count];
        double high = 1;
        for (int halving = 0; halving < HALVINGS; halving++) {
            panel(high / 2, high, integrand, sums);
            high /= 2;
        }
        panel(0, high, integrand, sums);
        return sums;
    }

    /** The integrals from the pole to its opposite, w from 0 to 2. */
    static double[] overSphere(int count, Integrand integrand) {
        double[] sums = overHemisphere(count, integrand);
        panel(1, 1.5, integrand, sums);
        panel(1.5, 2, integrand, sums);
        return sums;
    }

    private static void panel(double low, double high, Integrand integrand, double[] sums) {
        double half = (high - low) / 2;
        for (int i = 0; i < GAUSS.getNumberOfPoints(); i++) {
            integrand.add(low + half * (1 + GAUSS.getPoint(i)), half * GAUSS.getWeight(i), sums);
        }
    }
}
