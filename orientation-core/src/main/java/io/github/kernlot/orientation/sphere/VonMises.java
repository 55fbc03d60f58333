package io.github.kernlot.orientation.sphere;

import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.math3.util.ContinuedFraction;

/** The length of the mean vector of a von Mises distribution, A1 = I1 / I0, and its inverse. */
final class VonMises {

    /** Above it six terms of the asymptotic series have more digits than a double. */
    private static final double ASYMPTOTIC = 500;

    /** Beyond it 1 - A1 is lost in the digits of a double. */
    private static final double GREATEST = 1e15;

    private VonMises() {}

    /**
     * The ratio of the modified Bessel functions of the orders 1 and 0, within 2e-15: Gauss's continued fraction {@code 1/(2/k +
     * 1/(4/k + 1/(6/k + ...)))}, and for large k {@code 1 - 1/2k - 1/8k^2 - 1/8k^3 - 25/128k^4 - 13/32k^5} (Abramowitz and Stegun 1964, 9.6
     * and 9.7; from memory).
     */
    static double meanLength(double concentration) {
        if (concentration == 0) {
            return 0;
        }
        if (concentration > ASYMPTOTIC) {
            double r = 1 / concentration;
            return 1 - r * (0.5 + r * (0.125 + r * (0.125 + r * (25.0 / 128 + r * 13 / 32))));
        }
        return new ContinuedFraction() {
            @Override
            protected double getA(int n, double x) {
                return 2 * n / x;
            }

            @Override
            protected double getB(int n, double x) {
                return 1;
            }
        }.evaluate(concentration, 1e-15);
    }

    /** The concentration whose mean vector has a length: the maximum of the likelihood, not one of the rational approximations. */
    static double concentration(double meanLength) {
        if (meanLength == 0) {
            return 0;
        }
        // A1(k) lies above k / (1 + sqrt(1 + k^2)), which is r at this k (Amos 1974, from memory)
        double highest = 2 * meanLength / ((1 - meanLength) * (1 + meanLength));
        if (!(highest < GREATEST)) {
            return Double.POSITIVE_INFINITY;
        }
        return new BrentSolver(1e-14, 1e-300, 1e-16)
                .solve(1000, k -> meanLength(k) / meanLength - 1, highest / 4, highest * (1 + 1e-9));
    }
}
