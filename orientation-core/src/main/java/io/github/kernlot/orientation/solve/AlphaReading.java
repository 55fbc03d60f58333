package io.github.kernlot.orientation.solve;

import io.github.kernlot.orientation.HoleDirection;
import io.github.kernlot.orientation.internal.Degrees;
import io.github.kernlot.orientation.internal.Require;

/**
 * An alpha measured on core that is not oriented.
 *
 * @param hole the direction of the hole where the core was cut
 * @param alpha acute angle between plane and core axis, degrees in [0, 90]
 * @param alphaSigma its standard deviation, with what the structure itself wavers from hole to hole, degrees in [1e-6, 180]
 */
public record AlphaReading(HoleDirection hole, double alpha, double alphaSigma) {

    /**
     * Checks the numbers.
     *
     * @throws IllegalArgumentException if alpha lies outside [0, 90] or the sigma outside its range
     */
    public AlphaReading {
        alpha = Require.inRange("alpha", alpha, 0, 90, "degrees");
        Require.inRange("alpha sigma", alphaSigma, 1e-6, 180, "degrees");
    }

    /**
     * A reading.
     *
     * @param hole the direction of the hole
     * @param alpha degrees in [0, 90]
     * @param alphaSigma degrees in [1e-6, 180]
     * @return the reading
     * @throws IllegalArgumentException if alpha lies outside [0, 90] or the sigma outside its range
     */
    public static AlphaReading of(HoleDirection hole, double alpha, double alphaSigma) {
        return new AlphaReading(hole, alpha, alphaSigma);
    }

    /**
     * The cone of poles that this reading leaves.
     *
     * @return the cone
     */
    public PoleCone cone() {
        return new PoleCone(hole, alpha);
    }

    /** Alpha with its sigma and the hole: {@code alpha 40.0 +- 2.0 in -60.0/090.0 (dip/azimuth)}. */
    @Override
    public String toString() {
        return "alpha " + Degrees.text(alpha) + " +- " + Degrees.text(alphaSigma) + " in " + hole;
    }
}
