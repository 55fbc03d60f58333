package io.github.kernlot.orientation.sphere.distribution;

import java.util.Optional;

/** Densities {@code exp(p s + q t)} over a constant: the parameters whose expected s and t are given, by damped Newton steps. */
@FunctionalInterface
interface ExponentialFamily {

    /** What belongs to one pair of parameters: the logarithm of the constant, its gradient and its second derivatives. */
    record Point(double logConstant, double s, double t, double ss, double st, double tt) {}

    /** The family at its parameters. */
    Point at(double p, double q);

    /** Whether the family is defined, and its integral good, at its parameters. */
    default boolean holds(double p, double q) {
        return true;
    }

    /** The parameters of the greatest likelihood; empty where none is found in the domain. */
    default Optional<double[]> fit(double s, double t, double startP, double startQ) {
        double p = startP;
        double q = startQ;
        Point here = at(p, q);
        for (int round = 0; round < 200; round++) {
            double upS = here.s - s;
            double upT = here.t - t;
            double determinant = here.ss * here.tt - here.st * here.st;
            double stepP = -(here.tt * upS - here.st * upT) / determinant;
            double stepQ = -(here.ss * upT - here.st * upS) / determinant;
            double gain = -(upS * stepP + upT * stepQ);
            if (!(gain >= 0)) {
                return Optional.empty();
            }
            if (gain < 1e-22) {
                return Optional.of(new double[] {p + stepP, q + stepQ});
            }
            double share = 1;
            Point next = here;
            double cost = here.logConstant - p * s - q * t;
            for (; share > 1e-10; share /= 2) {
                if (holds(p + share * stepP, q + share * stepQ)) {
                    next = at(p + share * stepP, q + share * stepQ);
                    double nextCost = next.logConstant - (p + share * stepP) * s - (q + share * stepQ) * t;
                    // near the least the cost is all rounding, and whole steps are right
                    if (nextCost <= cost - 1e-4 * share * gain || gain < 1e-10) {
                        break;
                    }
                }
            }
            if (share <= 1e-10) {
                return Optional.empty();
            }
            p += share * stepP;
            q += share * stepQ;
            here = next;
        }
        return Optional.empty();
    }
}
