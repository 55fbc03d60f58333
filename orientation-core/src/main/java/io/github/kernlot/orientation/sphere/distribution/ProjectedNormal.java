package io.github.kernlot.orientation.sphere.distribution;

import io.github.kernlot.orientation.internal.Vector;
import org.apache.commons.math3.analysis.solvers.BrentSolver;
import org.apache.commons.rng.UniformRandomProvider;
import org.apache.commons.rng.sampling.distribution.ZigguratSampler;

/**
 * Draws from {@code exp(-a y^2 - b z^2)} on the sphere (x, y, z), a Bingham distribution, by acceptance of normal vectors made unit
 * vectors, an angular central Gaussian envelope (Kent, Ganeiber and Mardia 2018, from memory).
 */
final class ProjectedNormal {

    private final UniformRandomProvider random;
    private final ZigguratSampler.NormalizedGaussian gaussian;
    private final double a;
    private final double b;
    private final double stretchY;
    private final double stretchZ;
    private final double logBound;

    ProjectedNormal(double a, double b, UniformRandomProvider random) {
        this.a = a;
        this.b = b;
        this.random = random;
        gaussian = ZigguratSampler.NormalizedGaussian.of(random);
        double best = new BrentSolver(1e-12).solve(1000, x -> 1 / x + 1 / (x + 2 * a) + 1 / (x + 2 * b) - 1, 1, 3);
        stretchY = 1 + 2 * a / best;
        stretchZ = 1 + 2 * b / best;
        logBound = -(3 - best) / 2 + 1.5 * Math.log(3 / best);
    }

    Vector next() {
        while (true) {
            Vector drawn = new Vector(
                            gaussian.sample(),
                            gaussian.sample() / Math.sqrt(stretchY),
                            gaussian.sample() / Math.sqrt(stretchZ))
                    .unit();
            double y2 = drawn.east() * drawn.east();
            double z2 = drawn.down() * drawn.down();
            double x2 = drawn.north() * drawn.north();
            double log = -a * y2 - b * z2 + 1.5 * Math.log(x2 + stretchY * y2 + stretchZ * z2);
            if (Math.log(random.nextDouble()) <= log - logBound) {
                return drawn;
            }
        }
    }

    double uniform() {
        return random.nextDouble();
    }
}
