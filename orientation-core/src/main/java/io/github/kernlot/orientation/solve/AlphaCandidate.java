package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.PlaneOrientation;
import io.github.kernlot.orientation.internal.Degrees;
import java.util.List;
import java.util.Locale;
import java.util.Optional;

/**
 * A plane that fits the alphas of several holes better than all planes near it.
 *
 * @param plane the plane
 * @param residuals for each reading its alpha less the one that this plane would show there, degrees, in the order of the readings
 * @param chiSquare the sum of the squares of the residuals over their sigmas
 * @param weight how probable this plane is beside the other candidates: likelihoods that sum to one, all planes alike beforehand
 * @param estimate the plane with the covariance of its pole, to first order; empty where the alphas leave a way open, as nearly
 *     parallel holes do. Of few holes of which two or more cross the plane within three sigmas of alpha 90, where a cone is no wider
 *     than its error, the cone of 95 % holds less: 87 to 92 % in simulations of four holes. So it does where a hole runs along the plane
 *     within a sigma or two: 91 to 94 % of the planes that were decided, and in single geometries far less, because what was one
 *     side of that hole may have been the other
 */
public record AlphaCandidate(
        PlaneOrientation plane,
        List<Double> residuals,
        double chiSquare,
        double weight,
        Optional<PlaneEstimate> estimate) {

    /** Keeps the list for itself. */
    public AlphaCandidate {
        residuals = List.copyOf(residuals);
    }

    /** The plane with its weight: {@code 55.0/130.0 (dip/dip direction), chi-square 0.1, weight 0.99}. */
    @Override
    public String toString() {
        return plane + ", chi-square " + Degrees.text(chiSquare) + ", weight "
                + String.format(Locale.ROOT, "%.2f", weight);
    }
}
