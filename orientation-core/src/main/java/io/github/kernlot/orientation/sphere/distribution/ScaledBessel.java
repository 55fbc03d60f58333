package io.github.kernlot.orientation.sphere.distribution;

/**
 * Modified Bessel functions of the first kind, times {@code exp(-x)} so that none overflows: the power series, and above {@link #FAR}
 * Hankel's asymptotic series (Abramowitz and Stegun 1964, 9.6.10 and 9.7.1; from memory).
 */
final class ScaledBessel {

    /** From here on Hankel's series reaches an ulp before its terms grow again. */
    private static final double FAR = 30;

    private ScaledBessel() {}

    /** {@code exp(-x) I_order(x)} for x of 0 or more, within a relative 1e-14. */
    static double of(int order, double x) {
        return x <= FAR ? Math.exp(-x) * series(order, x) : (1 + tail(order, x)) / Math.sqrt(2 * Math.PI * x);
    }

    /** {@code 1 - I1(x) / I0(x)}, of which no digits are lost for large x. */
    static double shortfall(double x) {
        return x <= FAR ? 1 - series(1, x) / series(0, x) : (tail(0, x) - tail(1, x)) / (1 + tail(0, x));
    }

    private static double series(int order, double x) {
        double term = 1;
        for (int k = 1; k <= order; k++) {
            term *= x / (2 * k);
        }
        double sum = term;
        for (int k = 1; term > 1e-18 * sum; k++) {
            term *= x * x / 4 / (k * (double) (k + order));
            sum += term;
        }
        return sum;
    }

    private static double tail(int order, double x) {
        double term = 1;
        double sum = 0;
        for (int k = 1; Math.abs(term) > 1e-18 && k < 60; k++) {
            int odd = 2 * k - 1;
            term *= (odd * odd - 4.0 * order * order) / (k * 8 * x);
            sum += term;
        }
        return sum;
    }
}
