package io.github.kernlot.orientation.sphere;

import org.apache.commons.math3.special.BesselJ;

/** The length of the sum of n independent unit vectors of all directions round a circle alike. */
final class UniformCircle {

    /** To so many angles the length is worked out, beyond it a series is as good. */
    static final int EXACT = 100;

    private static final int STEPS = 5_000;

    /** The Bessel functions of the library end at an argument of 10,000. */
    private static final double FARTHEST = 9_000;

    private UniformCircle() {}

    /** The probability of a sum at least so long, of n angles up to {@link #EXACT}. */
    static double probabilityAbove(int n, double length) {
        if (length <= 0 || length >= n) {
            return length <= 0 || n == 1 ? 1 : 0;
        }
        return switch (n) {
            case 1 -> 1;
            case 2 -> 2 / Math.PI * Math.acos(length / 2);
            case 3 -> ofThree(length);
            default -> Math.max(0, Math.min(1, 1 - below(n, length)));
        };
    }

    /** The average over the angle between two of the probability that the third lengthens their sum enough. */
    private static double ofThree(double length) {
        double sum = 0;
        for (int i = 0; i < STEPS; i++) {
            double two = 2 * Math.cos(Math.PI / 2 * (i + 0.5) / STEPS);
            double cosine = (length * length - two * two - 1) / (2 * two);
            sum += Math.acos(Math.max(-1, Math.min(1, cosine)));
        }
        return sum / Math.PI / STEPS;
    }

    /**
     * Kluyver's integral {@code r J1(r t) J0(t)^n dt} (Mardia 1972, from memory) as the sum that it is for a density within the radius n:
     * {@code sum 2 r J1(j r / n) J0(j / n)^n / (n j J1(j)^2)} over the zeros j of J0. The terms fall as {@code k^(-(n + 1) / 2)}.
     */
    private static double below(int n, double length) {
        double sum = 0;
        for (int k = 1; ; k++) {
            double zero = zero(k);
            double t = zero / n;
            if (zero > FARTHEST || (t > 1 && n / 2.0 * Math.log(2 / (Math.PI * t)) < -23)) {
                return sum;
            }
            double slope = BesselJ.value(1, zero);
            double characteristic = Math.pow(BesselJ.value(0, t), n);
            sum += 2 * length * BesselJ.value(1, t * length) * characteristic / (n * zero * slope * slope);
        }
    }

    /** The k-th zero of J0, by McMahon's expansion (Abramowitz and Stegun 1964, 9.5.12, from memory) and Newton's steps. */
    static double zero(int k) {
        double b = (k - 0.25) * Math.PI;
        double zero = b + 1 / (8 * b) - 31 / (384 * b * b * b);
        for (int step = 0; step < 3; step++) {
            zero += BesselJ.value(0, zero) / BesselJ.value(1, zero);
        }
        return zero;
    }
}
