package io.github.kernlot.orientation.sphere;

import io.github.kernlot.orientation.internal.Require;
import io.github.kernlot.orientation.internal.UpperTail;
import org.apache.commons.math3.analysis.solvers.BrentSolver;

/**
 * The length R of the sum of n independent unit vectors of all directions alike. A component of each is uniform in [-1, 1], so that of their
 * sum has the density g of Irwin and Hall, and R the density {@code -2 r g'(r)} (Stephens 1964; Mardia 1972; from memory), which makes
 * {@code P(R >= r) = 2 r g(r) + 2 (1 - G(r))}.
 */
final class UniformSphere {

    /** Above it the alternating sums lose digits. */
    private static final int EXACT = 50;

    private UniformSphere() {}

    /** The probability of a sum at least so long. */
    static double probabilityAbove(int n, double length) {
        if (n > EXACT) {
            // chi-square with the first correction, an error of the order n^-2 (Mardia and Jupp 2000, from memory)
            double square = 3 * length * length / n;
            double corrected = (1 - 0.5 / n) * square + square * square / (10.0 * n);
            return UpperTail.ofChiSquare(corrected, 3);
        }
        if (length <= 0 || length >= n || n == 1) {
            // the length of one is 1 whatever rounding makes of it
            return length <= 0 || n == 1 ? 1 : 0;
        }
        double density = 0;
        double beyond = 0;
        double sign = 1;
        double choose = 1;
        for (int k = 0; n - length - 2 * k > 0; k++) {
            double half = (n - length - 2 * k) / 2;
            // half^(n-1) / (n-1)!, factor by factor so that nothing overflows
            double power = 1;
            for (int i = 1; i < n; i++) {
                power *= half / i;
            }
            density += sign * choose * power / 2;
            beyond += sign * choose * power * half / n;
            sign = -sign;
            choose *= (n - k) / (k + 1.0);
        }
        return Math.max(0, Math.min(1, 2 * length * density + 2 * beyond));
    }

    /** The length that is passed with a probability. */
    static double critical(int n, double level) {
        Require.share("level", level);
        return new BrentSolver(1e-12).solve(1000, r -> probabilityAbove(n, r) - level, 0, n);
    }
}
